// SPDX-License-Identifier: GPL-3.0-or-later
// DiagramView: the window onto a scene: zoom, pan, clicks, drags. It decides nothing about trees:
// what the hand did comes out as signals.
#pragma once

#include "app/editor/diagram/scene.h"

#include <QGraphicsView>

#include <functional>
#include <optional>

class QLabel;
class QMimeData;

namespace cutwater::editor {

class DiagramView : public QGraphicsView {
    Q_OBJECT
public:
    explicit DiagramView(DiagramScene* scene, QWidget* parent = nullptr);

    // 1: the type of the boxes is as large as that of the menus.
    double zoom() const;
    void setZoom(double zoom); // kept between kSmallest and kLargest; the middle stays
    void zoomBy(double factor) { setZoom(zoom() * factor); }
    void fitPage(); // whole, but not larger than 1
    void fitWidth();
    // Zooms out where they need it; where type would get too small, shows the first of them.
    void fitBoxes(const std::vector<std::size_t>& boxes);
    void showBox(std::size_t box); // scrolls where it is not seen
    void showTop();                // the root in the middle of the upper edge
    bool isSeen(std::size_t box) const;

    // The box that stays where it is when the page changes: the current one where it is seen, else
    // one near the middle.
    std::string anchorKey() const;
    // Runs `change` and scrolls so that the anchor's new place is where its old one was.
    void keepPlace(const std::string& anchor, const std::function<void()>& change);

    bool isDragging() const { return m_dragging; }
    void cancelDrag();
    // What is said beside the pointer while something is dragged.
    void setHint(const QString& words);
    // The frame of a box in the viewport's pixels.
    QRect boxOnScreen(std::size_t box) const;

    // Something from outside is over a box, or (`drop`) let go there; answers whether it may be.
    using Outside = std::function<bool(const QMimeData& data, std::size_t target, bool rightHalf,
                                       bool share, bool drop)>;
    void setOutside(Outside outside) { m_outside = std::move(outside); }

    static constexpr double kSmallest = 0.02, kLargest = 6;

signals:
    void pressed(std::size_t box, Qt::KeyboardModifiers modifiers); // kNoBox: on the ground
    void clicked(std::size_t box, Qt::KeyboardModifiers modifiers); // let go without a drag
    void handlePressed(std::size_t box, Qt::KeyboardModifiers modifiers);
    void doubleClicked(std::size_t box);
    void menuAsked(std::size_t box, QPoint global);
    void dragMoved(std::size_t source, std::size_t target, bool rightHalf, bool share);
    void dropped(std::size_t source, std::size_t target, bool rightHalf, bool share);
    void dragEnded();
    void draggedOut(std::size_t source); // held, and moved out of the view
    void banded(const QRectF& area);     // a rubber band on the ground, in the scene's units
    void groundClicked();                // without a drag
    void lookedElsewhere();              // zoomed, scrolled or resized

protected:
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void changeEvent(QEvent* event) override;
    void timerEvent(QTimerEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void drawForeground(QPainter* painter, const QRectF& area) override;

private:
    struct Hand {
        QPoint pressedAt, last;
        std::size_t box = kNoBox;
        bool pans = false, bands = false;
    };
    double unit() const; // pixels for one unit of the drawing at zoom 1
    void zoomAt(QPoint place, double factor);
    void moveDrag();
    bool askOutside(const QDropEvent& event, bool drop);
    void fitRect(const QRectF& area, double most);
    QRectF around(const std::vector<std::size_t>& boxes) const;

    DiagramScene* m_scene;
    Outside m_outside;
    std::optional<Hand> m_hand;
    bool m_dragging = false;
    QLabel* m_hint;
    int m_edgeTimer = 0; // scrolls while something is held at the edge
};

} // namespace cutwater::editor
