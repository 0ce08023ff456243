// SPDX-License-Identifier: GPL-3.0-or-later
// Session: the project that is being edited. Views take snapshots of it, and ask it for edits;
// nothing else changes it. Lives in the GUI thread; files are read in a worker.
#pragma once

#include "models/project/edits/changed.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <functional>
#include <memory>

namespace cutwater::editor {

using Snapshot = std::shared_ptr<const project::Project>;
using Edit = std::function<project::edits::Result(const project::Project&)>;

class Session : public QObject {
    Q_OBJECT
public:
    explicit Session(QObject* parent = nullptr);
    ~Session() override;

    // Never null. A value: it stays as it is when the next edit comes. Any thread may read it.
    Snapshot project() const { return m_project; }
    // Grows with every change, undo and redo included: an answer that was computed for a smaller
    // number is stale.
    quint64 revision() const { return m_revision; }
    QUndoStack* undoStack() { return &m_undo; }

    // Makes the edit and remembers it for undo under its own name; where the edit refuses, nothing
    // changes and refused() tells why. True where it was made.
    bool apply(const Edit& edit);

    // The file; empty for a project that was never saved.
    const QString& path() const { return m_path; }
    bool isDirty() const { return !m_undo.isClean(); }

    // Reads a file in a worker: opened() or openFailed() follows. Until then, and where it fails,
    // the document stays as it is.
    void open(const QString& path);
    // Puts a project in the place of the one at hand; undo starts anew.
    void start(project::Project project, const QString& path = {});

signals:
    void projectChanged(); // a new snapshot; also after start() and opened()
    void replaced();       // it is another project altogether: forget what was folded, zoomed ...
    void edited(const std::vector<cutwater::project::Id>& touched); // by apply(), after the change
    void refused(const QString& sentence);
    void opened(const QString& path);
    void openFailed(const QString& path, const cutwater::project::Problems& problems);
    void pathChanged();
    void dirtyChanged(bool dirty);

private:
    class Step; // one entry of the undo stack
    void take(Snapshot project);

    QUndoStack m_undo;
    Snapshot m_project;
    QString m_path;
    quint64 m_revision = 0;
    quint64 m_opening = 0; // the last call of open()
};

} // namespace cutwater::editor
