// SPDX-License-Identifier: GPL-3.0-or-later
// Race: several orders are tried with a growing allowance of nodes; the first that gets there wins.
#pragma once

#include "models/logic/builder.h"

#include <optional>

namespace cutwater::logic {

// Deterministic: allowances are counted in nodes, never in time. Nothing comes back where the next
// allowance would be over `mostNodes`. Throws Stopped{Stop::memory} where no order fits into the
// budget, after a last attempt that sifts on the way.
std::optional<Built> buildByRace(const Program& program, Bdd& bdd, Budget& budget,
                                 std::uint64_t mostNodes = ~std::uint64_t{0});

} // namespace cutwater::logic
