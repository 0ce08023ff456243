// SPDX-License-Identifier: GPL-3.0-or-later
// SheetColumnsDialog: show and hide columns, put them in order, say how many stay in sight.
#pragma once

#include "app/editor/worksheet/column_choice.h"

#include <QDialog>

class QListWidget;
class QSpinBox;

namespace cutwater::editor {

class SheetColumnsDialog : public QDialog {
    Q_OBJECT
public:
    SheetColumnsDialog(const ColumnChoice& choice, QWidget* parent);
    ColumnChoice choice() const;

private:
    void fill(const std::vector<int>& shown);
    void move(int steps);

    ColumnChoice m_choice;
    QListWidget* m_list;
    QSpinBox* m_frozen;
    QSpinBox* m_lines;
};

} // namespace cutwater::editor
