// SPDX-License-Identifier: GPL-3.0-or-later
// Background: one answer about the project, computed in a worker after each edit, while somebody
// looks.
#pragma once

#include "app/editor/answers/worker.h"
#include "app/editor/session/session.h"

#include <QObject>
#include <QTimer>

#include <functional>
#include <memory>
#include <string>

namespace cutwater::editor {

class Background : public QObject {
    Q_OBJECT
public:
    using Tell = std::function<void(double share, const std::string& doing)>;
    // Runs in the worker. Null: it was stopped.
    using Task = std::function<std::shared_ptr<const void>(const Snapshot&, const std::stop_token&,
                                                           const Tell&)>;

    Background(Session& session, Task task, QObject* parent = nullptr);
    ~Background() override;

    // Nothing is computed while nobody looks.
    void setWatched(bool watched);
    // Another question: what is known is stale. `task` as above.
    void ask(Task task);
    // Null until the first one is there. T is what the task makes.
    template <typename T>
    std::shared_ptr<const T> answer() const {
        return std::static_pointer_cast<const T>(m_answer);
    }
    bool isStale() const { return !m_answer || m_answerOf != m_session.revision() || m_asked; }
    bool isComputing() const { return m_computing; }
    // Of the computing that runs: 0..1, and at what it is.
    double share() const { return m_share; }
    const QString& doing() const { return m_doing; }

signals:
    void changed(); // answer, staleness or progress

private:
    void begin();
    void halt(int pause);

    Session& m_session;
    Task m_task;
    std::shared_ptr<const void> m_answer;
    quint64 m_answerOf = 0;
    quint64 m_run = 0;    // answers of earlier runs come too late
    bool m_asked = false; // another question since
    bool m_watched = false;
    bool m_computing = false;
    double m_share = 0;
    QString m_doing;
    QTimer m_pause;
    Worker m_worker; // last: it ends before what its tasks tell
};

} // namespace cutwater::editor
