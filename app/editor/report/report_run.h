// SPDX-License-Identifier: GPL-3.0-or-later
// ReportRun: makes a report in a thread of its own: computes what is not computed yet, draws the
// trees, and asks the report plug-in for the document.
#pragma once

#include "app/editor/answers/worker.h"
#include "app/editor/report/report_list.h"
#include "plugins/sdk/host.h"

#include <QImage>
#include <QObject>

namespace cutwater::editor {

struct ReportOrder {
    std::shared_ptr<const project::Project> project;
    std::vector<ReportItem> items; // the wanted ones
    QString file;                  // as it is named in the report
    std::string mediaType;
    bool drawings = true;
    // For rich text, which knows no SVG inside a page: drawings come as pictures beside it.
    bool asPictures = false;
};

struct ReportOutcome {
    QByteArray bytes;
    std::string mediaType;
    sdk::Ending ending = sdk::Ending::failed;
    project::Problems problems;   // why there is none
    QStringList left;             // analyses that gave no result, and why
    std::vector<QImage> pictures; // "picture:0" ... in the page, where they were asked for
};

class ReportRun : public QObject {
    Q_OBJECT
public:
    // `host` lives longer.
    explicit ReportRun(sdk::Host& host, QObject* parent = nullptr);

    // The media types and suffixes of the report plug-in; empty where there is none.
    const std::vector<std::pair<std::string, std::string>>& types() const { return m_types; }
    // An earlier order is dropped. made() follows, but not for one that was cancelled.
    void start(ReportOrder order);
    void cancel();
    bool isRunning() const { return m_running; }

signals:
    void made(const std::shared_ptr<const cutwater::editor::ReportOutcome>& outcome);
    void progressed(double share, const QString& doing);
    void runningChanged(bool running);

private:
    void finish(quint64 run, const std::shared_ptr<const ReportOutcome>& outcome);

    sdk::Host& m_host;
    const sdk::PluginFacts* m_facts = nullptr;
    sdk::Report* m_report = nullptr;
    std::vector<std::pair<std::string, std::string>> m_types;
    quint64 m_run = 0;
    bool m_running = false;
    Worker m_worker; // last: its end waits
};

} // namespace cutwater::editor
