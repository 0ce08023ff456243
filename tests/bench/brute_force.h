// SPDX-License-Identifier: GPL-3.0-or-later
// Answers for small formulas by trying everything. Slow on purpose: nothing here is shared with the
// engine.
#pragma once

#include "tests/bench/families.h"

#include <cstdint>

namespace bench {

constexpr std::uint32_t kMostTriedEvents = 22;
constexpr std::uint32_t kMostTriedForImplicants = 13;

// The sum over all 2^n states, n <= kMostTriedEvents.
double triedProbability(const Instance& instance);
// Minimal cut sets of a coherent formula, n <= kMostTriedEvents.
std::uint64_t triedMinimalSets(const Instance& instance);
// Prime implicants of any formula, by looking at all 3^n products; n <= kMostTriedForImplicants.
std::uint64_t triedPrimeImplicants(const Instance& instance);

} // namespace bench
