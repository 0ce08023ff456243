// SPDX-License-Identifier: GPL-3.0-or-later
// Diagrams taken out of the tables they were made in: only what is reached, children before
// parents, so that one sweep over the array computes anything.
#pragma once

#include "models/logic/bdd.h"
#include "models/logic/zdd.h"

#include <vector>

namespace cutwater::logic {

struct Diagram {
    std::vector<BddNode> nodes; // [0] is the constant
    Edge root = kNever;
};

// Several functions over one set of levels.
struct Forest {
    std::vector<BddNode> nodes; // [0] is the constant
    std::vector<Edge> roots;
    std::uint32_t levels = 0;
};

struct Families {
    std::vector<ZddNode> nodes; // [0] no sets, [1] the empty set
    Family root = kNoSets;
    std::vector<std::uint32_t> elements; // those that occur, ascending
};

} // namespace cutwater::logic
