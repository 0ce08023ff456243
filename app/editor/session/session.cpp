// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/session/session.h"

#include "models/document/document.h"
#include "models/project/edits/delta.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QPointer>
#include <QThreadPool>
#include <QUndoCommand>

#include <atomic>
#include <iterator>
#include <utility>

namespace cutwater::editor {

namespace {

QString undoName(const project::edits::Changed& changed) {
    const QString text = QCoreApplication::translate("Edits", changed.doing.c_str());
    return changed.about.empty() ? text : text.arg(QString::fromStdString(changed.about));
}

// Form and meaning, in a worker. What is wrong in meaning comes beside the project.
project::Outcome<document::Loaded> readProject(const QString& path) {
    const auto cannot = [&](const QString& why, const char* remedy) {
        project::Problem problem;
        problem.what = QString("%1 cannot be read: %2").arg(path, why).toStdString();
        problem.remedy = remedy;
        return problem;
    };
    const QFileInfo facts(path);
    if (!facts.exists())
        return cannot(QStringLiteral("there is no such file"), "look for it under another name");
    if (!facts.isFile())
        return cannot(QStringLiteral("it is a folder or a device"), "choose a file");
    if (facts.size() > static_cast<qint64>(document::kMaxFileBytes))
        return cannot(QStringLiteral("it is larger than any project"), "choose a .cutwater file");
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return cannot(file.errorString(), "look at its permissions");
    auto loaded = document::parse(file.readAll().toStdString());
    if (!loaded) return loaded;
    project::Problems found = project::validate(loaded->project);
    loaded->warnings.insert(loaded->warnings.end(), std::make_move_iterator(found.begin()),
                            std::make_move_iterator(found.end()));
    return loaded;
}

} // namespace

QString sentence(const project::Problem& problem) {
    QString text = QString::fromStdString(problem.what);
    if (!problem.remedy.empty())
        text += QStringLiteral("; ") + QString::fromStdString(problem.remedy);
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text + QStringLiteral(".");
}

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

// One writing of the file.
struct Session::Save {
    Snapshot project;
    QString path;
    quint64 document;
    int index; // of the undo stack; -1 where it cannot be reached any more
    project::Problems problems = {};
    std::atomic<bool> done = false; // written before that: problems
};

Session::Session(QObject* parent)
    : QObject(parent), m_project(std::make_shared<const project::Project>()) {
    m_writer.setMaxThreadCount(1);
    connect(&m_undo, &QUndoStack::indexChanged, this, &Session::tellDirty);
}

Session::~Session() {
    m_undo.disconnect(this);
    m_writer.waitForDone();
}

void Session::tellDirty() {
    if (m_toldDirty == isDirty()) return;
    m_toldDirty = isDirty();
    emit dirtyChanged(m_toldDirty);
}

bool Session::apply(const Edit& edit) {
    project::edits::Result result = edit(*m_project);
    if (!result) {
        emit refused(sentence(result.problems().front()));
        return false;
    }
    project::edits::Delta delta = project::edits::differences(*m_project, result->project);
    const std::vector<project::Id> touched = std::move(result->touched);
    if (!delta.empty()) {
        const QString name = undoName(*result);
        auto snapshot = std::make_shared<const project::Project>(std::move(result->project));
        // What was undone goes now, and with it the way back to what is in the file.
        if (m_cleanIndex > m_undo.index()) m_cleanIndex = -1;
        for (const auto& save : m_saves)
            if (save->index > m_undo.index()) save->index = -1;
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

void Session::start(project::Project project, const QString& path, bool unsaved) {
    ++m_opening; // what is still being read comes too late
    ++m_document;
    m_cleanIndex = 0;
    m_unsaved = unsaved;
    m_undo.clear();
    m_path = path;
    m_project = std::make_shared<const project::Project>(std::move(project));
    ++m_revision;
    emit pathChanged();
    emit replaced();
    emit projectChanged();
    m_toldDirty = isDirty();
    emit dirtyChanged(m_toldDirty);
}

void Session::save(const QString& path) {
    auto save = std::make_shared<Save>(m_project, path, m_document, m_undo.index());
    m_saves.push_back(save);
    if (m_saves.size() == 1) emit savingChanged(true);
    QPointer<Session> self(this);
    m_writer.start([self, save] {
        try {
            save->problems = document::save(*save->project, save->path.toStdString());
        } catch (const std::exception& error) {
            project::Problem problem;
            problem.what = QString("%1 cannot be written: %2")
                               .arg(save->path, QString::fromLocal8Bit(error.what()))
                               .toStdString();
            problem.remedy = "close other programs and save again";
            save->problems = {problem};
        }
        save->done = true;
        if (QCoreApplication* const program = QCoreApplication::instance())
            QMetaObject::invokeMethod(program, [self] {
                if (self) self->finishSaves();
            });
    });
}

void Session::finishSaves() {
    if (m_saves.empty()) return;
    while (!m_saves.empty() && m_saves.front()->done) {
        const std::shared_ptr<Save> save = m_saves.front();
        m_saves.pop_front();
        if (!save->problems.empty()) {
            emit saveFailed(save->path, save->problems);
            continue;
        }
        if (save->document != m_document) continue; // another one was opened meanwhile
        m_unsaved = false;
        m_cleanIndex = save->index;
        if (save->path != m_path) {
            m_path = save->path;
            emit pathChanged();
        }
        tellDirty();
        emit saved(save->path);
    }
    if (m_saves.empty()) emit savingChanged(false);
}

project::Problems Session::saveTo(const QString& path) {
    save(path);
    const std::shared_ptr<Save> mine = m_saves.back();
    m_writer.waitForDone();
    finishSaves();
    return mine->problems;
}

void Session::openRecovered(const QString& copy, const QString& path) {
    read(copy, Reading::recovered, path);
}

void Session::read(const QString& path, Reading reading, const QString& saveAs) {
    const quint64 number = ++m_opening;
    ++m_reading;
    emit readingChanged(true);
    QPointer<Session> self(this);
    QThreadPool::globalInstance()->start([self, number, path, reading, saveAs] {
        auto loaded = std::make_shared<project::Outcome<document::Loaded>>(readProject(path));
        QMetaObject::invokeMethod(
            QCoreApplication::instance(), [self, number, path, reading, saveAs, loaded] {
                if (!self) return;
                --self->m_reading;
                emit self->readingChanged(self->m_reading > 0);
                if (number != self->m_opening) return;
                if (!*loaded) {
                    emit self->openFailed(path, loaded->problems());
                    return;
                }
                const QString file = reading == Reading::itself      ? path
                                     : reading == Reading::recovered ? saveAs
                                                                     : QString();
                const project::Problems problems = std::move((*loaded)->warnings);
                self->start(std::move((*loaded)->project), file, reading == Reading::recovered);
                emit self->opened(path, problems);
            });
    });
}

} // namespace cutwater::editor
