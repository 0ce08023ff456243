// SPDX-License-Identifier: GPL-3.0-or-later
// Unfold: from a project's graph of gates to a tree of boxes. A node with several parents is drawn
// in full at the first place (left to right, top to bottom) and referred to from the others.
#pragma once

#include "models/project/index.h"

#include <cstddef>
#include <limits>
#include <vector>

namespace cutwater::drawing {

inline constexpr std::size_t kNoItem = std::numeric_limits<std::size_t>::max();
// More boxes are not drawn: nobody could read the sheets.
inline constexpr std::size_t kMaxItems = 60000;

enum class ItemRole {
    itself,       // the event or gate, drawn here
    reference,    // it is drawn at another place
    continuation, // the same gate again, with the inputs that found no room
};

struct Item {
    ItemRole role = ItemRole::itself;
    project::Id node;
    const project::Gate* gate = nullptr; // one of the two is set
    const project::Event* event = nullptr;
    std::size_t parent = kNoItem;
    std::vector<std::size_t> children;
    std::size_t condition =
        kNoItem;         // of an inhibit gate: stands beside it, is not among `children`
    bool beside = false; // this is such a condition
    bool cut = false;    // starts a sheet of its own; its parent's sheet shows a transfer symbol
};

struct Unfolded {
    std::vector<Item> items; // the first is the top; a parent comes before its children
};

// `node` is a gate or an event; pointers go into the index' project, which must
// live on. A loop in the
// project becomes a reference. No recursion. Problems: a node that does not exist, over kMaxItems.
project::Outcome<Unfolded> unfold(const project::Index& index, const project::Id& node);

} // namespace cutwater::drawing
