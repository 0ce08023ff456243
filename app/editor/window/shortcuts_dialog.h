// SPDX-License-Identifier: GPL-3.0-or-later
// Every command with its keys, to be changed.
#pragma once

#include "app/editor/window/commands.h"

#include <QDialog>

class QKeySequenceEdit;
class QLabel;
class QLineEdit;
class QTreeWidget;

namespace cutwater::editor {

class ShortcutsDialog : public QDialog {
    Q_OBJECT
public:
    ShortcutsDialog(Commands& commands, QWidget* parent);

private:
    void fill();
    void showCurrent();
    void take();
    QAction* current() const;

    Commands& m_commands;
    QLineEdit* m_filter;
    QTreeWidget* m_list;
    QKeySequenceEdit* m_keys;
    QLabel* m_sentence;
};

} // namespace cutwater::editor
