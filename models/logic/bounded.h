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
    double width = 0.01;                  // (upper - lower) / lower that is good enough
    double seconds = 60;                  // after that the best interval so far
    std::uint64_t exactNodes = 500000;    // of the exact attempt at a module; 0: none is made
    std::uint64_t functionNodes = 500000; // of the diagrams of the inputs of an `or` together
    std::uint64_t pairNodes = 20000000;   // of those, and of the products of two of them
    std::size_t cases = 300000;           // that are told apart at most; 0: none
    std::uint64_t unionNodes = 2000000;   // of the diagram of the kept sets
    double firstCutOff = 1e-4;
};

enum class BoundsMethod {
    exact,  // solved: what width there is comes from modules below it
    cases,  // leaves decided one after the other, what is left of the functions bounded by pairs
    cutOff, // sets below a cut-off left out
};

struct Bounds {
    double lower = 0, upper = 1; // lower <= P(top) <= upper, but for the rounding of sums
    // How the top module was bounded; those below it may have been in other ways.
    BoundsMethod method = BoundsMethod::exact;
    double cutOff = 0;     // sets less probable than this were left out
    double dropped = 0;    // how probable it is at most that one of those happens
    double keptSets = 0;   // how many are behind the lower bound (modules count as one event)
    std::size_t cases = 0; // that were told apart
};

struct BoundsOutcome {
    std::optional<Bounds>
        bounds; // empty where it stopped, or where a module that does not fit is not coherent
    Stop stop = Stop::none;
};

// Modules that can be solved are. One that is an `or` of functions with small diagrams is bounded
// by cases (cases.h); where that cannot be done or is not narrow enough, a coherent one is bounded
// by its cut sets above a cut-off (truncated.h), which is lowered until the interval is narrow
// enough, or memory or time end it; the narrower of the two intervals is the answer. q[v] as in
// Solution::probability. Depends on the clock only in when it stops.
BoundsOutcome boundTop(const Formula& formula, Literal top, std::span<const double> q,
                       const Limits& limits, const BoundsWish& wish = {});

} // namespace cutwater::logic
