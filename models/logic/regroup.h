// SPDX-License-Identifier: GPL-3.0-or-later
// Regrouping: absorbed inputs go, and parts that share nothing with the rest become modules.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/formula.h"

#include <optional>
#include <vector>

namespace cutwater::logic {

struct Regrouped {
    Formula formula; // variables keep their numbers
    Literal top;
};

// x or (x and y) is x; x or z, where z is an `or` with x among its inputs, is z (and the same with
// `and` and `or` exchanged). Nothing comes back where nothing is absorbed. Linear in the sizes of
// the gates and of the gates directly below them.
std::optional<Regrouped> absorb(const Formula& formula, Literal top, Budget& budget);

struct Grouped {
    Formula formula; // variables keep their numbers
    Literal top;
    std::vector<bool> isModule; // by node of the new formula
};

// Makes more modules of the known ones; nothing where there are none to make. Linear.
// - A module that is an `and` or `or` of parts which share nothing with each other: each such part
//   becomes a gate of its own. Merging gates into their parents had hidden them (ten thousand
//   machines under one `or`).
// - An `and` or `or` whose inputs are partly its own (events and modules that no other gate uses)
//   and partly shared: its own become one gate. A component with five failure modes and a shared
//   supply then counts as two events.
std::optional<Grouped> groupModules(const Formula& formula, Literal top,
                                    const std::vector<bool>& isModule, Budget& budget);

} // namespace cutwater::logic
