// SPDX-License-Identifier: GPL-3.0-or-later
// The exact probability of one solved top event for very many sets of numbers: buffers are kept,
// and several samples are computed side by side.
#pragma once

#include "models/logic/solution.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace cutwater::logic {

// Gives what Solution::probability(q).occurs gives, to the bit. Not thread-safe: one per thread;
// copies are independent.
class ProbabilitySweep {
public:
    static constexpr std::size_t kSamples = 16; // computed side by side

    explicit ProbabilitySweep(const Solution& solution);

    // q[v * kSamples + s] is the probability of variable v in sample s; top[s] gets the answer.
    void operator()(std::span<const double> q, std::span<double, kSamples> top);

private:
    struct Step {               // one node: own occurs ? high : low
        std::uint32_t own = 0;  // a variable, or the result of an earlier step
        std::uint32_t high = 0; // result << 1 | complemented
        std::uint32_t low = 0;
        bool ownIsStep = false, ownComplemented = false;
    };
    struct Values {
        std::array<double, kSamples> occurs{}, occursNot{};
    };

    std::vector<Step> m_steps; // step 0 is the constant false
    std::vector<Values> m_values;
    std::uint32_t m_top = 0; // result << 1 | complemented
};

} // namespace cutwater::logic
