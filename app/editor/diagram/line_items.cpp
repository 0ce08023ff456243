// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/items.h"

#include "app/drawing/palette.h"

#include <QPainter>
#include <QStyleOptionGraphicsItem>

#include <algorithm>
#include <map>

namespace cutwater::editor {
namespace {

// Stretches that several lines share are drawn once: drawn twice they look heavier.
class Stretches {
public:
    void line(QPointF from, QPointF to) {
        if (from.x() == to.x())
            m_upright[from.x()].push_back(std::minmax(from.y(), to.y()));
        else if (from.y() == to.y())
            m_level[from.y()].push_back(std::minmax(from.x(), to.x()));
    }

    QPainterPath path() {
        QPainterPath path;
        for (auto& [x, all] : m_upright)
            for (const auto& [from, to] : merged(all)) {
                path.moveTo(x, from);
                path.lineTo(x, to);
            }
        for (auto& [y, all] : m_level)
            for (const auto& [from, to] : merged(all)) {
                // Corners are filled: an end reaches half a line further.
                path.moveTo(from - drawing::kLine / 2, y);
                path.lineTo(to + drawing::kLine / 2, y);
            }
        return path;
    }

private:
    using Span = std::pair<double, double>;

    static std::vector<Span>& merged(std::vector<Span>& spans) {
        std::sort(spans.begin(), spans.end());
        std::size_t kept = 0;
        for (std::size_t i = 1; i < spans.size(); ++i) {
            if (spans[i].first <= spans[kept].second)
                spans[kept].second = std::max(spans[kept].second, spans[i].second);
            else
                spans[++kept] = spans[i];
        }
        spans.resize(kept + 1);
        return spans;
    }

    std::map<double, std::vector<Span>> m_upright, m_level;
};

// The route with its upper end moved by `up` and its lower end by `down`; right-angled all the
// time.
void follow(Stretches& all, const std::vector<drawing::Spot>& route, QPointF up, QPointF down) {
    if (route.size() < 2) return;
    const drawing::Spot first = route.front(), last = route.back();
    if (up == QPointF() && down == QPointF()) {
        for (std::size_t i = 1; i < route.size(); ++i)
            all.line({route[i - 1].x, route[i - 1].y}, {route[i].x, route[i].y});
        return;
    }
    const QPointF from = QPointF(first.x, first.y) + up, to = QPointF(last.x, last.y) + down;
    if (first.y == last.y) { // to a condition, which stands beside
        all.line(from, {to.x(), from.y()});
        return;
    }
    const double bar = (route.size() > 2 ? route[1].y : (first.y + last.y) / 2) + up.y();
    all.line(from, {from.x(), bar});
    all.line({from.x(), bar}, {to.x(), bar});
    all.line({to.x(), bar}, to);
}

} // namespace

void LineItem::follow() {
    prepareGeometryChange();
    Stretches thin, heavy;
    const QPointF up = m_upper->pos() - m_upper->target();
    for (const Line& line : m_lines) {
        const QPointF down = line.lower->pos() - line.lower->target();
        editor::follow(thin, line.route, up, down);
        if (m_upper->state().marked && line.lower->state().marked)
            editor::follow(heavy, line.route, up, down);
    }
    m_thin = thin.path();
    m_heavy = heavy.path();
    m_bounds = m_thin.controlPointRect().adjusted(-2, -2, 2, 2);
    update();
}

void LineItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
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
