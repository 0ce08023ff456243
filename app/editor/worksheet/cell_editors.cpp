// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/cell_editors.h"

#include <QAbstractItemView>
#include <QAction>
#include <QCalendarWidget>
#include <QCompleter>
#include <QCoreApplication>
#include <QDialog>
#include <QIcon>
#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <QTextLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace cutwater::editor {

namespace {

constexpr int kLeastWidth = 30; // of a text field, in letters
constexpr int kMostLines = 12;  // that a text field grows to
constexpr int kSlack = 10;      // frame and margins of a text field, pixels

// A sheet of a calendar, drawn so that it follows the palette.
QIcon calendarIcon(const QPalette& palette) {
    QPixmap pixmap(32, 32);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.color(QPalette::Text), 2));
    painter.drawRoundedRect(5, 7, 22, 20, 3, 3);
    painter.drawLine(5, 13, 27, 13);
    painter.drawLine(11, 4, 11, 9);
    painter.drawLine(21, 4, 21, 9);
    painter.fillRect(QRect(16, 18, 6, 5), palette.color(QPalette::Text));
    return QIcon(pixmap);
}

} // namespace

CellTextField::CellTextField(const QString& separator, QWidget* parent)
    : QPlainTextEdit(parent), m_separator(separator) {
    setTabChangesFocus(true);
    setFrameShape(QFrame::Box);
    document()->setDocumentMargin(2);
    setVerticalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(this, &QPlainTextEdit::textChanged, this, [this] {
        touched = true;
        grow();
    });
}

QString CellTextField::cellText() const {
    QString text = toPlainText();
    if (m_separator.isEmpty()) return text;
    QStringList parts = text.split(QLatin1Char('\n'));
    while (!parts.isEmpty() && parts.constLast().trimmed().isEmpty())
        parts.removeLast(); // a line that was begun and left
    return parts.join(m_separator);
}

void CellTextField::setCellText(const QString& text) {
    setPlainText(m_separator.isEmpty() ? text
                                       : QString(text).replace(m_separator, QStringLiteral("\n")));
    moveCursor(QTextCursor::End);
    touched = false;
}

void CellTextField::setCell(const QRect& cell) {
    m_cell = cell;
    grow();
}

void CellTextField::grow() {
    if (m_cell.isNull() || !parentWidget()) return;
    const QFontMetrics letters(font());
    const QRect room = parentWidget()->rect();
    const int width =
        std::min(std::max(m_cell.width(), letters.averageCharWidth() * kLeastWidth), room.width());
    int lines = 0;
    QTextOption wrap;
    wrap.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    for (const QString& paragraph : toPlainText().split(QLatin1Char('\n'))) {
        QTextLayout layout(paragraph, font());
        layout.setTextOption(wrap);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine())
            line.setLineWidth(std::max(width - kSlack, 40));
        layout.endLayout();
        lines += std::max(layout.lineCount(), 1);
    }
    const int height = std::clamp(std::min(lines, kMostLines) * letters.lineSpacing() + kSlack,
                                  m_cell.height(), std::max(m_cell.height(), room.height()));
    // Wholly in sight.
    const int x = std::max(0, std::min(m_cell.x(), room.width() - width));
    const int y = std::max(0, std::min(m_cell.y(), room.height() - height));
    setGeometry(x, y, width, height);
}

CellChoiceField::CellChoiceField(const Choices& choices, bool complete, QWidget* parent)
    : QComboBox(parent) {
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    for (const auto& [text, words] : choices)
        addItem(words, text);
    if (complete) {
        completer()->setCompletionMode(QCompleter::PopupCompletion);
        completer()->setFilterMode(Qt::MatchContains);
        completer()->setCaseSensitivity(Qt::CaseInsensitive);
        completer()->popup()->installEventFilter(this);
    } else {
        setCompleter(nullptr);
    }
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    connect(this, &QComboBox::editTextChanged, this, [this] { touched = true; });
}

QString CellChoiceField::cellText() const {
    const QString typed = currentText();
    for (int i = 0; i < count(); ++i)
        if (itemText(i).compare(typed, Qt::CaseInsensitive) == 0) return itemData(i).toString();
    return typed;
}

void CellChoiceField::setCellText(const QString& text) {
    setCurrentIndex(findData(text)); // so that the list opens at it
    setEditText(text);
    touched = false;
}

// Enter takes what the list proposes, and then the cell: one key, not two.
bool CellChoiceField::eventFilter(QObject* watched, QEvent* event) {
    if (completer() && watched == completer()->popup() && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter ||
            key->key() == Qt::Key_Tab)
            QCoreApplication::postEvent(
                this, new QKeyEvent(QEvent::KeyPress, key->key(), key->modifiers()));
    }
    return QComboBox::eventFilter(watched, event);
}

CellLineField::CellLineField(QWidget* parent) : QLineEdit(parent) {
    connect(this, &QLineEdit::textEdited, this, [this] { touched = true; });
}

void CellLineField::offerCalendar() {
    QAction* action = addAction(calendarIcon(palette()), QLineEdit::TrailingPosition);
    action->setToolTip(tr("Choose a day (Alt+Down)"));
    connect(action, &QAction::triggered, this, &CellLineField::showCalendar);
}

void CellLineField::showCalendar() {
    // A child with a focus of its own: the cell's field stays open below it.
    auto* sheet = new QDialog(this, Qt::Popup);
    sheet->setAttribute(Qt::WA_DeleteOnClose);
    sheet->setObjectName("calendar");
    auto* calendar = new QCalendarWidget(sheet);
    calendar->setLocale(QLocale());
    calendar->setGridVisible(true);
    const QDate now = QDate::fromString(text().trimmed(), Qt::ISODate);
    calendar->setSelectedDate(now.isValid() ? now : QDate::currentDate());
    auto* layout = new QVBoxLayout(sheet);
    layout->setContentsMargins(2, 2, 2, 2);
    layout->addWidget(calendar);
    connect(calendar, &QCalendarWidget::activated, this, [this, sheet](const QDate& day) {
        setText(day.toString(Qt::ISODate));
        touched = true;
        sheet->close();
        setFocus();
    });
    sheet->move(mapToGlobal(QPoint(0, height())));
    sheet->show();
    calendar->setFocus();
}

CellField* cellField(QWidget* editor) {
    return dynamic_cast<CellField*>(editor);
}

} // namespace cutwater::editor
