// SPDX-License-Identifier: GPL-3.0-or-later
// What shall go into a file, or on paper.
#pragma once

#include <QDialog>

class QComboBox;
class QRadioButton;

namespace cutwater::editor {

class SheetExportDialog : public QDialog {
    Q_OBJECT
public:
    // Rows and columns that are seen; all rows.
    SheetExportDialog(int rows, int columns, int allRows, QWidget* parent);
    QString suffix() const; // "csv" ...
    QString filter() const; // as QFileDialog has it
    bool everything() const;

private:
    QComboBox* m_format;
    QRadioButton* m_seen;
    QRadioButton* m_all;
};

class SheetPaperDialog : public QDialog {
    Q_OBJECT
public:
    explicit SheetPaperDialog(QWidget* parent);
    bool a3() const;

private:
    QComboBox* m_size;
};

} // namespace cutwater::editor
