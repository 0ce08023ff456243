// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the scene: boxes, the lines of one gate, and the frame of a sheet.
#pragma once

#include "app/drawing/lettering.h"
#include "app/editor/diagram/page.h"
#include "app/editor/diagram/strokes.h"

#include <QGraphicsItem>

namespace cutwater::editor {

// What all items of a scene share.
struct SceneInk {
    Look look;
    drawing::Lettering lettering;
};

struct BoxState {
    bool selected = false;
    bool current = false; // the keys work here
    bool marked = false;
    bool hit = false; // found by the search
    enum class Drop { none, here, refused, before, after } drop = Drop::none;
    bool operator==(const BoxState&) const = default;
};

// Below this many pixels for a unit, letters are a smear: a box then shows its id alone, as large
// as it goes in, and below the smallest nothing.
inline constexpr double kReadable = 0.85, kIdReadable = 0.14;

class BoxItem : public QGraphicsItem {
public:
    BoxItem(const PageBox& box, const SceneInk& ink);

    const PageBox& box() const { return m_box; }
    void setBox(const PageBox& box); // keeps its place
    void setState(const BoxState& state);
    const BoxState& state() const { return m_state; }
    void forgetStrokes(); // fonts or inks changed

    // Where it goes while an animation runs; its place when none does.
    QPointF target() const { return QPointF(m_box.at.x, m_box.at.y); }
    QPointF start; // of the animation
    bool isNew = false;

    QRectF frame() const;  // text and symbol
    QRectF handle() const; // the round button that folds; empty where nothing folds
    QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    const std::vector<Stroke>& strokes();
    void paintLargeId(QPainter& painter);
    void paintFar(QPainter& painter) const;
    void paintHandle(QPainter& painter) const;
    void paintDrop(QPainter& painter) const;

    PageBox m_box;
    const SceneInk& m_ink;
    BoxState m_state;
    std::vector<Stroke> m_strokes;
    QPainterPath m_largeId;
};

// Lines from one box to its inputs and its condition. In the scene's coordinates.
class LineItem : public QGraphicsItem {
public:
    struct Line {
        const BoxItem* lower = nullptr;
        std::vector<drawing::Spot> route; // where both ends are at their targets
    };
    LineItem(const BoxItem* upper, const SceneInk& ink) : m_upper(upper), m_ink(ink) {}

    void add(Line line) { m_lines.push_back(std::move(line)); }
    void follow(); // the boxes moved, or what is marked changed
    QRectF boundingRect() const override { return m_bounds; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    const BoxItem* m_upper;
    std::vector<Line> m_lines;
    const SceneInk& m_ink;
    QPainterPath m_thin, m_heavy;
    QRectF m_bounds;
};

// Paper, border, legend and title block.
class FrameItem : public QGraphicsItem {
public:
    FrameItem(const Page& page, const SceneInk& ink);
    QRectF boundingRect() const override { return m_paper.adjusted(-4, -4, 4, 4); }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    QRectF m_paper; // points
    const SceneInk& m_ink;
    std::vector<Stroke> m_strokes;
};

} // namespace cutwater::editor
