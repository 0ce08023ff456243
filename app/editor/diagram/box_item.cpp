// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/items.h"

#include "app/drawing/paint.h"
#include "app/drawing/palette.h"

#include <QPainter>
#include <QStyleOptionGraphicsItem>

#include <algorithm>

namespace cutwater::editor {
namespace {

constexpr double kMargin = 9; // around the frame: dot, fold button, frame of the selection

QPen thinPen(const QColor& colour, double pixels, Qt::PenStyle style = Qt::SolidLine) {
    QPen pen(colour, pixels, style);
    pen.setCosmetic(true);
    return pen;
}

} // namespace

BoxItem::BoxItem(const PageBox& box, const SceneInk& ink) : m_box(box), m_ink(ink) {
    setPos(target());
    setZValue(1);
}

void BoxItem::setBox(const PageBox& box) {
    const bool same =
        box.words.label.name == m_box.words.label.name &&
        box.words.label.id == m_box.words.label.id && box.words.inside == m_box.words.inside &&
        box.words.under == m_box.words.under && box.words.atLeft == m_box.words.atLeft &&
        box.words.usedOn == m_box.words.usedOn && box.words.folded == m_box.words.folded &&
        box.words.dashed == m_box.words.dashed && box.words.rightTaken == m_box.words.rightTaken &&
        box.words.hasFoot == m_box.words.hasFoot && box.symbol == m_box.symbol &&
        box.textHeight == m_box.textHeight && box.height == m_box.height;
    if (!same) {
        prepareGeometryChange();
        m_strokes.clear();
        m_largeId = {};
        update();
    }
    m_box = box;
}

void BoxItem::setState(const BoxState& state) {
    if (state == m_state) return;
    if (state.marked != m_state.marked) m_strokes.clear();
    m_state = state;
    update();
}

void BoxItem::forgetStrokes() {
    m_strokes.clear();
    m_largeId = {};
    update();
}

QRectF BoxItem::frame() const {
    return {-drawing::kBoxWidth / 2, 0, drawing::kBoxWidth, m_box.height};
}

QRectF BoxItem::handle() const {
    if (!m_box.foldable) return {};
    constexpr double kRadius = 5.2;
    const QPointF centre(drawing::kSymbolWide / 2 + 9,
                         m_box.textHeight + drawing::kStem + drawing::kSymbolHigh - kRadius);
    return {centre.x() - kRadius, centre.y() - kRadius, 2 * kRadius, 2 * kRadius};
}

QRectF BoxItem::boundingRect() const {
    return frame().adjusted(-kMargin, -kMargin, kMargin, kMargin);
}

const std::vector<Stroke>& BoxItem::strokes() {
    if (m_strokes.empty()) {
        drawing::BoxWords words = m_box.words;
        words.marked = m_state.marked;
        m_strokes = strokesOf(
            drawing::drawBox(m_box.symbol, words, {0, 0}, m_box.textHeight, m_ink.lettering),
            m_ink.lettering.family);
    }
    return m_strokes;
}

void BoxItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    painter->setRenderHint(QPainter::Antialiasing);
    const double scale =
        QStyleOptionGraphicsItem::levelOfDetailFromTransform(painter->worldTransform());
    const Look& look = m_ink.look;
    if (m_state.selected) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(look.selectedFill());
        painter->drawRoundedRect(frame().adjusted(-5, -5, 5, 5), 5, 5);
    }
    if (scale < kIdReadable)
        paintFar(*painter);
    else
        paintStrokes(*painter, strokes(), look, scale >= kReadable);
    if (scale < kReadable && scale >= kIdReadable) paintLargeId(*painter);
    painter->setBrush(Qt::NoBrush);
    if (m_state.hit) {
        painter->setPen(thinPen(look.hit(), 2, Qt::DashLine));
        painter->drawRoundedRect(frame().adjusted(-3, -3, 3, 3), 4, 4);
    }
    if (m_state.selected) {
        painter->setPen(thinPen(look.selected(), m_state.current ? 3 : 1.6));
        painter->drawRoundedRect(frame().adjusted(-5, -5, 5, 5), 5, 5);
    }
    if (scale >= kReadable) paintHandle(*painter);
    paintDrop(*painter);
}

// Thousands of them are on the screen then: a frame and a patch for the symbol are enough.
void BoxItem::paintFar(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing, false);
    const QColor ink = m_ink.look.colour(m_state.marked ? drawing::kMarked : drawing::kSoft);
    const double half = drawing::kBoxWidth / 2;
    const QRectF text(-half, 0, 2 * half, m_box.textHeight);
    painter.fillRect(text, ink);
    painter.fillRect(QRectF(-drawing::kSymbolWide / 2, m_box.textHeight + drawing::kStem,
                            drawing::kSymbolWide, drawing::kSymbolHigh),
                     ink);
}

void BoxItem::paintLargeId(QPainter& painter) {
    if (m_largeId.isEmpty()) {
        drawing::Text text;
        text.words = m_box.node;
        text.bold = true;
        const double room = drawing::kBoxWidth - 6;
        text.size = std::min(std::min(m_box.textHeight * 0.62, 13.0),
                             room / std::max(m_ink.lettering.measure(text.words, 1, true), 1e-3));
        text.width = m_ink.lettering.measure(text.words, text.size, true);
        text.at = {0, m_box.textHeight / 2 + text.size * 0.36};
        m_largeId = drawing::outlineOf(text, m_ink.lettering.family);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_ink.look.words());
    painter.drawPath(m_largeId);
}

void BoxItem::paintHandle(QPainter& painter) const {
    const QRectF round = handle();
    if (round.isEmpty()) return;
    const Look& look = m_ink.look;
    painter.setPen(QPen(look.words(), 0.8));
    painter.setBrush(look.ground());
    painter.drawEllipse(round);
    const QPointF c = round.center();
    painter.setPen(QPen(look.words(), 1.1));
    painter.drawLine(c + QPointF(-2.8, 0), c + QPointF(2.8, 0));
    if (m_box.folded) painter.drawLine(c + QPointF(0, -2.8), c + QPointF(0, 2.8));
}

void BoxItem::paintDrop(QPainter& painter) const {
    using Drop = BoxState::Drop;
    if (m_state.drop == Drop::none) return;
    const Look& look = m_ink.look;
    const QRectF box = frame().adjusted(-4, -4, 4, 4);
    painter.setBrush(Qt::NoBrush);
    if (m_state.drop == Drop::here) {
        painter.setPen(thinPen(look.selected(), 4));
        painter.drawRoundedRect(box, 5, 5);
    } else if (m_state.drop == Drop::refused) {
        painter.setPen(thinPen(look.refused(), 3));
        painter.drawRoundedRect(box, 5, 5);
        painter.drawLine(box.topLeft(), box.bottomRight());
        painter.drawLine(box.bottomLeft(), box.topRight());
    } else {
        const double x = m_state.drop == Drop::before ? box.left() : box.right();
        painter.setPen(thinPen(look.selected(), 5));
        painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
    }
}

} // namespace cutwater::editor
