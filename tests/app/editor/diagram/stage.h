// SPDX-License-Identifier: GPL-3.0-or-later
// Stage: a diagram with all it needs, in a window of its own, without the main window.
#pragma once

#include "app/editor/diagram/panel.h"

#include <atomic>
#include <functional>
#include <memory>

namespace cutwater::test {

// Invented trees. `events` basic events below gates of two to five inputs, level by level; every
// tenth gate has one more input that is used elsewhere. Top event T1.
project::Project largeTree(std::size_t events);
// T1: "top" or(a and(x, y), b or(y, z), s), with names; `b` is used in `c` as well.
project::Project smallTree();

// Fails the layout or makes it slow, on wish; counts.
class Layout : public sdk::Layout {
public:
    sdk::Answer<sdk::LayoutGraph> place(const sdk::LayoutGraph& graph, const sdk::Values& values,
                                        const sdk::Job& job) const override;
    mutable std::atomic<int> calls{0}, inside{0}, most{0};
    std::atomic<int> sleepMs{0};
    std::atomic<bool> fails{false}, throws{false};
};

struct Stage {
    explicit Stage(project::Project project, const project::Id& top = "T1",
                   QSize size = QSize(1000, 700));
    ~Stage();

    bool settle(int ms = 20000); // until nothing is laid out or moves any more; false: too late
    std::size_t box(const std::string& node, const std::string& parent = {}) const;
    const editor::PageBox& at(std::size_t box) const;
    QPoint middle(std::size_t box) const; // on the viewport
    QPoint handle(std::size_t box) const;
    void click(std::size_t box, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void doubleClick(std::size_t box);
    void key(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    // Press, moves in between, release; `share` holds Ctrl.
    void drag(QPoint from, QPoint to, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    std::vector<std::string> inputs(const std::string& gate) const; // in the session's project

    Layout layout;
    editor::Session session;
    editor::Selection selection;
    std::unique_ptr<editor::DiagramPanel> panel;
};

} // namespace cutwater::test
