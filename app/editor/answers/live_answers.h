// SPDX-License-Identifier: GPL-3.0-or-later
// LiveAnswers: keeps the answer about one top event current while the project is being edited.
#pragma once

#include "app/editor/answers/live_answer.h"
#include "app/editor/answers/worker.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

#include <chrono>

namespace cutwater::editor {

// Lives in the GUI thread; the analysis runs in a thread of its own on a snapshot that nobody
// changes. Of several questions only the newest is answered.
class LiveAnswers : public QObject {
    Q_OBJECT

public:
    using Snapshot = std::shared_ptr<const project::Project>;

    enum class State {
        empty,     // nothing was asked yet
        waiting,   // for the pause in typing, or for the computer: the answer is stale
        current,   // the answer is of the newest snapshot
        cancelled, // by the user: the answer, where there is one, is stale
    };

    explicit LiveAnswers(QObject* parent = nullptr);
    ~LiveAnswers() override;

    // Asks about a top event (empty: the first one) of a snapshot. Starts after a pause, so that
    // fast typing makes one run and not twenty.
    void ask(Snapshot project, const std::string& top);
    // Stops the run; ask() or again() starts the next.
    void cancel();
    void again();

    void setPause(std::chrono::milliseconds pause);
    void setMeans(const LiveMeans& means); // stop, progress and recall are ours
    // In the place of computeLive(); for tests.
    using Compute =
        std::function<LiveAnswer(const project::Project&, const std::string&, const LiveMeans&)>;
    void setCompute(Compute compute) { m_compute = std::move(compute); }

    State state() const { return m_state; }
    bool isStale() const { return m_state != State::current; }
    // The last answer that finished, about this or an earlier snapshot; null where there is none.
    std::shared_ptr<const LiveAnswer> answer() const { return m_answer; }
    // Of the same top event, the one before.
    std::shared_ptr<const LiveAnswer> before() const { return m_before; }
    // That the answer is about, and that was asked last.
    Snapshot project() const { return m_asked; }
    // From ask() to the answer, the pause included.
    std::chrono::milliseconds lastDelay() const { return m_delay; }

signals:
    void stateChanged();
    void answered(); // answer() is new
    // Of a run that takes over a second: 0..1, ten times a second at most.
    void progressed(double share);

private:
    void start();
    void finish(std::uint64_t run, std::shared_ptr<const LiveAnswer> answer);
    void setState(State state);

    QTimer m_pause;
    QElapsedTimer m_since;
    std::chrono::milliseconds m_delay{0};
    LiveMeans m_means;
    Compute m_compute = computeLive;
    State m_state = State::empty;
    Snapshot m_asked;
    std::string m_top;
    std::uint64_t m_run = 0; // of the newest question; answers to older ones are thrown away
    std::shared_ptr<const LiveAnswer> m_answer, m_before;
    Worker m_worker; // last: its end waits for the run, which uses the others
};

} // namespace cutwater::editor
