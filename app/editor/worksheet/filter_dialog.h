// SPDX-License-Identifier: GPL-3.0-or-later
// SheetFilterDialog: which rows of one column are seen.
#pragma once

#include "app/editor/worksheet/arrange.h"

#include <QDialog>

class QLineEdit;
class QListWidget;

namespace cutwater::editor {

class SheetFilterDialog : public QDialog {
    Q_OBJECT
public:
    SheetFilterDialog(const SheetData& sheet, const EffectFigures& figures, int column,
                      const ColumnFilter& filter, QWidget* parent);
    ColumnFilter filter() const; // empty: every row

private:
    void tickAll(bool ticked);
    void narrow();

    QLineEdit* m_contains;
    QLineEdit* m_least = nullptr;
    QLineEdit* m_most = nullptr;
    QListWidget* m_values;
};

} // namespace cutwater::editor
