// SPDX-License-Identifier: GPL-3.0-or-later
// Regrouping: absorbed inputs go, and the inputs that only one gate uses become a gate of their
// own.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/formula.h"

#include <optional>

namespace cutwater::logic {

struct Regrouped {
    Formula formula; // variables keep their numbers
    Literal top;
};

// x or (x and y) is x; x or z, where z is an `or` with x among its inputs, is z (and the same with
// `and` and `or` exchanged). Nothing comes back where nothing is absorbed. Linear in the sizes of
// the gates and of the gates directly below them.
std::optional<Regrouped> absorb(const Formula& formula, Literal top, Budget& budget);

// A module that is an `and` or `or` of parts which share nothing with each other: each such part
// becomes a gate of its own, which is a module again. Merging gates into their parents had hidden
// them (ten thousand machines under one `or`). Linear.
Regrouped splitModules(const Formula& formula, Literal top, const std::vector<bool>& isModule,
                       Budget& budget);

// An `and` or `or` whose inputs are partly its own (events and modules that no other gate uses) and
// partly shared: its own become one gate, which is a module. A component with five failure modes
// and a shared supply then counts as two events.
Regrouped groupOwnInputs(const Formula& formula, Literal top, const std::vector<bool>& isModule,
                         Budget& budget);

} // namespace cutwater::logic
