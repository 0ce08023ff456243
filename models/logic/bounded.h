// SPDX-License-Identifier: GPL-3.0-or-later
// Bounds: a proven interval for a top event whose decision diagram does not fit.
#pragma once

#include "models/logic/formula.h"
#include "models/logic/limits.h"

#include <cstdint>
#include <optional>
#include <span>

namespace cutwater::logic {

struct BoundsWish {
    double width = 0.01;                // (upper - lower) / lower that is good enough
    double seconds = 60;                // after that the best interval so far
    std::uint64_t exactNodes = 500000;  // of the exact attempt at a module; 0: none is made
    std::uint64_t unionNodes = 2000000; // of the diagram of the kept sets
    double firstCutOff = 1e-4;
};

struct Bounds {
    double lower = 0, upper = 1; // lower <= P(top) <= upper, but for the rounding of sums
    double cutOff = 0;           // sets less probable than this were left out
    double dropped = 0;          // how probable it is at most that one of those happens
    double keptSets = 0; // how many sets are behind the lower bound (modules count as one event)
};

struct BoundsOutcome {
    std::optional<Bounds>
        bounds; // empty where it stopped, or where a module that does not fit is not coherent
    Stop stop = Stop::none;
};

// Modules that can be solved are. Of the others the cut sets are built from the bottom upwards
// without those below a cut-off; what is left out is added up as it is left out (the union bound),
// so that
//   P(union of the kept sets) <= P(top) <= P(union of the kept sets) + dropped.
// The cut-off is lowered until the interval is narrow enough, or memory or time end it. Where even
// the kept sets' diagram does not fit, fewer of them give the lower bound and 1 - product (1 -
// P(set)) the upper one (Esary and Proschan 1963). q[v] as in Solution::probability. Depends on the
// clock only in when it stops.
BoundsOutcome boundTop(const Formula& formula, Literal top, std::span<const double> q,
                       const Limits& limits, const BoundsWish& wish = {});

} // namespace cutwater::logic
