// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/background.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QPointer>

#include <utility>

namespace cutwater::editor {

namespace {

constexpr int kPause = 300;              // ms without an edit before it is computed
constexpr qint64 kBetweenProgress = 100; // ms

} // namespace

Background::Background(Session& session, Task task, QObject* parent)
    : QObject(parent), m_session(session), m_task(std::move(task)) {
    m_pause.setSingleShot(true);
    connect(&m_pause, &QTimer::timeout, this, &Background::begin);
    connect(&m_session, &Session::projectChanged, this, [this] { halt(kPause); });
    connect(&m_session, &Session::replaced, this, [this] {
        m_answer.reset();
        emit changed();
    });
}

Background::~Background() = default;

void Background::halt(int pause) {
    m_worker.stop();
    ++m_run;
    m_computing = false;
    if (m_watched) m_pause.start(pause);
    emit changed();
}

void Background::setWatched(bool watched) {
    m_watched = watched;
    if (watched && isStale() && !m_computing && !m_pause.isActive()) m_pause.start(0);
}

void Background::ask(Task task) {
    m_task = std::move(task);
    m_asked = true;
    halt(0);
}

void Background::begin() {
    if (!isStale() || m_computing) return;
    m_computing = true;
    m_share = 0;
    m_doing.clear();
    emit changed();
    const Snapshot project = m_session.project();
    const quint64 revision = m_session.revision(), run = ++m_run;
    QPointer<Background> self(this);
    m_worker.start([self, project, revision, run, task = m_task](const std::stop_token& stop) {
        const auto tell = [&](auto what) {
            QMetaObject::invokeMethod(QCoreApplication::instance(), [self, run, what] {
                if (self && self->m_run == run) what(*self);
            });
        };
        QElapsedTimer since;
        since.start();
        const auto answer = task(project, stop, [&](double share, const std::string& doing) {
            if (since.elapsed() < kBetweenProgress) return;
            since.restart();
            tell([share, words = QString::fromStdString(doing)](Background& it) {
                it.m_share = share;
                it.m_doing = words;
                emit it.changed();
            });
        });
        if (!answer || stop.stop_requested()) return;
        tell([answer, revision](Background& it) {
            it.m_answer = answer;
            it.m_answerOf = revision;
            it.m_asked = false;
            it.m_computing = false;
            emit it.changed();
        });
    });
}

} // namespace cutwater::editor
