// SPDX-License-Identifier: GPL-3.0-or-later
// Overview: the whole page in a corner, with a frame around what the view shows. A click or a drag
// goes there.
#pragma once

#include "app/editor/diagram/view.h"

#include <QWidget>

namespace cutwater::editor {

class Overview : public QWidget {
    Q_OBJECT
public:
    // Stands in the view's lower right corner. Hides itself where the whole page is seen.
    Overview(DiagramScene* scene, DiagramView* view);

    void setWanted(bool wanted);
    bool isWanted() const { return m_wanted; }
    QPointF toScene(QPointF place) const;
    QPointF fromScene(QPointF place) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

private:
    void follow();
    QRectF page() const;
    double factor() const;

    DiagramScene* m_scene;
    DiagramView* m_view;
    bool m_wanted = true;
    QPixmap m_map; // drawn once a page
};

} // namespace cutwater::editor
