// SPDX-License-Identifier: GPL-3.0-or-later
// One number at a time: how far a top event swings when one input goes from the low to the high end
// of what is known about it, all others at their point values.
#pragma once

#include "models/logic/solution.h"
#include "models/reliability/knob.h"

#include <functional>
#include <stop_token>

namespace cutwater::reliability {

// A solved top event and what its variables are. Factors of common-cause groups are turned like any
// other number where its variables count the groups.
struct SolvedTop {
    logic::Solution solution;
    TopVariables variables;
};

struct SwingWish {
    double low = 0.05, high = 0.95; // percentiles of the numbers with a distribution
    // Numbers without a distribution are divided and multiplied by this; 1 or less: left alone.
    double factor = 1;
    std::stop_token stop{};
    std::function<void(double)> progress{};
};

struct Swing {
    std::size_t knob = 0;                               // position in Swings::knobs
    double lowValue = 0, highValue = 0, pointValue = 0; // in the number's own unit
    bool hasDistribution = false;
    bool cut = false;              // an end was above what the number may be, and was set to that
    std::vector<double> low, high; // probability of each top, in the order of the tops
};

struct Swings {
    std::vector<Knob> knobs;
    std::vector<double> point;          // probability of each top at the point values
    std::vector<Swing> swings;          // one for each knob that was turned, in their order
    std::vector<std::size_t> leftAlone; // knobs without a distribution (and without a factor)
    bool stopped = false;
};

// Problems: an event that is in a set of some top and has no probability.
project::Outcome<Swings> swings(const project::Project& project, const project::Index& index,
                                const std::vector<SolvedTop>& tops, std::optional<double> mission,
                                const SwingWish& wish = {});

} // namespace cutwater::reliability
