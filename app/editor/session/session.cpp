// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/session/session.h"

#include "models/document/document.h"
#include "models/project/edits/delta.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>
#include <QUndoCommand>

#include <utility>

namespace cutwater::editor {

namespace {

QString undoName(const project::edits::Changed& changed) {
    const QString text = QCoreApplication::translate("Edits", changed.doing.c_str());
    return changed.about.empty() ? text : text.arg(QString::fromStdString(changed.about));
}

} // namespace

class Session::Step : public QUndoCommand {
public:
    Step(Session& session, const QString& name, project::edits::Delta delta, Snapshot first)
        : QUndoCommand(name), m_session(session), m_delta(std::move(delta)),
          m_first(std::move(first)) {}

    void redo() override {
        if (m_first) return m_session.take(std::exchange(m_first, {}));
        m_session.take(std::make_shared<const project::Project>(
            project::edits::apply(m_delta, *m_session.m_project)));
    }
    void undo() override {
        m_session.take(std::make_shared<const project::Project>(
            project::edits::revert(m_delta, *m_session.m_project)));
    }

private:
    Session& m_session;
    project::edits::Delta m_delta;
    Snapshot m_first; // what the edit made; gone once it is shown
};

Session::Session(QObject* parent)
    : QObject(parent), m_project(std::make_shared<const project::Project>()) {
    connect(&m_undo, &QUndoStack::cleanChanged, this,
            [this](bool clean) { emit dirtyChanged(!clean); });
}

Session::~Session() {
    m_undo.disconnect(this);
}

bool Session::apply(const Edit& edit) {
    project::edits::Result result = edit(*m_project);
    if (!result) {
        emit refused(QString::fromStdString(project::toSentence(result.problems().front())));
        return false;
    }
    project::edits::Delta delta = project::edits::differences(*m_project, result->project);
    const std::vector<project::Id> touched = std::move(result->touched);
    if (!delta.empty()) {
        const QString name = undoName(*result);
        auto snapshot = std::make_shared<const project::Project>(std::move(result->project));
        m_undo.push(new Step(*this, name, std::move(delta), std::move(snapshot)));
    }
    emit edited(touched);
    return true;
}

void Session::take(Snapshot project) {
    m_project = std::move(project);
    ++m_revision;
    emit projectChanged();
}

void Session::start(project::Project project, const QString& path) {
    ++m_opening; // what is still being read comes too late
    m_undo.clear();
    m_path = path;
    m_project = std::make_shared<const project::Project>(std::move(project));
    ++m_revision;
    emit pathChanged();
    emit replaced();
    emit projectChanged();
}

void Session::open(const QString& path) {
    const quint64 number = ++m_opening;
    QPointer<Session> self(this);
    QThreadPool::globalInstance()->start([self, number, path] {
        auto loaded = std::make_shared<project::Outcome<document::Loaded>>(
            document::load(path.toStdString()));
        QMetaObject::invokeMethod(QCoreApplication::instance(), [self, number, path, loaded] {
            if (!self || number != self->m_opening) return;
            if (!*loaded) {
                emit self->openFailed(path, loaded->problems());
                return;
            }
            self->start(std::move((*loaded)->project), path);
            emit self->opened(path);
        });
    });
}

} // namespace cutwater::editor
