// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/paper-report/pages.h"

#include <QObject>

#include <fmt/format.h>

namespace cutwater::paper_report {

class PaperReport : public QObject, public sdk::Report {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID CUTWATER_REPORT_IID FILE "paper-report.json")
    Q_INTERFACES(cutwater::sdk::Report)

public:
    std::vector<std::pair<std::string, std::string>> types() const override {
        return {{"text/html", "html"},
                {"application/pdf", "pdf"},
                {"application/vnd.oasis.opendocument.text", "odt"}};
    }

    std::vector<sdk::Parameter> parameters(const project::Project*) const override {
        sdk::Parameter rows;
        rows.name = "rows";
        rows.type = sdk::ParameterType::integer;
        rows.minimum = 1;
        rows.maximum = 100000;
        rows.standard = std::int64_t{200};
        rows.sentence = "rows of a table that are shown; of more the report says how many";
        sdk::Parameter unsigned_;
        unsigned_.name = "no-signatures";
        unsigned_.type = sdk::ParameterType::flag;
        unsigned_.standard = false;
        unsigned_.sentence = "leave out the place to sign";
        return {rows, unsigned_};
    }

    sdk::Answer<sdk::Document> make(const project::Project& project,
                                    const sdk::ReportContent& content, const std::string& mediaType,
                                    const sdk::Values& values, const sdk::Job& job) const override {
        using Answer = sdk::Answer<sdk::Document>;
        const bool html = mediaType == "text/html";
        const Order order{project,
                          content,
                          html ? Dialect::browser : Dialect::richText,
                          static_cast<std::size_t>(values.integer("rows").value_or(200)),
                          !values.flag("no-signatures"),
                          job};
        std::vector<NamedPicture> pictures;
        int number = 0;
        std::string body = titleChapter(order) + topChapter(order, ++number);
        for (std::size_t i = 0; i < content.parts.size(); ++i) {
            if (job.stop.stop_requested()) return stopped();
            body += resultChapter(order, content.parts[i], ++number, pictures);
            if (job.progress)
                job.progress(0.4 * static_cast<double>(i) /
                                 static_cast<double>(content.parts.size()),
                             "writing " + content.parts[i].title);
        }
        body += assumptionChapter(order, ++number);
        body += sourceChapter(order, ++number);
        body += cautionChapter(order, ++number);
        if (order.signatures) body += signatureChapter(++number);
        if (html && !content.drawings.empty()) body += drawingChapter(order, ++number);
        if (job.stop.stop_requested()) return stopped();
        std::string title = project.name.empty() ? "Fault tree report" : project.name;
        if (!project.revision.empty()) title += ", revision " + project.revision;
        if (html) return Answer::of({mediaType, browserPage(title, body)});
        sdk::Answer<std::string> bytes;
        if (mediaType == "application/pdf")
            bytes = pdfPages(order, title, body, pictures);
        else if (mediaType == types().back().first)
            bytes = odtText(order, title, body, pictures);
        else
            return Answer::failed(
                {problem(fmt::format("this report cannot be written as {}", mediaType),
                         "choose html, pdf or odt")});
        if (!bytes.content) return {bytes.ending, {}, std::move(bytes.problems)};
        return Answer::of({mediaType, std::move(*bytes.content)});
    }

private:
    static project::Problem problem(std::string what, std::string remedy) {
        project::Problem made;
        made.what = std::move(what);
        made.remedy = std::move(remedy);
        return made;
    }
    static sdk::Answer<sdk::Document> stopped() {
        return sdk::Answer<sdk::Document>::stopped(
            sdk::Ending::cancelled,
            problem("cancelled while the report was written", "start it again when there is time"));
    }
};

} // namespace cutwater::paper_report

#include "paper_report.moc"
