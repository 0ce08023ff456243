// SPDX-License-Identifier: GPL-3.0-or-later
// Truncated: bounds of a module from its minimal cut sets above a cut-off.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/interval.h"
#include "models/logic/program.h"

#include <cstdint>
#include <vector>

namespace cutwater::logic {

struct TruncatedBounds {
    Interval interval;
    double dropped = 0;  // how probable it is at most that a set that was left out happens
    double keptSets = 0; // behind the lower bound
};

// The sets are built from the bottom upwards without those below the cut-off; what is left out is
// added up as it is left out (the union bound), so that
//   P(union of the kept sets) <= P <= P(union of the kept sets) + dropped.
// Where even the kept sets' diagram would have more than `unionNodes` nodes, fewer of them give the
// lower bound and 1 - product (1 - P(set)) the upper one (Esary and Proschan 1963). Preconditions:
// the program is monotone and has at most kMostElements leaves. Throws Stopped where memory ends.
TruncatedBounds boundByCutOff(const Program& program, const std::vector<Interval>& leaves,
                              double cutOff, std::uint64_t unionNodes, Budget& budget);

} // namespace cutwater::logic
