// SPDX-License-Identifier: GPL-3.0-or-later
// Width: how large the diagram of a program will be in an order, guessed without making it.
#pragma once

#include "models/logic/order.h"
#include "models/logic/wiring.h"

#include <cstdint>
#include <vector>

namespace cutwater::logic {

// Between two levels a diagram has to remember what is known of the gates that have met some of
// their inputs and not all (a bit each; votes more), and it can know no more than the finished
// inputs say that those gates still wait for. The smaller of the two numbers is the bits of that
// place; the guess is the sum over all places of 2^(bits / 2). The root is because far from all
// combinations occur: found by trying, on plants, large trees and grids the order with the smallest
// guess is the one with the smallest diagram, or near it. The guess is no bound.
class WidthEstimate {
public:
    explicit WidthEstimate(const Program& program);
    double operator()(const Order& order); // > 0; infinite where it is out of all reach
    const Wiring& wiring() const { return m_wiring; }

private:
    const Wiring m_wiring;
    std::vector<std::int32_t> m_bits; // by gate
    // Of leaves and gates: the level after which all below is known, and the last level at which
    // somebody still waits for others beside it.
    std::vector<std::int32_t> m_known, m_awaited;
    std::vector<std::int32_t> m_open, m_border; // by level: how much begins less what ends there
    std::vector<double> m_power;                // 2^(bits / 2)
};

} // namespace cutwater::logic
