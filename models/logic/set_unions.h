// SPDX-License-Identifier: GPL-3.0-or-later
// Of every event the probability that at least one minimal set with it occurs: what Fussell and
// Vesely divide by the top's, exactly and without listing the sets.
#pragma once

#include "models/logic/limits.h"
#include "models/logic/solution.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace cutwater::logic {

// By variable of the formula: P(union of the minimal cut sets with it); 0 for variables in no set.
// Not a number where the diagrams of one module's unions would need more than `nodes` nodes; all of
// them for a formula that is not coherent. Nothing where the limits stopped it. For each event of a
// module one sweep over the part of its sets' diagram that lies above the event; modules multiply.
// q as in Solution::probability().
std::optional<std::vector<double>> setUnionsWith(const Solution& solution,
                                                 std::span<const double> q,
                                                 const Limits& limits = {},
                                                 std::uint64_t nodes = 5'000'000);

} // namespace cutwater::logic
