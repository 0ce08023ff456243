// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/frozen_view.h"

#include "app/editor/worksheet/grid_view.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QPainter>
#include <QWheelEvent>

namespace cutwater::editor {

FrozenView::FrozenView(GridView& grid) : QTableView(&grid), m_grid(grid) {
    setObjectName("frozenColumns");
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    setTabKeyNavigation(false);
    verticalHeader()->hide();
    hide();
}

void FrozenView::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    QPainter painter(viewport());
    m_grid.paintHeads(*this, painter);
    // Where the standing part ends.
    painter.setPen(QPen(palette().color(QPalette::Text), 2));
    painter.drawLine(viewport()->width() - 1, 0, viewport()->width() - 1, viewport()->height());
}

void FrozenView::mousePressEvent(QMouseEvent* event) {
    m_grid.setFocus(Qt::MouseFocusReason);
    if (!m_grid.pressed(*this, *event)) QTableView::mousePressEvent(event);
}

void FrozenView::wheelEvent(QWheelEvent* event) {
    QCoreApplication::sendEvent(m_grid.viewport(), event);
}

} // namespace cutwater::editor
