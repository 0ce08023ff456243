// SPDX-License-Identifier: GPL-3.0-or-later
// Propagation of repeated events: x or f(x) is x or f(0), x and f(x) is x and f(1).
#pragma once

#include "models/logic/budget.h"
#include "models/logic/formula.h"

#include <optional>

namespace cutwater::logic {

// Where an event is a direct input of an `and` (`or`) gate, it counts as true (false) in everything
// below that gate that can be reached from the top through that gate only: it is replaced there by
// the constant. Gates keep their numbers; nothing comes back where nothing could be replaced. What
// a gate decides for everything below it follows from the tree of dominators, so time is n log n
// and there is no recursion.
std::optional<Formula> propagateEvents(const Formula& formula, Literal top, Budget& budget);

} // namespace cutwater::logic
