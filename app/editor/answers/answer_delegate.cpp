// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/answer_delegate.h"

#include "app/editor/answers/answer_model.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QPainter>
#include <QTextLayout>

#include <cmath>

namespace cutwater::editor {
namespace {

constexpr int kMargin = 4; // around the words

// Breaks `text` over `width`; answers the height, and draws where there is a painter.
double flow(const QString& text, const QFont& font, double width, QPainter* painter,
            QPointF where) {
    QTextLayout layout(text, font);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    double height = 0;
    for (;;) {
        QTextLine line = layout.createLine();
        if (!line.isValid()) break;
        line.setLineWidth(std::max(1.0, width));
        line.setPosition({0, height});
        height += line.height();
    }
    layout.endLayout();
    if (painter) layout.draw(painter, where);
    return height;
}

struct Parts {
    QString symbol, first, rest;
    QFont bold;
    int indent = 0;
};

Parts partsOf(const QModelIndex& index, const QFont& font) {
    Parts parts;
    const auto kind = static_cast<LineKind>(index.data(AnswerModel::KindRole).toInt());
    const QString text = index.data().toString();
    const auto end = text.indexOf('\n');
    parts.first = end < 0 ? text : text.left(end);
    parts.rest = end < 0 ? QString() : text.mid(end + 1);
    parts.symbol = AnswerLines::symbol(kind);
    parts.bold = font;
    parts.bold.setBold(kind == LineKind::heading);
    if (kind != LineKind::heading)
        parts.indent = QFontMetrics(font).horizontalAdvance(QStringLiteral("\u26A0\u2003"));
    return parts;
}

} // namespace

AnswerDelegate::AnswerDelegate(QAbstractItemView* view) : QStyledItemDelegate(view), m_view(view) {}

QSize AnswerDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Parts parts = partsOf(index, option.font);
    const int width = m_view->viewport()->width();
    const double room = width - 2 * kMargin - parts.indent;
    double height = flow(parts.first, parts.bold, room, nullptr, {});
    if (!parts.rest.isEmpty()) height += flow(parts.rest, option.font, room, nullptr, {});
    const int above = parts.indent == 0 && index.row() > 0 ? 2 * kMargin : 0;
    return {width, static_cast<int>(std::ceil(height)) + 2 * kMargin + above};
}

void AnswerDelegate::paint(QPainter* painter, const QStyleOptionViewItem& given,
                           const QModelIndex& index) const {
    QStyleOptionViewItem option = given;
    initStyleOption(&option, index);
    option.text.clear();
    const QStyle* const style = option.widget ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &option, painter, option.widget);

    const Parts parts = partsOf(index, given.font);
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    const QColor ink = option.palette.color(selected ? QPalette::HighlightedText : QPalette::Text);
    const int above = parts.indent == 0 && index.row() > 0 ? 2 * kMargin : 0;
    const double top = option.rect.top() + kMargin + above;
    const double left = option.rect.left() + kMargin;
    const double room = option.rect.width() - 2 * kMargin - parts.indent;
    painter->save();
    painter->setClipRect(option.rect);
    painter->setPen(ink);
    if (!parts.symbol.isEmpty()) flow(parts.symbol, given.font, room, painter, {left, top});
    const double height = flow(parts.first, parts.bold, room, painter, {left + parts.indent, top});
    if (!parts.rest.isEmpty()) {
        QColor quiet = ink;
        // Still more than 4.5:1 on either palette; a selection's own colours may be nearer.
        if (!selected) quiet.setAlphaF(0.78F);
        painter->setPen(quiet);
        flow(parts.rest, given.font, room, painter, {left + parts.indent, top + height});
    }
    painter->restore();
}

} // namespace cutwater::editor
