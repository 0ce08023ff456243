// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/clear_style.h"

#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>

namespace cutwater::editor {
namespace {

// The frame: the colour of the text, a little quieter; over 4.5 : 1 on both grounds.
QColor frameOf(const QStyleOption& option) {
    const QPalette& palette = option.palette;
    const bool enabled = option.state & QStyle::State_Enabled;
    QColor text = palette.color(enabled ? QPalette::Active : QPalette::Disabled, QPalette::Text);
    if (option.state & QStyle::State_HasFocus && enabled)
        text = palette.color(QPalette::Active, QPalette::Link);
    return text;
}

void drawCheck(const QStyleOption& option, QPainter& painter) {
    const QRectF box = QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5);
    const bool on = option.state & QStyle::State_On;
    const bool partly = option.state & QStyle::State_NoChange;
    const QColor frame = frameOf(option);
    painter.setPen(QPen(frame, 1.4));
    painter.setBrush(option.palette.base());
    painter.drawRoundedRect(box, 1.5, 1.5);
    if (partly) {
        painter.drawLine(QPointF(box.left() + 3, box.center().y()),
                         QPointF(box.right() - 3, box.center().y()));
    } else if (on) {
        QPen pen(frame, std::max(1.8, box.width() / 7), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
        painter.setPen(pen);
        const auto at = [&](double x, double y) {
            return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
        };
        painter.drawPolyline(QPolygonF({at(0.22, 0.53), at(0.43, 0.74), at(0.79, 0.27)}));
    }
}

void drawRadio(const QStyleOption& option, QPainter& painter) {
    const QRectF box = QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5);
    const QColor frame = frameOf(option);
    painter.setPen(QPen(frame, 1.4));
    painter.setBrush(option.palette.base());
    painter.drawEllipse(box);
    if (!(option.state & QStyle::State_On)) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(frame);
    const double in = box.width() * 0.27;
    painter.drawEllipse(box.adjusted(in, in, -in, -in));
}

} // namespace

ClearStyle::ClearStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("fusion"))) {
    setObjectName(QStringLiteral("fusion"));
}

void ClearStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
    const bool check = element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck;
    if (!check && element != PE_IndicatorRadioButton) {
        QProxyStyle::drawPrimitive(element, option, painter, widget);
        return;
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    check ? drawCheck(*option, *painter) : drawRadio(*option, *painter);
    painter->restore();
}

} // namespace cutwater::editor
