// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/overview.h"

#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace cutwater::editor {
namespace {

constexpr double kMostWide = 210, kMostHigh = 130; // pixels
constexpr double kPad = 6;

} // namespace

Overview::Overview(DiagramScene* scene, DiagramView* view)
    : QWidget(view->viewport()), m_scene(scene), m_view(view) {
    setObjectName(QStringLiteral("overview"));
    setAccessibleName(tr("Overview of the tree"));
    setToolTip(tr("Overview: click to go there"));
    setCursor(Qt::PointingHandCursor);
    connect(view, &DiagramView::lookedElsewhere, this, &Overview::follow);
    connect(scene, &DiagramScene::pageShown, this, [this] {
        m_map = {};
        follow();
    });
    hide();
}

void Overview::setWanted(bool wanted) {
    m_wanted = wanted;
    follow();
}

QRectF Overview::page() const {
    const Page* page = m_scene->page();
    if (!page) return {};
    return {page->extent.left, page->extent.top, page->extent.width, page->extent.height};
}

double Overview::factor() const {
    const QRectF all = page();
    if (all.isEmpty()) return 1;
    return std::min((kMostWide - 2 * kPad) / all.width(), (kMostHigh - 2 * kPad) / all.height());
}

QPointF Overview::toScene(QPointF place) const {
    return page().topLeft() + (place - QPointF(kPad, kPad)) / factor();
}

QPointF Overview::fromScene(QPointF place) const {
    return (place - page().topLeft()) * factor() + QPointF(kPad, kPad);
}

void Overview::follow() {
    const QRectF all = page();
    const QRectF seen = m_view->mapToScene(m_view->viewport()->rect()).boundingRect();
    const bool useful = m_wanted && !all.isEmpty() && !seen.contains(all) &&
                        m_view->viewport()->width() > 2 * kMostWide &&
                        m_view->viewport()->height() > 2 * kMostHigh;
    setVisible(useful);
    if (!useful) return;
    const QSize size(static_cast<int>(std::ceil(all.width() * factor() + 2 * kPad)),
                     static_cast<int>(std::ceil(all.height() * factor() + 2 * kPad)));
    setGeometry(QRect(QPoint(m_view->viewport()->width() - size.width() - 10,
                             m_view->viewport()->height() - size.height() - 10),
                      size));
    update();
}

void Overview::paintEvent(QPaintEvent*) {
    const Look& look = m_scene->look();
    const double ratio = devicePixelRatioF();
    const QSize pixels = size() * ratio;
    if (m_map.size() != pixels) {
        m_map = QPixmap(pixels);
        m_map.setDevicePixelRatio(ratio);
        m_map.fill(look.paper());
        QPainter painter(&m_map);
        painter.setPen(Qt::NoPen);
        QColor ink = look.words();
        ink.setAlpha(150);
        for (const PageBox& box : m_scene->page()->boxes) {
            const drawing::Box frame = frameOf(box);
            const QPointF at = fromScene({frame.left, frame.top});
            painter.fillRect(QRectF(at, QSizeF(std::max(1.0, frame.width * factor()),
                                               std::max(1.0, frame.height * factor() * 0.7))),
                             ink);
        }
    }
    QPainter painter(this);
    painter.drawPixmap(0, 0, m_map);
    // What is marked or selected is seen here as well; the mark is larger, not only of a colour.
    for (std::size_t b = 0; b < m_scene->page()->boxes.size(); ++b) {
        const BoxState& state = m_scene->item(b)->state();
        if (!state.marked && !state.selected && !state.hit) continue;
        const drawing::Spot at = m_scene->page()->boxes[b].at;
        const QPointF here = fromScene({at.x, at.y});
        const double size = state.marked ? 5 : 4;
        painter.fillRect(QRectF(here.x() - size / 2, here.y() - 1, size, size),
                         state.marked     ? look.refused()
                         : state.selected ? look.selected()
                                          : look.hit());
    }
    const QRectF seen = m_view->mapToScene(m_view->viewport()->rect()).boundingRect();
    const QRectF window =
        QRectF(fromScene(seen.topLeft()), fromScene(seen.bottomRight())).intersected(rect());
    painter.setPen(QPen(look.selected(), 2));
    painter.setBrush(look.selectedFill());
    painter.drawRect(window.adjusted(1, 1, -1, -1));
    painter.setPen(look.words());
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

void Overview::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) m_view->centerOn(toScene(event->position()));
}

void Overview::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton) m_view->centerOn(toScene(event->position()));
}

} // namespace cutwater::editor
