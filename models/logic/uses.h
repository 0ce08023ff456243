// SPDX-License-Identifier: GPL-3.0-or-later
// Uses: how often and in which polarity each node is used by what a top needs.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/formula.h"

#include <cstdint>
#include <vector>

namespace cutwater::logic {

struct Use {
    std::uint32_t parents = 0; // 0: the top does not need it
    bool positive = false, negative = false;
    bool flipped() const { return negative && !positive; } // better built as its complement
};

// By node.
std::vector<Use> findUses(const Formula& formula, Literal top, Budget& budget);

} // namespace cutwater::logic
