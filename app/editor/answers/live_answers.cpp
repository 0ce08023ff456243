// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/live_answers.h"

#include <exception>
#include <utility>

namespace cutwater::editor {
namespace {

using namespace std::chrono_literals;
using Clock = std::chrono::steady_clock;

// Several edits of one stroke are one question. No longer: a run that is overtaken ends at once.
constexpr auto kPause = 20ms;
constexpr auto kUnseen = 1s; // shorter runs show no progress
constexpr auto kBetweenReports = 100ms;

// What the engine throws is out of memory or a fault of ours: either becomes a sentence.
LiveAnswer guarded(const LiveAnswers::Compute& compute, const project::Project& project,
                   const std::string& top, const LiveMeans& means) {
    LiveAnswer answer;
    answer.top = top;
    answer.ending = LiveAnswer::Ending::tooLarge;
    try {
        return compute(project, top, means);
    } catch (const std::bad_alloc&) {
        answer.warnings.push_back({"There is not enough memory to answer this."});
    } catch (const std::exception& error) {
        answer.warnings.push_back(
            {std::string("The analysis failed: ") + error.what() + ". Please report it."});
    }
    return answer;
}

} // namespace

LiveAnswers::LiveAnswers(QObject* parent) : QObject(parent) {
    m_pause.setSingleShot(true);
    m_pause.setInterval(kPause);
    connect(&m_pause, &QTimer::timeout, this, &LiveAnswers::start);
    m_means.recall = std::make_shared<logic::Recall>();
}

LiveAnswers::~LiveAnswers() = default;

void LiveAnswers::setPause(std::chrono::milliseconds pause) {
    m_pause.setInterval(pause);
}

void LiveAnswers::setMeans(const LiveMeans& means) {
    auto recall = std::move(m_means.recall);
    m_means = means;
    m_means.recall = std::move(recall);
}

void LiveAnswers::ask(Snapshot project, const std::string& top) {
    m_asked = std::move(project);
    m_top = top;
    m_since.start();
    again();
}

void LiveAnswers::again() {
    ++m_run;
    m_worker.stop();
    if (!m_asked) return;
    m_pause.start();
    setState(State::waiting);
}

void LiveAnswers::cancel() {
    if (m_state != State::waiting) return;
    ++m_run;
    m_pause.stop();
    m_worker.stop();
    setState(State::cancelled);
}

void LiveAnswers::start() {
    const std::uint64_t run = ++m_run;
    LiveMeans means = m_means;
    // Called in the thread of the worker only.
    auto reported = std::make_shared<Clock::time_point>(Clock::now() + kUnseen - kBetweenReports);
    means.progress = [this, run, reported](double share) {
        const auto now = Clock::now();
        if (now < *reported + kBetweenReports) return;
        *reported = now;
        QMetaObject::invokeMethod(
            this,
            [this, run, share] {
                if (run == m_run) emit progressed(share);
            },
            Qt::QueuedConnection);
    };
    m_worker.start([this, run, means, compute = m_compute, project = m_asked,
                    top = m_top](std::stop_token stop) mutable {
        means.stop = std::move(stop);
        auto answer = std::make_shared<const LiveAnswer>(guarded(compute, *project, top, means));
        if (answer->ending == LiveAnswer::Ending::cancelled) return;
        QMetaObject::invokeMethod(
            this, [this, run, answer] { finish(run, answer); }, Qt::QueuedConnection);
    });
}

void LiveAnswers::finish(std::uint64_t run, std::shared_ptr<const LiveAnswer> answer) {
    if (run != m_run) return; // a newer question was asked while this one was on its way
    m_delay = std::chrono::milliseconds(m_since.elapsed());
    // A tree with errors has no figure: the one from before them is what the next is compared with.
    if (m_answer && m_answer->top == answer->top) {
        if (m_answer->figure) m_before = m_answer;
    } else {
        m_before = nullptr;
    }
    m_answer = std::move(answer);
    setState(State::current);
    emit answered();
}

void LiveAnswers::setState(State state) {
    if (m_state == state) return;
    m_state = state;
    emit stateChanged();
}

} // namespace cutwater::editor
