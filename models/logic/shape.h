// SPDX-License-Identifier: GPL-3.0-or-later
// Shape: a program that has been solved. Modules of equal structure share one.
#pragma once

#include "models/logic/builder.h"
#include "models/logic/diagram.h"
#include "models/logic/program.h"

#include <array>
#include <cstdint>
#include <memory>
#include <vector>

namespace cutwater::logic {

struct Shape {
    Diagram diagram;
    std::vector<std::uint32_t> leafAt; // level -> leaf of the program
    bool monotone = true;
    std::uint64_t made = 0; // nodes made to get there
};

// A shape with what has been asked of it so far. Copies are cheap and share what is solved.
struct SolvedShape {
    std::shared_ptr<const Shape> shape;
    std::array<std::shared_ptr<const Families>, 2>
        sets; // of the function and of its negation, or null
};

// The tables of one thread.
class Bench {
public:
    explicit Bench(Account& account) : m_budget(account), m_bdd(m_budget), m_zdd(m_budget) {}

    // Throws Stopped{Stop::memory} where no order gets there within `mostNodes`.
    std::shared_ptr<const Shape> solve(const Program& program, std::uint64_t mostNodes);
    std::shared_ptr<const Families> sets(const Shape& shape, bool negated);
    Budget& budget() { return m_budget; }

private:
    void tidy();
    Budget m_budget;
    Bdd m_bdd;
    Zdd m_zdd;
};

} // namespace cutwater::logic
