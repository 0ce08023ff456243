// SPDX-License-Identifier: GPL-3.0-or-later
// Session: the project that is being edited. Views take snapshots of it, and ask it for edits;
// nothing else changes it. Lives in the GUI thread; files are read in a worker.
#pragma once

#include "models/project/edits/changed.h"

#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QUndoStack>

#include <deque>
#include <functional>
#include <memory>

namespace cutwater::editor {

using Snapshot = std::shared_ptr<const project::Project>;
using Edit = std::function<project::edits::Result(const project::Project&)>;

// A problem as a person reads it: what, and how to mend it.
QString sentence(const project::Problem& problem);

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
    bool isDirty() const { return m_unsaved || m_undo.index() != m_cleanIndex; }
    bool isReading() const { return m_reading > 0; }
    bool isSaving() const { return !m_saves.empty(); }

    // Reads a file in a worker: opened() or openFailed() follows. Until then, and where it fails,
    // the document stays as it is. Errors of meaning (a gate without inputs) do not hinder: they
    // are in the problems of opened(), so that they can be mended here.
    void open(const QString& path) { read(path, Reading::itself); }
    // The same, as a new project that has no file yet: the demo, a template.
    void openCopy(const QString& path) { read(path, Reading::copy); }
    // The same for what a crash left behind: unsaved, to be saved as `path` (which may be empty).
    void openRecovered(const QString& copy, const QString& path);
    // What is being read comes too late.
    void stopReading() { ++m_opening; }
    // Puts a project in the place of the one at hand; undo starts anew.
    void start(project::Project project, const QString& path = {}, bool unsaved = false);
    // Writes the project as it is now in a worker, so that the file is never half written: saved()
    // or saveFailed() follows. Several are written one after another, in the order of the calls.
    // Where edits were made meanwhile the document stays dirty.
    void save(const QString& path);
    // The same, and waits for it without letting anything else happen. The problems say why not;
    // then all is as it was.
    project::Problems saveTo(const QString& path);

signals:
    void projectChanged(); // a new snapshot; also after start() and opened()
    void replaced();       // it is another project altogether: forget what was folded, zoomed ...
    void edited(const std::vector<cutwater::project::Id>& touched); // by apply(), after the change
    void refused(const QString& sentence);
    // `path` is what was read; the problems are errors and warnings, none keeps it from being
    // shown.
    void opened(const QString& path, const cutwater::project::Problems& problems);
    void openFailed(const QString& path, const cutwater::project::Problems& problems);
    void readingChanged(bool reading);
    void saved(const QString& path);
    void saveFailed(const QString& path, const cutwater::project::Problems& problems);
    void savingChanged(bool saving);
    void pathChanged();
    void dirtyChanged(bool dirty);

private:
    class Step; // one entry of the undo stack
    struct Save;
    enum class Reading { itself, copy, recovered };
    void read(const QString& path, Reading reading, const QString& saveAs = {});
    void take(Snapshot project);
    void finishSaves();
    void tellDirty();

    QUndoStack m_undo;
    int m_cleanIndex = 0; // of the undo stack, where it is as in the file; -1: not to be reached
    bool m_toldDirty = false;
    Snapshot m_project;
    QString m_path;
    quint64 m_revision = 0;
    quint64 m_opening = 0;                     // the last call of open()
    int m_reading = 0;                         // files that workers are reading
    bool m_unsaved = false;                    // the project as it was started is in no file
    quint64 m_document = 0;                    // counts the calls of start()
    std::deque<std::shared_ptr<Save>> m_saves; // being written, or waiting for it
    QThreadPool m_writer;                      // one thread; last: its end waits
};

} // namespace cutwater::editor
