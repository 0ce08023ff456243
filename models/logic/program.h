// SPDX-License-Identifier: GPL-3.0-or-later
// Program: what one module computes, in numbers of its own, so that two modules of the same
// structure have equal programs.
#pragma once

#include "models/logic/bdd.h"
#include "models/logic/formula.h"

#include <cstdint>
#include <vector>

namespace cutwater::logic {

// What a module stands on, in the order of the module's own variables (level 0 first).
struct Leaf {
    std::uint32_t index; // a variable of the original formula, or a part
    bool isPart;
    bool operator==(const Leaf&) const = default;
};

// Gates in the order in which they can be computed, as plain numbers: [op, k, n, input 1 .. n] for
// each; an input is index << 2 | isGate << 1 | negated, or one of the two constants. The last gate
// is the module itself.
struct Program {
    std::vector<std::uint32_t> code;
    std::uint32_t levels = 0;
    bool monotone = true; // no negation and no exactly-one gate in it
    bool operator==(const Program&) const = default;

    static constexpr std::uint32_t kFalseInput = 0xfffffffc, kTrueInput = 0xfffffffd;
};

// Runs the program on the diagrams: gates are folded from the last variable of the order upwards,
// so that each step touches as little as it can.
Edge compute(const Program& program, Bdd& bdd);

} // namespace cutwater::logic
