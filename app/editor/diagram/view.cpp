// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/view.h"

#include <QLabel>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace cutwater::editor {

DiagramView::DiagramView(DiagramScene* scene, QWidget* parent)
    : QGraphicsView(scene, parent), m_scene(scene), m_hint(new QLabel(viewport())) {
    setObjectName(QStringLiteral("diagramView"));
    setAlignment(Qt::AlignCenter);
    setTransformationAnchor(NoAnchor);
    setResizeAnchor(AnchorViewCenter);
    setViewportUpdateMode(SmartViewportUpdate);
    setFocusPolicy(Qt::StrongFocus);
    setContextMenuPolicy(Qt::DefaultContextMenu);
    setFrameShape(NoFrame);
    setAcceptDrops(true);
    m_scene->setLook(Look(palette()));
    m_hint->setMargin(4);
    m_hint->setAutoFillBackground(true);
    m_hint->setForegroundRole(QPalette::ToolTipText);
    m_hint->setBackgroundRole(QPalette::ToolTipBase);
    m_hint->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_hint->hide();
    setZoom(1);
    connect(m_scene, &DiagramScene::pageShown, this, [this] {
        cancelDrag(); // what was held may be another box now
        m_hand.reset();
        const Page* page = m_scene->page();
        if (!page) {
            setSceneRect(QRectF());
            return;
        }
        // Room around, so that every box can come to the middle.
        const QRectF all(page->extent.left, page->extent.top, page->extent.width,
                         page->extent.height);
        setSceneRect(all.adjusted(-600, -400, 600, 400));
        emit lookedElsewhere();
    });
}

double DiagramView::unit() const {
    return std::max(QFontMetricsF(font()).height() * 0.79, 9.0) / drawing::kTextSize;
}

double DiagramView::zoom() const {
    return transform().m11() / unit();
}

void DiagramView::setZoom(double zoom) {
    zoomAt(viewport()->rect().center(), std::clamp(zoom, kSmallest, kLargest) / this->zoom());
}

void DiagramView::zoomAt(QPoint place, double factor) {
    const double to = std::clamp(zoom() * factor, kSmallest, kLargest) * unit();
    const QPointF before = mapToScene(place);
    setTransform(QTransform::fromScale(to, to));
    const QPointF off = mapFromScene(before) - place;
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() +
                                    static_cast<int>(std::lround(off.x())));
    verticalScrollBar()->setValue(verticalScrollBar()->value() +
                                  static_cast<int>(std::lround(off.y())));
    emit lookedElsewhere();
}

void DiagramView::fitRect(const QRectF& area, double most) {
    if (area.isEmpty()) return;
    const QSizeF room = viewport()->size() - QSize(24, 24);
    const double fits =
        std::min(room.width() / area.width(), room.height() / area.height()) / unit();
    setZoom(std::min(fits, most));
    centerOn(area.center());
}

void DiagramView::fitPage() {
    const Page* page = m_scene->page();
    if (!page) return;
    fitRect({page->extent.left, page->extent.top, page->extent.width, page->extent.height},
            page->frame ? kLargest : 1);
}

void DiagramView::fitWidth() {
    const Page* page = m_scene->page();
    if (!page) return;
    const double room = viewport()->width() - 24;
    setZoom(std::min(room / page->extent.width / unit(), page->frame ? kLargest : 1.0));
    showTop();
}

QRectF DiagramView::around(const std::vector<std::size_t>& boxes) const {
    QRectF area;
    for (const std::size_t box : boxes) {
        const BoxItem* item = m_scene->item(box);
        area |= item->frame().translated(item->target());
    }
    return area.adjusted(-12, -12, 12, 12);
}

void DiagramView::fitBoxes(const std::vector<std::size_t>& boxes) {
    if (boxes.empty()) return;
    constexpr double kSmallestType = 0.5; // ids are read well
    fitRect(around(boxes), std::max(zoom(), 0.6));
    if (zoom() >= kSmallestType) return;
    setZoom(kSmallestType);
    showBox(boxes.front());
}

void DiagramView::showBox(std::size_t box) {
    const BoxItem* item = m_scene->item(box);
    // The overview lies over the lower edge.
    const int clear = std::min(140, viewport()->height() / 3);
    ensureVisible(item->frame().translated(item->target()), 40, clear);
    emit lookedElsewhere();
}

void DiagramView::showTop() {
    if (!m_scene->page()) return;
    const Page& page = *m_scene->page();
    if (page.frame) {
        centerOn(page.extent.middle(),
                 page.extent.top + viewport()->height() / 2.0 / transform().m22());
        return;
    }
    const drawing::Spot at = page.boxes.front().at;
    centerOn(at.x, at.y + (viewport()->height() / 2.0 - 24) / transform().m22());
    emit lookedElsewhere();
}

bool DiagramView::isSeen(std::size_t box) const {
    return viewport()->rect().intersects(boxOnScreen(box));
}

QRect DiagramView::boxOnScreen(std::size_t box) const {
    const BoxItem* item = m_scene->item(box);
    return mapFromScene(item->frame().translated(item->target())).boundingRect();
}

std::string DiagramView::anchorKey() const {
    const Page* page = m_scene->page();
    if (!page || page->boxes.empty()) return {};
    const std::size_t current = m_scene->current();
    if (current != kNoBox && isSeen(current)) return page->boxes[current].key;
    const QPointF middle = mapToScene(viewport()->rect().center());
    std::size_t best = 0;
    double nearest = 1e300;
    for (std::size_t b = 0; b < page->boxes.size(); ++b) {
        const drawing::Spot at = page->boxes[b].at;
        const double away = std::hypot(at.x - middle.x(), at.y - middle.y());
        if (away < nearest) {
            nearest = away;
            best = b;
        }
    }
    return page->boxes[best].key;
}

void DiagramView::keepPlace(const std::string& anchor, const std::function<void()>& change) {
    const std::size_t before = m_scene->boxByKey(anchor);
    const QPoint seen = before == kNoBox ? QPoint() : mapFromScene(m_scene->item(before)->target());
    change();
    const std::size_t after = m_scene->boxByKey(anchor);
    if (before == kNoBox || after == kNoBox) return;
    const QPoint off = mapFromScene(m_scene->item(after)->target()) - seen;
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + off.x());
    verticalScrollBar()->setValue(verticalScrollBar()->value() + off.y());
}

void DiagramView::setHint(const QString& words) {
    m_hint->setVisible(!words.isEmpty());
    m_hint->setText(words);
    m_hint->adjustSize();
    QPoint place =
        (m_hand ? m_hand->last : viewport()->mapFromGlobal(QCursor::pos())) + QPoint(16, 18);
    place.setX(std::clamp(place.x(), 0, std::max(0, viewport()->width() - m_hint->width())));
    place.setY(std::clamp(place.y(), 0, std::max(0, viewport()->height() - m_hint->height())));
    m_hint->move(place);
}

void DiagramView::wheelEvent(QWheelEvent* event) {
    if (!event->modifiers().testFlag(Qt::ControlModifier)) {
        QGraphicsView::wheelEvent(event);
        return;
    }
    zoomAt(event->position().toPoint(), std::pow(1.0015, event->angleDelta().y()));
    event->accept();
}

void DiagramView::resizeEvent(QResizeEvent* event) {
    QGraphicsView::resizeEvent(event);
    // The current box does not slip out of sight because something else takes room.
    const std::size_t current = m_scene->current();
    if (current != kNoBox && event->oldSize().isValid() &&
        !viewport()->rect().contains(boxOnScreen(current)) &&
        QRect(QPoint(), event->oldSize()).intersects(boxOnScreen(current)))
        showBox(current);
    emit lookedElsewhere();
}

void DiagramView::scrollContentsBy(int dx, int dy) {
    QGraphicsView::scrollContentsBy(dx, dy);
    emit lookedElsewhere();
}

void DiagramView::changeEvent(QEvent* event) {
    QGraphicsView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) m_scene->setLook(Look(palette()));
}

} // namespace cutwater::editor
