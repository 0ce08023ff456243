// SPDX-License-Identifier: GPL-3.0-or-later
// Functions: the inputs of an `or`, each with a diagram, over one order of the leaves.
#pragma once

#include "models/logic/bdd.h"
#include "models/logic/order.h"
#include "models/logic/program.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace cutwater::logic {

struct Functions {
    std::vector<Edge> edges;         // in the table that was given
    std::vector<std::uint64_t> near; // level -> which functions have its leaf, one bit each
    Order leafAt;
    std::uint32_t shared = 0; // so many leaves come first because most functions have them
};

constexpr std::size_t kMostFunctions = 64;

// Leaves that more than half of the functions have are decided first, so that what is left of the
// functions has little in common. Where there are more than kMostFunctions inputs, neighbours are
// joined. Nothing comes back where the last gate of the program is no `or`, the program is not
// monotone, or the diagrams would make more than `mostNodes` nodes with every order tried. The
// table should be empty.
std::optional<Functions> functionsOf(const Program& program, Bdd& bdd, Budget& budget,
                                     std::uint64_t mostNodes);

} // namespace cutwater::logic
