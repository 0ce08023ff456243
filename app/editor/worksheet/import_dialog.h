// SPDX-License-Identifier: GPL-3.0-or-later
// TableImportDialog: a table from a file or the clipboard into the worksheet. Shows which column of
// the table is which of ours, and what becomes of each row, before anything changes.
#pragma once

#include "app/editor/session/session.h"
#include "models/worksheet/import.h"

#include <QDialog>

#include <memory>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace cutwater::editor {

class TableImportDialog : public QDialog {
    Q_OBJECT
public:
    TableImportDialog(Snapshot project, QWidget* parent);

    // Reads the file; false with a sentence on the page where it cannot be read.
    bool readFile(const QString& path);
    void readText(const QString& text, const QString& name);

    // What was looked at last; null where nothing could be taken.
    const std::shared_ptr<const worksheet::Import>& import() const { return m_import; }
    const std::string& text() const { return m_text; }
    worksheet::ImportWish wish() const;
    bool isLooking() const { return m_looking; }
    QString report() const; // every row, with what becomes of it

    QComboBox* choiceFor(int column) const; // of the matching

private:
    void chooseFile();
    void readHeadings();
    void tellSeparator();
    void look();
    void showOutcome(std::shared_ptr<project::Outcome<worksheet::Import>> outcome);
    void fillRows();
    void saveReport();

    Snapshot m_project;
    std::string m_text;
    std::vector<std::string> m_header;
    std::shared_ptr<const worksheet::Import> m_import;
    quint64 m_number = 0;
    bool m_looking = false;
    QLineEdit* m_file;
    QComboBox* m_separator;
    QCheckBox* m_makeComponents;
    QTableWidget* m_matching;
    QTableWidget* m_rows;
    QLabel* m_sentence;
    QPushButton* m_take;
    QPushButton* m_copy;
    QPushButton* m_save;
};

} // namespace cutwater::editor
