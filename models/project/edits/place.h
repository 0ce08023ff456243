// SPDX-License-Identifier: GPL-3.0-or-later
// Where a node is used, and where one shall be put.
#pragma once

#include "models/project/value.h"

#include <cstddef>
#include <limits>

namespace cutwater::project::edits {

inline constexpr std::size_t kLast = std::numeric_limits<std::size_t>::max(); // behind all others
inline constexpr std::size_t kCondition = kLast - 1; // the condition of an inhibit gate
inline constexpr std::size_t kLoose = kLast - 2;     // a node that nothing uses

// Before input `row` of gate `parent`. An empty parent: a new top event, before top event `row`.
// A parent that is an event becomes an or gate with this as its first input.
struct Place {
    Id parent;
    std::size_t row = kLast;
    bool operator==(const Place&) const = default;
};

// One use of a node: input `row` of gate `parent`, or its condition; with an empty parent the top
// event `row`, or kLoose.
struct Use {
    Id node;
    Id parent;
    std::size_t row = 0;
    bool operator==(const Use&) const = default;
};

} // namespace cutwater::project::edits
