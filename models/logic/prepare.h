// SPDX-License-Identifier: GPL-3.0-or-later
// What is done to a formula before any diagram: reduced, its modules found, and what one gate owns
// made a module too.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/simplify.h"

#include <vector>

namespace cutwater::logic {

struct Prepared {
    Simplified simple;                   // its top is a constant or a gate
    std::uint32_t events = 0, gates = 0; // after reduction, before grouping
    std::vector<bool> isModule;
    std::vector<std::uint32_t> modules; // nodes, children before parents; the last one is the top
};

Prepared prepare(const Formula& formula, Literal top, Budget& budget);

} // namespace cutwater::logic
