// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/cell_delegate.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QTextLayout>

namespace cutwater::editor {

namespace {

const GridModel* gridOf(const QModelIndex& index) {
    return qobject_cast<const GridModel*>(index.model());
}

QString separatorOf(CellEditor editor) {
    return editor == CellEditor::lines
               ? QString::fromUtf8(worksheet::kListSeparator.data(),
                                   qsizetype(worksheet::kListSeparator.size()))
               : QString();
}

constexpr double kGridShade = 0.22; // of the lines between cells, towards the text
constexpr int kPad = 4;             // beside the text, pixels

// Between two colours.
QColor blend(const QColor& a, const QColor& b, double share) {
    const auto mix = [&](int x, int y) { return static_cast<int>(x + (y - x) * share); };
    return QColor(mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue()));
}

} // namespace

CellDelegate::CellDelegate(QObject* parent) : QStyledItemDelegate(parent) {}

QWidget* CellDelegate::fieldFor(const SheetColumn& column, const GridModel& grid,
                                QWidget* parent) const {
    switch (column.editor) {
    case CellEditor::none: return nullptr;
    case CellEditor::text:
    case CellEditor::lines: return new CellTextField(separatorOf(column.editor), parent);
    case CellEditor::component:
    case CellEditor::severity:
    case CellEditor::severityRating:
    case CellEditor::occurrenceRating:
    case CellEditor::detectionRating:
    case CellEditor::yesNo:
    case CellEditor::states:
        return new CellChoiceField(choicesFor(column.editor, grid.sheet()),
                                   column.editor == CellEditor::component ||
                                       column.editor == CellEditor::severity,
                                   parent);
    case CellEditor::share:
    case CellEditor::interval:
    case CellEditor::date: break;
    }
    auto* field = new CellLineField(parent);
    if (column.editor == CellEditor::share) field->setPlaceholderText(tr("0 to 1"));
    if (column.editor == CellEditor::interval)
        field->setPlaceholderText(tr("4 wk", "a time between tests, with its unit"));
    if (column.editor == CellEditor::date) {
        field->setPlaceholderText(QDate::currentDate().toString(Qt::ISODate));
        field->offerCalendar();
    }
    return field;
}

QWidget* CellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                    const QModelIndex& index) const {
    const GridModel* grid = gridOf(index);
    if (!grid || grid->isGroup(index.row())) return nullptr;
    const SheetColumn& column = grid->columnAt(index.column());
    QWidget* field = fieldFor(column, *grid, parent);
    if (!field) return nullptr;
    field->setObjectName("cellField");
    field->setAccessibleName(column.title);
    field->setAccessibleDescription(column.tip);
    field->setAutoFillBackground(true);
    cellField(field)->byTyping = m_byTyping;
    return field;
}

void CellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    CellField* field = cellField(editor);
    // The project may change while somebody types: what he typed stays.
    if (!field || field->touched) return;
    field->setCellText(index.data(Qt::EditRole).toString());
    if (field->byTyping) field->selectAllText();
}

void CellDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                const QModelIndex& index) const {
    CellField* field = cellField(editor);
    m_taken = !field || !field->touched || model->setData(index, field->cellText(), Qt::EditRole);
}

void CellDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                        const QModelIndex&) const {
    if (auto* text = qobject_cast<CellTextField*>(editor)) return text->setCell(option.rect);
    QRect rect = option.rect;
    rect.setHeight(qMin(rect.height(), editor->sizeHint().height()));
    // A number column is narrow; its list says words.
    const int least =
        editor->fontMetrics().averageCharWidth() * (qobject_cast<QComboBox*>(editor) ? 28 : 16);
    rect.setWidth(qMax(rect.width(), least));
    const QRect room = editor->parentWidget()->rect();
    if (rect.right() > room.right()) rect.moveRight(qMax(room.right(), rect.width()));
    if (rect.left() < 0) rect.moveLeft(0);
    editor->setGeometry(rect);
}

void CellDelegate::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const {
    QStyledItemDelegate::initStyleOption(option, index);
    // Several texts in one cell: one a line.
    option->text.replace(separatorOf(CellEditor::lines), QStringLiteral("\n"));
    if (index.data(GridModel::overdueRole).toBool()) {
        option->font.setBold(true);
        option->text.prepend(QStringLiteral("!\u00A0")); // no line ends here
    }
    if (!index.data(GridModel::typedRole).toBool())
        option->backgroundBrush = blend(option->palette.color(QPalette::Base),
                                        option->palette.color(QPalette::Text), 0.08);
}

// Whole lines only, and a mark where there are more: half a line at the lower edge is no text.
void CellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& given,
                         const QModelIndex& index) const {
    const GridModel* grid = gridOf(index);
    if (grid && grid->isGroup(index.row())) return; // the view draws the head over all columns
    QStyleOptionViewItem option = given;
    initStyleOption(&option, index);
    const QString text = option.text;
    option.text.clear();
    const QStyle* style = option.widget ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &option, painter, option.widget);
    painter->save();
    painter->setPen(blend(option.palette.color(QPalette::Base),
                          option.palette.color(QPalette::Text), kGridShade));
    painter->drawLine(option.rect.topRight(), option.rect.bottomRight());
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (!text.isEmpty()) drawText(*painter, option, text);
    painter->restore();
}

void CellDelegate::drawText(QPainter& painter, const QStyleOptionViewItem& option,
                            const QString& text) {
    const QRect place = option.rect.adjusted(kPad, 1, -kPad, -1);
    const bool chosen = option.state & QStyle::State_Selected;
    painter.setPen(option.palette.color(chosen ? QPalette::HighlightedText : QPalette::Text));
    painter.setFont(option.font);
    painter.setClipRect(option.rect);
    const QFontMetrics& letters = option.fontMetrics;
    const Qt::Alignment side = option.displayAlignment & Qt::AlignHorizontal_Mask;
    const int step = letters.lineSpacing();
    int y = place.top();
    const auto line = [&](const QString& words, bool more) {
        const QString shown = more ? letters.elidedText(words + QStringLiteral(" \u2026"),
                                                        Qt::ElideRight, place.width())
                                   : words;
        painter.drawText(QRect(place.left(), y, place.width(), step), int(side | Qt::AlignVCenter),
                         more && !shown.endsWith(QChar(0x2026)) ? words : shown);
        y += step;
    };
    const QStringList paragraphs = text.split(u'\n');
    for (qsizetype i = 0; i < paragraphs.size(); ++i) {
        QTextOption wrap;
        wrap.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        QTextLayout layout(paragraphs[i], option.font);
        layout.setTextOption(wrap);
        layout.beginLayout();
        for (QTextLine part = layout.createLine(); part.isValid(); part = layout.createLine()) {
            part.setLineWidth(place.width());
            const bool last = y + 2 * step > place.bottom() + 1; // no room for one more
            const bool end = part.textStart() + part.textLength() >= paragraphs[i].size();
            const bool more = last && (!end || i + 1 < paragraphs.size());
            line(more ? paragraphs[i].mid(part.textStart())
                      : paragraphs[i].mid(part.textStart(), part.textLength()),
                 more);
            if (last) {
                layout.endLayout();
                return;
            }
        }
        layout.endLayout();
        if (paragraphs[i].isEmpty()) y += step;
    }
}

void CellDelegate::finish(QWidget* editor, CellStep step) {
    m_taken = false;
    emit commitData(editor);
    // What was refused stays in its field, to be mended.
    if (!m_taken) return;
    emit closeEditor(editor, NoHint);
    if (step != CellStep::none) emit left(step);
}

bool CellDelegate::key(QWidget* editor, const QKeyEvent& event) {
    const bool shift = event.modifiers() & Qt::ShiftModifier;
    auto* text = qobject_cast<CellTextField*>(editor);
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (text && (event.modifiers() & (Qt::AltModifier | Qt::ControlModifier))) {
            text->newLine();
            return true;
        }
        finish(editor, shift ? CellStep::up : CellStep::down);
        return true;
    case Qt::Key_Tab: finish(editor, CellStep::right); return true;
    case Qt::Key_Backtab: finish(editor, CellStep::left); return true;
    case Qt::Key_Down:
        if (auto* line = qobject_cast<CellLineField*>(editor);
            line && (event.modifiers() & Qt::AltModifier)) {
            line->showCalendar();
            return true;
        }
        break;
    case Qt::Key_Semicolon:
        if (auto* line = qobject_cast<CellLineField*>(editor);
            line && (event.modifiers() & Qt::ControlModifier)) {
            line->insert(QDate::currentDate().toString(Qt::ISODate));
            line->touched = true;
            return true;
        }
        break;
    default: break;
    }
    // Begun by typing over the cell: arrows lead to the next one. In a list they choose.
    if (!cellField(editor)->byTyping || event.modifiers() != Qt::NoModifier ||
        qobject_cast<QComboBox*>(editor))
        return false;
    switch (event.key()) {
    case Qt::Key_Left: finish(editor, CellStep::left); return true;
    case Qt::Key_Right: finish(editor, CellStep::right); return true;
    case Qt::Key_Up: finish(editor, CellStep::up); return true;
    case Qt::Key_Down: finish(editor, CellStep::down); return true;
    default: return false;
    }
}

bool CellDelegate::eventFilter(QObject* watched, QEvent* event) {
    auto* editor = qobject_cast<QWidget*>(watched);
    if (!editor || !cellField(editor)) return QStyledItemDelegate::eventFilter(watched, event);
    if (event->type() == QEvent::KeyPress && key(editor, *static_cast<QKeyEvent*>(event)))
        return true;
    if (event->type() == QEvent::ShortcutOverride) {
        // While a cell is typed in, its keys are the field's.
        auto* press = static_cast<QKeyEvent*>(event);
        if (press->key() == Qt::Key_Return || press->key() == Qt::Key_Enter ||
            press->key() == Qt::Key_Delete || press->key() == Qt::Key_Semicolon ||
            press->key() == Qt::Key_Down || press->key() == Qt::Key_Insert) {
            press->accept();
            return true;
        }
    }
    // A calendar or a list that belongs to the field does not end it.
    if (event->type() == QEvent::FocusOut) {
        QWidget* now = QApplication::activePopupWidget();
        if (now && (editor->isAncestorOf(now) || now->parentWidget() == editor)) return false;
    }
    return QStyledItemDelegate::eventFilter(watched, event);
}

} // namespace cutwater::editor
