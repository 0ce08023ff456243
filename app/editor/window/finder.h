// SPDX-License-Identifier: GPL-3.0-or-later
// Finder: one line that finds commands, and events, gates, components and failure modes of the
// project, and does or shows them.
#pragma once

#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"
#include "app/editor/window/commands.h"

#include <QDialog>

#include <vector>

class QLineEdit;
class QListWidget;

namespace cutwater::editor {

class Finder : public QDialog {
    Q_OBJECT
public:
    Finder(Commands& commands, Session& session, Selection& selection, QWidget* parent);

    // Opens it, empty.
    void begin();

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    struct Entry {
        QString text; // what is found
        QString note; // what it is
        QAction* command = nullptr;
        project::Id node; // else what to show
    };
    void collect();
    void find();
    void go();

    Commands& m_commands;
    Session& m_session;
    Selection& m_selection;
    QLineEdit* m_line;
    QListWidget* m_list;
    std::vector<Entry> m_entries;
};

// How well `text` fits what was typed: all its words must occur. 0: not at all; higher is better.
int fitness(const QString& text, const QStringList& words);

} // namespace cutwater::editor
