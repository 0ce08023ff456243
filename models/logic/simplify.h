// SPDX-License-Identifier: GPL-3.0-or-later
// Simplification: an equivalent formula with less in it, before any diagram is made.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/formula.h"

namespace cutwater::logic {

struct Simplified {
    Formula formula;                       // only what the top needs
    Literal top;                           // a constant, a variable or a gate of `formula`
    std::vector<std::uint32_t> variableOf; // its variable -> the variable of the original
};

// Constants folded; votes and exactly-one gates reduced where inputs are known, repeated or
// opposite; gates with one input removed; an `and` in an `and` (an `or` in an `or`) with no other
// parent merged into it; equal gates made one; negations pushed down wherever a gate is only used
// negated. Linear time but for sorting the inputs of equal-looking gates. The order of inputs is
// kept, because it is the order in which somebody drew the tree.
Simplified simplify(const Formula& formula, Literal top, Budget& budget);

// Simplifies, propagates repeated events, and simplifies again as long as that finds something.
Simplified reduce(const Formula& formula, Literal top, Budget& budget);

} // namespace cutwater::logic
