// SPDX-License-Identifier: GPL-3.0-or-later
// SheetRowDialog: which component fails, and how. A component that the plant does not have is made
// with the row.
#pragma once

#include "app/editor/worksheet/cell_editors.h"
#include "app/editor/worksheet/sheet_data.h"

#include <QDialog>

class QDialogButtonBox;
class QLabel;

namespace cutwater::editor {

class SheetRowDialog : public QDialog {
    Q_OBJECT
public:
    // `component`: proposed, by its tag.
    SheetRowDialog(const SheetData& sheet, const QString& component, QWidget* parent);

    project::Id component() const; // empty: it is a new one
    QString newTag() const;
    project::Id parentOfNew() const;
    QString name() const;

private:
    void look();

    const SheetData& m_data;
    CellChoiceField* m_component;
    CellChoiceField* m_parent;
    QLineEdit* m_name;
    QLabel* m_words;
    QDialogButtonBox* m_buttons;
};

} // namespace cutwater::editor
