// SPDX-License-Identifier: GPL-3.0-or-later
// Cases: bounds of an `or` of functions that have diagrams of their own and none together.
#pragma once

#include "models/logic/functions.h"
#include "models/logic/interval.h"

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <span>

namespace cutwater::logic {

struct CasesWish {
    double width = 0.01;            // (upper - lower) / lower that is good enough
    std::size_t cases = 300000;     // kept at most
    std::uint64_t nodes = 20000000; // of the table of diagrams
    std::chrono::steady_clock::time_point end = std::chrono::steady_clock::time_point::max();
};

struct CasesFound {
    Interval interval;
    std::size_t cases = 1;
};

// Leaves are decided one after the other, as in a diagram of the `or`, but best-first: a case is
// what is left of the functions after some leaves are decided, and how probable it is to come
// there; equal ones are one. The probability of the `or` is the sum over the open cases of that
// times P(union of what is left), which is bounded by boundUnion from the diagrams of the functions
// and of their pairs. The case that leaves most open is split next. With enough cases the interval
// closes; of two runs that allow 2^a and 2^b cases the larger one's is never wider. q[level] is the
// probability of a leaf. Where memory ends, the interval found so far is the answer. The table is
// of no use afterwards.
CasesFound boundByCases(const Functions& functions, Bdd& bdd, std::span<const double> q,
                        const CasesWish& wish, Budget& budget);

} // namespace cutwater::logic
