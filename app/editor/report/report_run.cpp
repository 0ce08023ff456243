// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/report/report_run.h"

#include "app/paper/report_content.h"
#include "plugins/sdk/guard.h"

#include <QDate>
#include <QPainter>
#include <QSvgRenderer>

#include <algorithm>
#include <map>

namespace cutwater::editor {
namespace {

struct Means {
    std::map<std::string, std::pair<sdk::Analysis*, sdk::PluginFacts>> analyses;
    const sdk::Layout* layout = nullptr;
    const sdk::Report* report = nullptr;
    sdk::PluginFacts facts;
};

QString sentence(const project::Problems& problems) {
    return problems.empty() ? QString()
                            : QString::fromStdString(project::toSentence(problems.front()));
}

// False where it was cancelled. An analysis that fails is left out and named.
bool collect(const ReportOrder& order, const Means& means, sdk::ReportContent& content,
             ReportOutcome& outcome, const sdk::Job& job) {
    for (const ReportItem& item : order.items) {
        if (job.stop.stop_requested()) return false;
        sdk::ReportPart part;
        if (item.result) {
            part.result = *item.result;
            part.parameters = item.parameters;
            part.method = item.method.toStdString();
            if (item.of != order.project)
                part.stale = "This result was computed before the last changes of the project.";
        } else {
            const auto found = means.analyses.find(item.analysis);
            if (found == means.analyses.end()) continue;
            const auto& [analysis, facts] = found->second;
            const auto parameters = sdk::parametersOf(*analysis, facts, order.project.get());
            const auto values =
                parameters ? paper::standardValues(*parameters, *order.project) : sdk::Values();
            auto made = paper::computePart(*analysis, facts, *order.project, values, job);
            if (made.ending == sdk::Ending::cancelled) return false;
            if (!made.content) {
                outcome.left << QStringLiteral("%1: %2").arg(item.shownTitle(),
                                                             sentence(made.problems));
                continue;
            }
            part = std::move(*made.content);
        }
        if (!item.title.isEmpty()) part.title = item.title.toStdString();
        part.comment = item.comment.toStdString();
        content.parts.push_back(std::move(part));
    }
    if (!order.drawings || !means.layout) return !job.stop.stop_requested();
    auto drawings = paper::drawTrees(*order.project, *means.layout, job);
    if (drawings.ending == sdk::Ending::cancelled) return false;
    if (drawings.content)
        content.drawings = std::move(*drawings.content);
    else
        outcome.left << sentence(drawings.problems);
    return !job.stop.stop_requested();
}

// Paints the SVG drawings of a page, and puts names in their place.
void takePictures(ReportOutcome& outcome, const sdk::Job& job) {
    constexpr double kFine = 2.5; // pixels for a point
    constexpr double kWide = 620; // of the page that is looked at
    QByteArray page;
    qsizetype from = 0;
    while (!job.stop.stop_requested()) {
        const qsizetype start = outcome.bytes.indexOf("<svg", from);
        const qsizetype end = start < 0 ? -1 : outcome.bytes.indexOf("</svg>", start);
        if (end < 0) break;
        page += outcome.bytes.mid(from, start - from);
        from = end + 6;
        QSvgRenderer renderer(outcome.bytes.mid(start, from - start));
        const QSizeF size = renderer.viewBoxF().size();
        if (size.isEmpty()) continue;
        QImage image((size * kFine).toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        renderer.render(&painter);
        const double wide = std::min(size.width() * 1.25, kWide);
        page += QStringLiteral("<img src=\"picture:%1\" width=\"%2\" height=\"%3\">")
                    .arg(outcome.pictures.size())
                    .arg(qRound(wide))
                    .arg(qRound(wide * size.height() / size.width()))
                    .toUtf8();
        outcome.pictures.push_back(std::move(image));
    }
    outcome.bytes = page + outcome.bytes.mid(from);
}

void makeReport(const ReportOrder& order, const Means& means, ReportOutcome& outcome,
                const sdk::Job& job) {
    bool hasErrors = false;
    for (const project::Problem& problem : project::validate(*order.project))
        hasErrors |= problem.severity == project::Severity::error;
    ReportOrder able = order;
    if (hasErrors) {
        // Nothing can be computed; what was sent before the error came is still there.
        std::erase_if(able.items, [](const ReportItem& item) { return !item.result; });
        able.drawings = false;
    }
    sdk::ReportContent content;
    content.file = order.file.toStdString();
    content.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    if (!collect(able, means, content, outcome, job)) {
        outcome.ending = sdk::Ending::cancelled;
        return;
    }
    const auto values = sdk::complete(means.report->parameters(order.project.get()), {});
    auto document = sdk::guarded<sdk::Document>(means.facts, [&] {
        return means.report->make(*order.project, content, order.mediaType,
                                  values ? *values : sdk::Values(), job);
    });
    outcome.ending = document.ending;
    outcome.problems = std::move(document.problems);
    if (document.content) outcome.bytes = QByteArray::fromStdString(document.content->bytes);
    if (order.asPictures) takePictures(outcome, job);
}

} // namespace

ReportRun::ReportRun(sdk::Host& host, QObject* parent) : QObject(parent), m_host(host) {
    for (const sdk::PluginFacts& facts : host.plugins())
        if (facts.kind == sdk::PluginKind::report && !m_report) {
            m_report = host.report(facts.id);
            if (m_report) m_facts = &facts;
        }
    if (m_report) m_types = m_report->types();
}

void ReportRun::start(ReportOrder order) {
    if (!m_report) return;
    const quint64 run = ++m_run;
    Means means;
    means.report = m_report;
    means.facts = *m_facts;
    means.layout = m_host.layout("graphviz-layout");
    for (const ReportItem& item : order.items) // the host is for this thread only
        if (!item.result)
            if (const auto* facts = m_host.find(sdk::PluginKind::analysis, item.analysis))
                if (sdk::Analysis* analysis = m_host.analysis(item.analysis))
                    means.analyses[item.analysis] = {analysis, *facts};
    if (!m_running) emit runningChanged(m_running = true);
    m_worker.start([this, run, order = std::move(order),
                    means = std::move(means)](const std::stop_token& stop) {
        auto outcome = std::make_shared<ReportOutcome>();
        outcome->mediaType = order.mediaType;
        sdk::Job job;
        job.stop = stop;
        job.progress = [this, run](double share, const std::string& doing) {
            QMetaObject::invokeMethod(
                this,
                [this, run, share, words = QString::fromStdString(doing)] {
                    if (run == m_run) emit progressed(share, words);
                },
                Qt::QueuedConnection);
        };
        try {
            makeReport(order, means, *outcome, job);
        } catch (const std::exception& error) {
            project::Problem problem;
            problem.what = std::string("the report could not be made: ") + error.what();
            problem.remedy = "take something out of it and try again";
            outcome->problems = {problem};
        }
        QMetaObject::invokeMethod(
            this, [this, run, outcome] { finish(run, outcome); }, Qt::QueuedConnection);
    });
}

void ReportRun::cancel() {
    if (!m_running) return;
    ++m_run;
    m_worker.stop();
    emit runningChanged(m_running = false);
}

void ReportRun::finish(quint64 run, const std::shared_ptr<const ReportOutcome>& outcome) {
    if (run != m_run) return;
    emit runningChanged(m_running = false);
    emit made(outcome);
}

} // namespace cutwater::editor
