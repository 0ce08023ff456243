// SPDX-License-Identifier: GPL-3.0-or-later
// Modules: gates below which nothing is shared with the rest of the tree. Each can be solved alone.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/formula.h"

#include <vector>

namespace cutwater::logic {

// isModule[node] for every gate below `top` (and the top itself, where it is a gate). Two
// depth-first walks, linear time (Y. Dutuit and A. Rauzy, "A linear-time algorithm to find modules
// of fault trees", IEEE Transactions on Reliability 45, 1996; from memory). No recursion.
std::vector<bool> findModules(const Formula& formula, Literal top, Budget& budget);

// A formula cut at some of its modules into pieces: a piece is the cut gate with all below it down
// to the next cuts, which are leaves to it like its events.
struct Division {
    std::vector<std::uint32_t> gates; // that were cut, children before parents; the top is the last
    std::vector<bool> isCut;          // by node
    // By node: pieces that are only needed as their complements and are better made so. Empty where
    // nothing in the formula is negated.
    std::vector<bool> turned;
};

// Cuts as soon as `leastSize` gates and leaves have come together. Precondition: the top is a gate.
Division divide(const Formula& formula, Literal top, std::uint32_t leastSize, Budget& budget);

} // namespace cutwater::logic
