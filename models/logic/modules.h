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

} // namespace cutwater::logic
