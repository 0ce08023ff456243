// SPDX-License-Identifier: GPL-3.0-or-later
// The way of a cut set up to the top: which gates it makes happen.
#pragma once

#include "app/editor/diagram/tree.h"

#include <set>

namespace cutwater::editor {

struct MarkedPath {
    std::set<project::Id> nodes; // what is drawn heavy
    bool reachesTop = false;     // the events alone make the top event happen
};

// Takes the marked events as occurred, house events as they are set, all others as not occurred.
// Where that makes the top event happen, everything that happens on the way is marked; where not,
// the given nodes alone. Linear, no recursion.
MarkedPath markedPath(const Tree& tree, const std::set<project::Id>& marked);

} // namespace cutwater::editor
