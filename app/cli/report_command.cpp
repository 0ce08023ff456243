// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/report_command.h"

#include "app/cli/delivery.h"
#include "app/cli/progress.h"
#include "app/paper/report_content.h"
#include "plugins/sdk/guard.h"

#include <QDate>
#include <QFileInfo>

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <ostream>

namespace cutwater::cli {
namespace {

std::vector<std::string> listed(const std::string& text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : text + ",") {
        if (c != ',' && c != ' ') {
            word += c;
            continue;
        }
        if (!word.empty()) words.push_back(word);
        word.clear();
    }
    return words;
}

std::string idsOf(const sdk::Host& host, sdk::PluginKind kind) {
    std::vector<std::string> ids;
    for (const sdk::PluginFacts& facts : host.plugins())
        if (facts.kind == kind) ids.push_back(facts.id);
    return fmt::format("{}", fmt::join(ids, ", "));
}

// The media type for the wish or for the end of the name; empty: none.
std::string typeFor(const sdk::Report& report, const Call& call, const std::string& output) {
    std::string word = call.values.text("type").value_or("");
    if (word.empty()) {
        const std::size_t dot = output.rfind('.');
        if (dot != std::string::npos && output.find('/', dot) == std::string::npos)
            word = output.substr(dot + 1);
        if (output.empty()) word = "html";
    }
    std::transform(word.begin(), word.end(), word.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    if (word == "htm") word = "html";
    for (const auto& [type, suffix] : report.types())
        if (suffix == word) return type;
    return {};
}

std::string typesOf(const sdk::Report& report) {
    std::vector<std::string> suffixes;
    for (const auto& [type, suffix] : report.types())
        suffixes.push_back("." + suffix);
    return fmt::format("{}", fmt::join(suffixes, ", "));
}

// Fills the content; an exit code where that ends early.
int compute(const std::vector<std::string>& ids, const project::Project& project, const Call& call,
            sdk::ReportContent& content, const sdk::Job& job, Context& context) {
    const std::string file = shownName(call.operands.front());
    for (const std::string& id : ids) {
        const sdk::PluginFacts* const facts = context.host.find(sdk::PluginKind::analysis, id);
        sdk::Analysis* const analysis = context.host.analysis(id);
        if (!facts || !analysis) continue; // cannot be: run() has looked
        const auto parameters = sdk::parametersOf(*analysis, *facts, &project);
        if (!parameters)
            return reportEnding(sdk::Ending::failed, parameters.problems(), {}, context);
        auto part = paper::computePart(*analysis, *facts, project,
                                       paper::standardValues(*parameters, project), job);
        if (!part.content) return reportEnding(part.ending, part.problems, file, context);
        content.parts.push_back(std::move(*part.content));
    }
    if (call.values.flag("no-trees")) return kFine;
    const sdk::Layout* const layout = context.host.layout("graphviz-layout");
    if (!layout) return kFine; // a report without drawings is a report
    auto drawings = paper::drawTrees(project, *layout, job);
    if (!drawings.content) return reportEnding(drawings.ending, drawings.problems, file, context);
    content.drawings = std::move(*drawings.content);
    return kFine;
}

int run(const Call& call, Context& context) {
    const std::string id = call.values.text("report").value_or("paper-report");
    const sdk::PluginFacts* const facts = context.host.find(sdk::PluginKind::report, id);
    const sdk::Report* const report = facts ? context.host.report(id) : nullptr;
    if (!report)
        return usageError(fmt::format("--report {}: there is no such report; there is {}", id,
                                      idsOf(context.host, sdk::PluginKind::report)),
                          context);
    const std::string type = typeFor(*report, call, context.globals.output);
    if (type.empty())
        return usageError(fmt::format("--output {}: the name does not say what to write; let it "
                                      "end in one of {}, or give --type",
                                      context.globals.output, typesOf(*report)),
                          context);
    std::vector<std::string> ids = listed(call.values.text("analysis").value_or(""));
    if (ids.empty()) ids = paper::standardAnalyses();
    for (const std::string& one : ids)
        if (!context.host.find(sdk::PluginKind::analysis, one) || !context.host.analysis(one))
            return usageError(fmt::format("--analysis {}: there is no such analysis; there is {}",
                                          one, idsOf(context.host, sdk::PluginKind::analysis)),
                              context);
    const std::string& path = call.operands.front();
    const auto project = readProject(path, context);
    if (!project) return kFileHasErrors;

    sdk::ReportContent content;
    content.file = QFileInfo(QString::fromStdString(path)).fileName().toStdString();
    content.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    sdk::Answer<sdk::Document> document;
    {
        Progress progress(!context.globals.quiet);
        sdk::Job job;
        job.stop = context.stop;
        job.memoryBytes = context.globals.memoryBytes;
        job.progress = [&](double share, const std::string& what) { progress.show(share, what); };
        if (const int code = compute(ids, *project, call, content, job, context); code != kFine)
            return code;
        sdk::Values values;
        if (const auto rows = call.values.integer("rows")) values.set("rows", *rows);
        if (call.values.flag("no-signatures")) values.set("no-signatures", true);
        const auto checked = sdk::complete(report->parameters(&*project), values);
        if (!checked) return usageError(checked.problems(), context);
        document = sdk::guarded<sdk::Document>(
            *facts, [&] { return report->make(*project, content, type, *checked, job); });
    }
    if (!document.content)
        return reportEnding(document.ending, document.problems, shownName(path), context);
    return deliver(document.content->bytes, context);
}

sdk::Parameter option(const char* name, sdk::ParameterType type, const char* sentence) {
    sdk::Parameter parameter;
    parameter.name = name;
    parameter.type = type;
    parameter.sentence = sentence;
    return parameter;
}

} // namespace

Command reportCommand() {
    Command command;
    command.name = "report";
    command.summary = "write results, drawn trees, sources and cautions as one document";
    command.operands = "FILE";
    command.details =
        "The end of the name after --output says what is written: .html is one page with "
        "everything in it, that a browser prints on A4; .pdf and .odt are for paper and for "
        "office programs.\n\n"
        "The report has a title block, the top events with their figures, the results of the "
        "analyses, all assumptions, the source of every number, the cautions, a place to sign, "
        "and the drawn trees. Common causes are counted where the project has groups.";
    command.options = {
        option("analysis", sdk::ParameterType::text,
               "which analyses, by id, with commas, in this order; without it probability, "
               "single-failures and cut-sets"),
        option("type", sdk::ParameterType::text,
               "html, pdf or odt; without it, the end of the name after --output says it"),
        option("report", sdk::ParameterType::text,
               "the report plug-in; paper-report where it is not given"),
        option("no-trees", sdk::ParameterType::flag, "leave out the drawn trees"),
        option("no-signatures", sdk::ParameterType::flag, "leave out the place to sign"),
    };
    sdk::Parameter rows = option("rows", sdk::ParameterType::integer,
                                 "rows of a table that are shown; 200 where it is not given");
    rows.minimum = 1;
    rows.maximum = 100000;
    command.options.push_back(rows);
    command.run = run;
    return command;
}

} // namespace cutwater::cli
