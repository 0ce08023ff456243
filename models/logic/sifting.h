// SPDX-License-Identifier: GPL-3.0-or-later
// Sifting: finds a better order of the variables for diagrams that exist already.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/diagram.h"

#include <cstdint>
#include <vector>

namespace cutwater::logic {

struct SiftingWish {
    double growth = 1.2; // a variable turns back where the forest has grown by this factor
    std::uint64_t maxSteps = 2000000; // nodes looked at in exchanges, all told
};

// Moves one variable after the other, the widest first, through all places and leaves it where the
// forest is smallest (R. Rudell, "Dynamic variable ordering for ordered binary decision diagrams",
// ICCAD 1993; from memory). The forest is replaced by an equal one in the new order; the answer
// says for each new level which level it was. Deterministic.
std::vector<std::uint32_t> sift(Forest& forest, const SiftingWish& wish, Budget& budget);

} // namespace cutwater::logic
