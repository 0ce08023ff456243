// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/analysis_runner.h"

#include <atomic>
#include <chrono>
#include <new>

namespace cutwater::editor {
namespace {

using namespace std::chrono_literals;
using Clock = std::chrono::steady_clock;
using sdk::Ending;

constexpr auto kBetweenReports = 100ms;

// An analysis is promised a project without errors.
sdk::Answer<sdk::Result> checkedRun(const sdk::Analysis& analysis, const sdk::PluginFacts& facts,
                                    const project::Project& project, const sdk::Values& values,
                                    const sdk::Job& job) {
    try {
        project::Problems errors;
        for (project::Problem& problem : project::validate(project))
            if (problem.severity == project::Severity::error) errors.push_back(std::move(problem));
        if (!errors.empty()) return sdk::Answer<sdk::Result>::failed(std::move(errors));
    } catch (const std::bad_alloc&) {
        return sdk::Answer<sdk::Result>::stopped(
            Ending::overLimit, {project::Severity::error, "there is not enough memory",
                                "close other programs and run it again", "", 0});
    }
    return sdk::runGuarded(analysis, facts, project, values, job);
}

} // namespace

void AnalysisRunner::run(const sdk::Analysis& analysis, const sdk::PluginFacts& facts,
                         std::shared_ptr<const project::Project> project,
                         const sdk::Values& values) {
    const std::uint64_t run = ++m_run;
    m_running = true;
    // A task that waits is forgotten by the worker when the next one comes, and never ends: the
    // guard counts it off all the same.
    ++m_busy;
    const std::shared_ptr<void> busy(nullptr, [this](void*) {
        QMetaObject::invokeMethod(
            this,
            [this] {
                if (--m_busy == 0) emit idle();
            },
            Qt::QueuedConnection);
    });
    sdk::Job job;
    // A plug-in may report from threads of its own.
    auto reported = std::make_shared<std::atomic<Clock::rep>>(0);
    job.progress = [this, run, reported](double share, const std::string& what) {
        const Clock::rep now = Clock::now().time_since_epoch().count();
        Clock::rep before = reported->load();
        if (now < before + Clock::duration(kBetweenReports).count() ||
            !reported->compare_exchange_strong(before, now))
            return;
        QMetaObject::invokeMethod(
            this,
            [this, run, share, what = QString::fromStdString(what)] {
                if (run == m_run) emit progressed(share, what);
            },
            Qt::QueuedConnection);
    };
    m_worker.start([this, run, job, busy, &analysis, facts, project = std::move(project),
                    values](std::stop_token stop) mutable {
        job.stop = std::move(stop);
        const Answer answer = std::make_shared<const sdk::Answer<sdk::Result>>(
            checkedRun(analysis, facts, *project, values, job));
        QMetaObject::invokeMethod(
            this,
            [this, run, answer] {
                if (run != m_run) return;
                m_running = false;
                emit finished(answer);
            },
            Qt::QueuedConnection);
    });
    emit started();
}

void AnalysisRunner::cancel() {
    if (!m_running) return;
    ++m_run;
    m_running = false;
    m_worker.stop();
    emit finished(
        std::make_shared<const sdk::Answer<sdk::Result>>(sdk::Answer<sdk::Result>::stopped(
            Ending::cancelled, {project::Severity::error, "the analysis was cancelled",
                                "run it again when there is time", "", 0})));
}

} // namespace cutwater::editor
