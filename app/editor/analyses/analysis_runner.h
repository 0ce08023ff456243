// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/editor/answers/worker.h"
#include "plugins/sdk/host.h"

#include <QObject>

#include <memory>

namespace cutwater::editor {

// Runs one analysis of a plug-in at a time in a thread of its own.
class AnalysisRunner : public QObject {
    Q_OBJECT

public:
    using Answer = std::shared_ptr<const sdk::Answer<sdk::Result>>;

    using QObject::QObject;

    // A run that is under way is stopped first and never answers. `analysis` and `facts` belong to
    // a host that lives longer.
    void run(const sdk::Analysis& analysis, const sdk::PluginFacts& facts,
             std::shared_ptr<const project::Project> project, const sdk::Values& values);
    // finished() comes at once, `cancelled`; the plug-in may take a while to notice.
    void cancel();
    bool isRunning() const { return m_running; } // an answer is awaited
    bool isBusy() const { return m_busy > 0; }   // some plug-in is still at work

signals:
    void started();
    void progressed(double share, const QString& what);
    void finished(const cutwater::editor::AnalysisRunner::Answer& answer);
    void idle(); // not busy any longer

private:
    bool m_running = false;
    int m_busy = 0;
    std::uint64_t m_run = 0;
    Worker m_worker; // last: its end waits for the run
};

} // namespace cutwater::editor
