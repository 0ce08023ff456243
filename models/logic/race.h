// SPDX-License-Identifier: GPL-3.0-or-later
// Race: several orders are tried with a growing allowance of nodes; the first that gets there wins.
#pragma once

#include "models/logic/builder.h"

#include <optional>

namespace cutwater::logic {

// Deterministic: allowances are counted in nodes, never in time. Throws Stopped{Stop::memory} where
// no order fits into the budget, after the last attempt, which sifts on the way.
Built buildByRace(const Program& program, Bdd& bdd, Budget& budget);

} // namespace cutwater::logic
