// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/items.h"

#include "app/drawing/palette.h"

#include <QPainter>
#include <QStyleOptionGraphicsItem>

namespace cutwater::editor {
namespace {

// The route with its upper end moved by `up` and its lower end by `down`; right-angled all the
// time.
void follow(QPainterPath& path, const std::vector<drawing::Spot>& route, QPointF up, QPointF down) {
    if (route.size() < 2) return;
    const drawing::Spot first = route.front(), last = route.back();
    const QPointF from = QPointF(first.x, first.y) + up, to = QPointF(last.x, last.y) + down;
    path.moveTo(from);
    if (up == QPointF() && down == QPointF()) {
        for (const drawing::Spot& spot : route)
            path.lineTo(spot.x, spot.y);
        return;
    }
    if (first.y != last.y) { // not to a condition, which stands beside
        const double bar = (route.size() > 2 ? route[1].y : (first.y + last.y) / 2) + up.y();
        path.lineTo(from.x(), bar);
        path.lineTo(to.x(), bar);
    }
    path.lineTo(to);
}

} // namespace

void LineItem::follow() {
    prepareGeometryChange();
    m_thin = m_heavy = QPainterPath();
    const QPointF up = m_upper->pos() - m_upper->target();
    for (const Line& line : m_lines) {
        const QPointF down = line.lower->pos() - line.lower->target();
        editor::follow(m_thin, line.route, up, down);
        if (m_upper->state().marked && line.lower->state().marked)
            editor::follow(m_heavy, line.route, up, down);
    }
    m_bounds = m_thin.controlPointRect().adjusted(-2, -2, 2, 2);
    update();
}

void LineItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    // Right angles are sharpest without smoothing, but then thin lines differ in width.
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(m_ink.look.colour(drawing::kBlack), drawing::kLine, Qt::SolidLine,
                         Qt::FlatCap, Qt::MiterJoin));
    painter->drawPath(m_thin);
    if (m_heavy.isEmpty()) return;
    painter->setPen(QPen(m_ink.look.colour(drawing::kMarked), drawing::kHeavy * 1.3, Qt::SolidLine,
                         Qt::FlatCap, Qt::MiterJoin));
    painter->drawPath(m_heavy);
}

FrameItem::FrameItem(const Page& page, const SceneInk& ink)
    : m_paper(0, 0, page.frame->width, page.frame->height), m_ink(ink) {
    std::vector<drawing::Mark> marks;
    for (const drawing::Group& group : page.frame->groups)
        marks.insert(marks.end(), group.marks.begin(), group.marks.end());
    m_strokes = strokesOf(marks, page.frame->family);
    setPos(page.frameOrigin.x, page.frameOrigin.y);
    setScale(page.frameScale);
    setZValue(-1);
}

void FrameItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    painter->setRenderHint(QPainter::Antialiasing);
    QColor shadow = m_ink.look.words();
    shadow.setAlpha(60);
    painter->fillRect(m_paper.translated(2, 2), shadow);
    painter->fillRect(m_paper, m_ink.look.paper());
    const double scale =
        QStyleOptionGraphicsItem::levelOfDetailFromTransform(painter->worldTransform());
    paintStrokes(*painter, m_strokes, m_ink.look, scale >= kReadable);
}

} // namespace cutwater::editor
