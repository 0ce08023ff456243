// SPDX-License-Identifier: GPL-3.0-or-later
// Trimming: what cannot matter any more below the gates that already use an event is left out, on
// one walk from the top, before anything else looks at the formula.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/formula.h"

#include <optional>

namespace cutwater::logic {

struct Trimmed {
    Formula formula; // the same variables
    Literal top;
};

// Below an `or` with the direct input x, x counts as false in all that only this gate reaches by
// gates that are used once, below an `and` as true: x + f(x) = x + f(0), x f(x) = x f(1). What is
// decided by that is not walked into, so that a chain of a hundred thousand gates over a thousand
// events costs what its first thousand gates cost. Gates that are used in several places are
// trimmed by themselves; propagate() later finds what this walk cannot see.
Trimmed trim(const Formula& formula, Literal top, Budget& budget);

// Nothing where there is little to hope for (the formula is small or has few gates for its events)
// or nothing was left out.
std::optional<Trimmed> trimWhereItPays(const Formula& formula, Literal top, Budget& budget);

} // namespace cutwater::logic
