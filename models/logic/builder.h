// SPDX-License-Identifier: GPL-3.0-or-later
// Builder: runs a program on decision diagrams, throws away what is no longer needed and finds a
// better order where the diagrams become large.
#pragma once

#include "models/logic/bdd.h"
#include "models/logic/diagram.h"
#include "models/logic/program.h"

#include <optional>
#include <vector>

namespace cutwater::logic {

struct Built {
    Diagram diagram;
    std::vector<std::uint32_t> leafAt; // level -> leaf of the program
    std::uint64_t made = 0;            // nodes made on the way
};

struct BuilderWish {
    std::uint32_t collectAbove = 1u << 18; // nodes in the table before anybody looks for waste
    std::uint32_t siftAbove =
        0xffffffff; // live nodes before the order is sifted: dear, a last resort
    std::uint64_t maxMade = ~std::uint64_t{0}; // nodes that may be made before it gives up
};

// `order` says which leaf stands at which level to begin with. Gates are folded from the last level
// upwards, so that each step touches as little as it can. The table may hold other things before
// and after; edges into it do not survive. Nothing comes back where it gave up; `stepsDone` then
// says how many gates it had finished.
std::optional<Built> build(const Program& program, const std::vector<std::uint32_t>& order,
                           Bdd& bdd, Budget& budget, const BuilderWish& wish = {},
                           std::size_t* stepsDone = nullptr);

} // namespace cutwater::logic
