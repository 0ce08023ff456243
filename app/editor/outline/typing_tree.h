// SPDX-License-Identifier: GPL-3.0-or-later
// What every tree in which people type has in common, whatever its rows are.
#pragma once

#include <QModelIndexList>

#include <memory>
#include <vector>

class QTreeView;

namespace cutwater::editor {

// Typing, dragging and choosing as in the outline; all room to `textColumn`.
void setUpTypingTree(QTreeView& view, int textColumn);

// The chosen rows, or the current one where none is; of rows that stand below each other the upper
// one. In the order on the screen.
QModelIndexList outermostRows(const QTreeView& view);

// Unfolds all that `row` stands below.
void unfoldAbove(QTreeView& view, const QModelIndex& row);

// Takes down the nodes and all below them without recursion: a breakdown or an unfolded chain may
// be deeper than the stack.
template <typename Node>
void takeDown(std::vector<std::unique_ptr<Node>> nodes) {
    while (!nodes.empty()) {
        const std::unique_ptr<Node> node = std::move(nodes.back());
        nodes.pop_back();
        for (auto& child : node->children)
            nodes.push_back(std::move(child));
        node->children.clear();
    }
}

} // namespace cutwater::editor
