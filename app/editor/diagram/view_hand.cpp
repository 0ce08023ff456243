// SPDX-License-Identifier: GPL-3.0-or-later
// The hand on the view: clicks, drags of boxes, panning, the rubber band.
#include "app/editor/diagram/view.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QDragMoveEvent>
#include <QHelpEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QTimerEvent>
#include <QToolTip>

namespace cutwater::editor {
namespace {

constexpr int kEdge = 28;      // pixels: held there, the view scrolls
constexpr int kEdgeEvery = 30; // milliseconds
constexpr int kEdgeStep = 18;  // pixels

} // namespace

void DiagramView::mousePressEvent(QMouseEvent* event) {
    const QPoint at = event->position().toPoint();
    if (m_dragging) {
        cancelDrag(); // another button while dragging
        return;
    }
    if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) {
        event->accept();
        return;
    }
    m_scene->finishMotion();
    const QPointF place = mapToScene(at);
    Hand hand{at, at, kNoBox, false, false};
    if (event->button() == Qt::MiddleButton) {
        hand.pans = true;
    } else {
        hand.box = m_scene->boxAt(place);
        if (hand.box != kNoBox && m_scene->isHandle(hand.box, place)) {
            emit handlePressed(hand.box, event->modifiers());
            return;
        }
        if (hand.box == kNoBox) {
            hand.bands = event->modifiers().testFlag(Qt::ShiftModifier);
            hand.pans = !hand.bands;
        }
    }
    m_hand = hand;
    if (event->button() == Qt::LeftButton) emit pressed(hand.box, event->modifiers());
    if (hand.pans) viewport()->setCursor(Qt::ClosedHandCursor);
}

void DiagramView::mouseMoveEvent(QMouseEvent* event) {
    if (!m_hand) {
        QGraphicsView::mouseMoveEvent(event);
        return;
    }
    const QPoint at = event->position().toPoint();
    const QPoint step = at - m_hand->last;
    m_hand->last = at;
    if (m_hand->pans) {
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() - step.x());
        verticalScrollBar()->setValue(verticalScrollBar()->value() - step.y());
        return;
    }
    if (m_hand->bands) {
        viewport()->update();
        return;
    }
    const bool far =
        (at - m_hand->pressedAt).manhattanLength() >= QApplication::startDragDistance();
    if (!m_dragging && far && m_hand->box != kNoBox && event->buttons() & Qt::LeftButton) {
        m_dragging = true;
        m_edgeTimer = startTimer(kEdgeEvery);
        viewport()->setCursor(Qt::DragMoveCursor);
    }
    if (m_dragging && !viewport()->rect().contains(at)) {
        // On its way to another view: there the platform carries it.
        const std::size_t box = m_hand->box;
        cancelDrag();
        m_hand.reset();
        emit draggedOut(box);
        return;
    }
    if (m_dragging) moveDrag();
}

bool DiagramView::askOutside(const QDropEvent& event, bool drop) {
    const QMimeData* const carried = event.mimeData();
    if (!m_outside || !carried || carried->hasUrls()) return false; // a file: the window opens it
    const QPointF place = mapToScene(event.position().toPoint());
    const std::size_t target = m_scene->boxAt(place);
    const bool right = target != kNoBox && place.x() > m_scene->item(target)->pos().x();
    return m_outside(*carried, target, right, event.modifiers().testFlag(Qt::ControlModifier),
                     drop);
}

void DiagramView::dragEnterEvent(QDragEnterEvent* event) {
    // Whether it fits is known over a box only.
    const QMimeData* const carried = event->mimeData();
    event->setAccepted(m_outside && carried && !carried->hasUrls() &&
                       (carried->hasText() || !carried->formats().isEmpty()));
}

void DiagramView::dragMoveEvent(QDragMoveEvent* event) {
    const bool share = event->modifiers().testFlag(Qt::ControlModifier);
    event->setDropAction(share ? Qt::CopyAction : Qt::MoveAction);
    event->setAccepted(askOutside(*event, false));
}

void DiagramView::dragLeaveEvent(QDragLeaveEvent*) {
    setHint({});
    emit dragEnded();
}

void DiagramView::dropEvent(QDropEvent* event) {
    const bool done = askOutside(*event, true);
    setHint({});
    emit dragEnded();
    event->setAccepted(done);
}

void DiagramView::moveDrag() {
    const QPointF place = mapToScene(m_hand->last);
    const std::size_t target = m_scene->boxAt(place);
    const bool right = target != kNoBox && place.x() > m_scene->item(target)->pos().x();
    emit dragMoved(m_hand->box, target, right,
                   QApplication::keyboardModifiers().testFlag(Qt::ControlModifier));
}

void DiagramView::mouseReleaseEvent(QMouseEvent* event) {
    if (!m_hand) return;
    const Hand hand = *m_hand;
    const bool dragged = m_dragging;
    const QPointF from = mapToScene(hand.pressedAt), to = mapToScene(event->position().toPoint());
    m_hand.reset();
    cancelDrag();
    viewport()->unsetCursor();
    if (hand.bands) {
        viewport()->update();
        emit banded(QRectF(from, to).normalized());
        return;
    }
    const bool still = (hand.pressedAt - event->position().toPoint()).manhattanLength() <
                       QApplication::startDragDistance();
    if (hand.pans && still && event->button() == Qt::LeftButton) emit groundClicked();
    if (!dragged && hand.box != kNoBox) emit clicked(hand.box, event->modifiers());
    if (!dragged) return;
    const std::size_t target = m_scene->boxAt(to);
    const bool right = target != kNoBox && to.x() > m_scene->item(target)->pos().x();
    emit dropped(hand.box, target, right, event->modifiers().testFlag(Qt::ControlModifier));
}

void DiagramView::cancelDrag() {
    if (m_edgeTimer) killTimer(m_edgeTimer);
    m_edgeTimer = 0;
    if (!m_dragging) return;
    m_dragging = false;
    m_hand.reset();
    viewport()->unsetCursor();
    setHint({});
    emit dragEnded();
}

void DiagramView::timerEvent(QTimerEvent* event) {
    if (event->timerId() != m_edgeTimer || !m_hand) {
        QGraphicsView::timerEvent(event);
        return;
    }
    const QRect inner = viewport()->rect().adjusted(kEdge, kEdge, -kEdge, -kEdge);
    const QPoint at = m_hand->last;
    const auto push = [](QScrollBar* bar, bool less, bool more) {
        if (less) bar->setValue(bar->value() - kEdgeStep);
        if (more) bar->setValue(bar->value() + kEdgeStep);
    };
    if (inner.contains(at)) return;
    push(horizontalScrollBar(), at.x() < inner.left(), at.x() > inner.right());
    push(verticalScrollBar(), at.y() < inner.top(), at.y() > inner.bottom());
    moveDrag();
}

void DiagramView::mouseDoubleClickEvent(QMouseEvent* event) {
    const QPointF place = mapToScene(event->position().toPoint());
    const std::size_t box = m_scene->boxAt(place);
    if (event->button() != Qt::LeftButton || box == kNoBox) return;
    if (m_scene->isHandle(box, place))
        emit handlePressed(box, event->modifiers());
    else
        emit doubleClicked(box);
}

void DiagramView::contextMenuEvent(QContextMenuEvent* event) {
    if (event->reason() == QContextMenuEvent::Keyboard) {
        const std::size_t current = m_scene->current();
        const QPoint place =
            current == kNoBox ? viewport()->rect().center() : boxOnScreen(current).center();
        emit menuAsked(current, viewport()->mapToGlobal(place));
        return;
    }
    emit menuAsked(m_scene->boxAt(mapToScene(event->pos())), event->globalPos());
}

void DiagramView::drawForeground(QPainter* painter, const QRectF&) {
    if (!m_hand || !m_hand->bands) return;
    QPen pen(m_scene->look().selected(), 1.5, Qt::DashLine);
    pen.setCosmetic(true);
    painter->setPen(pen);
    painter->setBrush(m_scene->look().selectedFill());
    painter->drawRect(QRectF(mapToScene(m_hand->pressedAt), mapToScene(m_hand->last)).normalized());
}

void DiagramView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_dragging) {
        cancelDrag();
        return;
    }
    if (event->key() == Qt::Key_Control && m_dragging) moveDrag();
    event->ignore(); // the panel knows what keys mean
}

void DiagramView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Control && m_dragging) moveDrag();
    event->ignore();
}

bool DiagramView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        auto* help = static_cast<QHelpEvent*>(event);
        const std::size_t box = m_scene->boxAt(mapToScene(help->pos()));
        if (box == kNoBox) {
            QToolTip::hideText();
        } else {
            const PageBox& shown = m_scene->page()->boxes[box];
            QToolTip::showText(help->globalPos(),
                               QString::fromStdString(shown.title) + QLatin1Char('\n') +
                                   QString::fromStdString(shown.description),
                               this);
        }
        return true;
    }
    return QGraphicsView::viewportEvent(event);
}

} // namespace cutwater::editor
