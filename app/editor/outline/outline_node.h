// SPDX-License-Identifier: GPL-3.0-or-later
// One row of the outline. Private to the model.
#pragma once

#include "app/editor/outline/outline_model.h"
#include "app/editor/outline/typing_tree.h"

#include <algorithm>

namespace cutwater::editor {

struct OutlineModel::Node {
    Node* parent = nullptr;
    Kind kind = Kind::input;
    project::Id id;
    bool fetched = false; // its children are there
    std::vector<std::unique_ptr<Node>> children;
    mutable std::size_t row = 0; // where it was last; see position()

    Node() = default;
    Node(const Node&) = delete;
    Node& operator=(const Node&) = delete;
    ~Node() { takeDown(std::move(children)); }

    std::size_t position() const {
        const auto& all = parent->children;
        if (row < all.size() && all[row].get() == this) return row;
        const auto found = std::find_if(all.begin(), all.end(),
                                        [this](const auto& each) { return each.get() == this; });
        row = static_cast<std::size_t>(found - all.begin());
        return row;
    }
    // The row in the project: drafts and conditions do not count.
    std::size_t placeRow() const {
        std::size_t count = 0;
        for (std::size_t i = 0; i < position(); ++i)
            count +=
                parent->children[i]->kind == Kind::input || parent->children[i]->kind == Kind::top;
        return count;
    }
};

} // namespace cutwater::editor
