// SPDX-License-Identifier: GPL-3.0-or-later
// One top event, solved within the limits of a job.
#pragma once

#include "models/logic/solution.h"
#include "models/reliability/tree_formula.h"
#include "plugins/sdk/tree/target.h"

namespace cutwater::sdk::tree {

enum class Side {
    fails, // minimal cut sets of the top event
    works, // minimal path sets: cut sets of the dual; a literal there means "does not occur"
};

struct Solved {
    Target target;
    reliability::TreeFormula tree;
    logic::Solution solution;
};

// Solves targets one after another, each with its share of the progress. Stops at the first one
// that is cancelled or runs over the memory, and says which.
Answer<std::vector<Solved>> solveAll(const project::Project& project, const project::Index& index,
                                     const std::vector<Target>& targets, Side side, const Job& job);

// The problem for an ending before the end.
project::Problem cancelledAt(const Target& target);
project::Problem overMemoryAt(const Target& target, std::size_t memoryBytes);

// "252" as a whole number where it fits, otherwise as text.
Cell countCell(const logic::Count& count);
// The number, or an empty cell where it is not known.
Cell numberCell(bool known, double value);

} // namespace cutwater::sdk::tree
