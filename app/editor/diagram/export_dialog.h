// SPDX-License-Identifier: GPL-3.0-or-later
// What to export, how, and where to. And printing the same sheets.
#pragma once

#include "app/editor/diagram/export.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPrinter;
class QPushButton;
class QSpinBox;

namespace cutwater::editor {

class ExportDialog : public QDialog {
    Q_OBJECT
public:
    ExportDialog(drawing::Paper paper, drawing::Orientation orientation, CaptionKind captions,
                 bool hasSheet, QWidget* parent = nullptr);

    QString path() const;
    drawing::Paper paper() const;
    drawing::Orientation orientation() const;
    CaptionKind captions() const;
    bool onlyThisSheet() const;
    int dpi() const;

private:
    void browse();
    void check();

    QLineEdit* m_path;
    QLabel* m_remark;
    QComboBox *m_paper, *m_orientation, *m_captions;
    QCheckBox* m_onlyThis;
    QSpinBox* m_dpi;
    QPushButton* m_write;
};

// Prints the pages that the printer was set to. False: `sentence` says why.
bool printSheets(const ExportOrder& order, const sdk::Layout& layout, QPrinter& printer,
                 QString& sentence);

} // namespace cutwater::editor
