// SPDX-License-Identifier: GPL-3.0-or-later
// DiagramScene: puts a page on the screen, and moves what was there before to its new place.
#pragma once

#include "app/editor/diagram/items.h"

#include <QGraphicsScene>
#include <QVariantAnimation>

#include <set>
#include <string_view>
#include <unordered_map>

namespace cutwater::editor {

class DiagramScene : public QGraphicsScene {
    Q_OBJECT
public:
    explicit DiagramScene(QObject* parent = nullptr);
    ~DiagramScene() override;

    // Why nothing can be drawn: no font; empty where all is well.
    const project::Problems& problems() const { return m_problems; }

    // Boxes keep their item where their key stays. `anchor`: the key of the box that stays where it
    // is on the screen while the others move. Null empties the scene.
    void showPage(std::shared_ptr<const Page> page, const std::string& anchor);
    const Page* page() const { return m_page.get(); }
    std::shared_ptr<const Page> sharedPage() const { return m_page; }
    void setAnimated(bool animated) { m_animated = animated; }
    bool isMoving() const { return m_motion.state() == QAbstractAnimation::Running; }
    void finishMotion();

    void setLook(const Look& look);
    const Look& look() const { return m_ink.look; }

    BoxItem* item(std::size_t box) const { return m_boxes[box]; }
    std::size_t boxByKey(const std::string& key) const; // kNoBox where it is not shown
    // The box of a node at one of its places; where the parent is empty or not shown, where it is
    // drawn itself, else any of its transfers. kNoBox where it is not shown.
    std::size_t boxOf(const project::Id& node, const project::Id& parent) const;
    std::size_t boxAt(QPointF place) const;
    bool isHandle(std::size_t box, QPointF place) const;

    // What is selected, by node and parent; the last one is the current one.
    void setSelected(const std::vector<std::size_t>& boxes, const std::set<project::Id>& nodes);
    std::size_t current() const { return m_current; }
    void setMarked(std::set<project::Id> nodes);
    const std::set<project::Id>& marked() const { return m_marked; }
    void setHits(std::set<project::Id> nodes);
    void setDrop(std::size_t box, BoxState::Drop drop); // kNoBox: nowhere

signals:
    void pageShown();

private:
    void move(double share);
    void restate();
    BoxState stateOf(std::size_t box) const;

    SceneInk m_ink;
    project::Problems m_problems;
    std::shared_ptr<const Page> m_page;
    std::vector<BoxItem*> m_boxes; // as in the page
    std::vector<LineItem*> m_lines;
    FrameItem* m_frame = nullptr;
    std::unordered_map<std::string_view, std::size_t> m_byKey; // into the page's keys
    QVariantAnimation m_motion;
    bool m_animated = true;

    std::set<std::size_t> m_selectedBoxes;
    std::set<project::Id> m_selectedNodes, m_marked, m_hits;
    std::size_t m_current = kNoBox, m_dropBox = kNoBox;
    BoxState::Drop m_drop = BoxState::Drop::none;
};

} // namespace cutwater::editor
