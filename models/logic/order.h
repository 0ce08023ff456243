// SPDX-License-Identifier: GPL-3.0-or-later
// Variable orders: which leaf of a program is decided first. The size of the diagram hangs on it,
// and no rule is best on every tree: see docs/methods/engine.md for what each did on which family.
#pragma once

#include "models/logic/program.h"

#include <cstdint>
#include <vector>

namespace cutwater::logic {

// Level -> leaf. Each is deterministic and costs little next to a large diagram.
using Order = std::vector<std::uint32_t>;

// As a depth-first walk from the top meets them, a gate's own leaves before those of the gates
// below it.
Order ownLeavesFirst(const Program& program);
// The same walk, but a gate's own leaves after those of the gates below it: what is shared comes
// early.
Order gatesFirst(const Program& program);
// As a breadth-first walk meets them: what is near the top comes first.
Order byLevel(const Program& program);
// Leaves that can be reached from the top in the most ways come first.
Order mostWaysFirst(const Program& program);

} // namespace cutwater::logic
