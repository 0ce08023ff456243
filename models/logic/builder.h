// SPDX-License-Identifier: GPL-3.0-or-later
// Builds the decision diagram of a program gate by gate.
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
};

// `order` says which leaf stands at which level to begin with. Gates are folded from the last level
// upwards, so that each step touches as little as it can. The table may hold other things before
// and after; edges into it do not survive. Program, table and budget must outlive the builder.
class Builder {
public:
    Builder(const Program& program, const std::vector<std::uint32_t>& order, Bdd& bdd,
            Budget& budget, const BuilderWish& wish = {});

    // Goes on until it is finished (true) or more than `mostMade` nodes have been made in all; then
    // it may be told to go on. Nobody else may use the table in between.
    bool advance(std::uint64_t mostMade = ~std::uint64_t{0});
    Built take(); // once, after advance() has said true

    // Every input that is folded is a step: tells who is ahead.
    std::size_t stepsDone() const { return m_steps; }

private:
    struct Fold { // how far the present gate is
        std::vector<Edge> inputs;
        std::size_t next = 0;
        Edge result = kNever;
    };

    void countUses();
    std::uint64_t made() const;
    void computeGate(const GateView& gate);
    Edge fold(bool conjunction);
    Edge atLeast(std::uint32_t k);
    Edge exactlyOne();
    Edge edgeOf(std::uint32_t input);
    void letGo(std::uint32_t input);
    void collect();

    const Program& m_program;
    Bdd& m_bdd;
    Budget& m_budget;
    Charge m_charge; // a gate takes four words or more of the program, and eight bytes here
    const BuilderWish m_wish;
    GateView m_gate;
    Fold m_fold;
    std::vector<Edge> m_inputs;
    std::vector<std::uint32_t> m_leafAt, m_levelOf;
    std::vector<Edge> m_gates;
    std::vector<std::uint32_t> m_uses;
    std::uint32_t m_collectAt, m_siftAt;
    std::uint32_t m_before; // size of the table when counting began
    std::uint64_t m_madeBefore = 0;
    std::size_t m_steps = 0;
};

// To the end, or nothing where it would make more than `mostMade` nodes.
std::optional<Built> build(const Program& program, const std::vector<std::uint32_t>& order,
                           Bdd& bdd, Budget& budget, const BuilderWish& wish = {},
                           std::uint64_t mostMade = ~std::uint64_t{0});

} // namespace cutwater::logic
