// SPDX-License-Identifier: GPL-3.0-or-later
// The fields that cells are typed in.
#pragma once

#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>

#include <utility>
#include <vector>

namespace cutwater::editor {

// What every field can: a text in, a text out, and whether a hand was at it.
class CellField {
public:
    virtual ~CellField() = default;
    virtual QString cellText() const = 0;
    virtual void setCellText(const QString& text) = 0;
    virtual void selectAllText() = 0;
    bool touched = false;
    bool byTyping = false; // begun by a key that replaces the text: arrows lead out of the cell
};

// Several lines, which wrap; grows with its text. With `separator` the lines are texts of their own
// that stand in the cell with the separator between them.
class CellTextField : public QPlainTextEdit, public CellField {
    Q_OBJECT
public:
    CellTextField(const QString& separator, QWidget* parent);
    QString cellText() const override;
    void setCellText(const QString& text) override;
    void selectAllText() override { selectAll(); }
    // The place of the cell; the field is at least as large.
    void setCell(const QRect& cell);
    void newLine() { insertPlainText(QStringLiteral("\n")); }

private:
    void grow();
    QString m_separator;
    QRect m_cell;
};

// A list of what is usual, and whatever is typed.
class CellChoiceField : public QComboBox, public CellField {
    Q_OBJECT
public:
    // Text for the cell, and what the list says.
    using Choices = std::vector<std::pair<QString, QString>>;
    // `complete`: while somebody types, a list of what fits opens below.
    CellChoiceField(const Choices& choices, bool complete, QWidget* parent);
    QString cellText() const override;
    void setCellText(const QString& text) override;
    void selectAllText() override { lineEdit()->selectAll(); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

class CellLineField : public QLineEdit, public CellField {
    Q_OBJECT
public:
    explicit CellLineField(QWidget* parent);
    QString cellText() const override { return text(); }
    void setCellText(const QString& text) override { setText(text); }
    void selectAllText() override { selectAll(); }
    // Alt+Down, or the button in the field, shows a calendar.
    void offerCalendar();
    void showCalendar();
};

CellField* cellField(QWidget* editor); // null where it is none

} // namespace cutwater::editor
