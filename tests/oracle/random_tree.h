// SPDX-License-Identifier: GPL-3.0-or-later
// Random formulas with shared gates, repeated inputs and constants; the same seed gives the same
// formula on every machine.
#pragma once

#include "models/logic/formula.h"

#include <cstdint>
#include <span>
#include <string>
#include <vector>

namespace cutwater::oracle {

// SplitMix64 (Steele, Lea and Flood 2014): our own, because the standard distributions differ
// between libraries and a seed in a failure message must mean the same tree everywhere.
class Random {
public:
    explicit Random(std::uint64_t seed) : m_state(seed) {}
    std::uint64_t bits();
    std::uint32_t below(std::uint32_t bound); // 0 .. bound-1
    double unit();                            // 0 .. 1
    bool chance(double probability) { return unit() < probability; }

private:
    std::uint64_t m_state;
};

struct TreeWish {
    std::uint32_t events = 10;
    std::uint32_t gates = 10;    // the more of them, the more is used several times
    bool negations = false;      // negated inputs and exactly-one gates
    bool oddities = true;        // constants, repeated inputs, votes with k out of range
    std::uint32_t maxInputs = 4; // per gate, 2 and up
};

struct RandomTree {
    std::uint64_t seed = 0;
    logic::Formula formula;
    logic::Literal top;
    std::vector<double> q; // 1e-6 to 0.6, log-uniform
};

RandomTree makeTree(std::uint64_t seed, const TreeWish& wish);

// Copies the part of `source` below `top` into `target`, with `events[v]` in the place of variable
// v.
logic::Literal copyInto(logic::Formula& target, const logic::Formula& source, logic::Literal top,
                        std::span<const logic::Literal> events);

// "seed 12, top ~g20" and a line per gate, for failure messages.
std::string describe(const RandomTree& tree);
std::string describe(const logic::Formula& formula, logic::Literal top);

} // namespace cutwater::oracle
