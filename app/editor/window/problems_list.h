// SPDX-License-Identifier: GPL-3.0-or-later
// ProblemsList: what is wrong or incomplete in the project, always current; a click leads there.
#pragma once

#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"

#include <QTreeWidget>

class QTimer;

namespace cutwater::editor {

class ProblemsList : public QTreeWidget {
    Q_OBJECT
public:
    ProblemsList(Session& session, Selection& selection, QWidget* parent = nullptr);

    // Problems of a file that could not be opened; shown until the project changes.
    void showFile(const QString& path, const project::Problems& problems);
    int errors() const { return m_errors; }

signals:
    void counted(int errors, int warnings);

private:
    void judge(); // in a worker
    void show(const project::Problems& problems);
    void go(const QTreeWidgetItem* item);

    Session& m_session;
    Selection& m_selection;
    QTimer* m_timer;
    bool m_judging = false;
    bool m_ofFile = false; // those of a file are shown
    int m_errors = 0;
};

// The event or gate that a problem speaks of: by its id in `where` or in the sentence itself, or
// the event that is the failure mode spoken of. Empty: none.
project::Id nodeOf(const project::Problem& problem, const project::Project& project);

} // namespace cutwater::editor
