// SPDX-License-Identifier: GPL-3.0-or-later
// Probabilities and frequencies of a solved tree's events at one moment.
#pragma once

#include "plugins/sdk/tree/figures.h"

#include <set>

namespace cutwater::importance_plugin {

struct Numbers {
    std::vector<double> q;               // by variable; 0 for initiating events
    std::vector<double> frequency;       // by variable, per hour; 0 where it has none
    std::vector<std::size_t> initiating; // positions in project.events
};

// Problems: one for each relevant event that has neither a probability nor a frequency.
project::Outcome<Numbers> numbersOf(const project::Project& project, const project::Index& index,
                                    const sdk::tree::Solved& solved, sdk::tree::FigureBook& book,
                                    std::optional<double> mission);

} // namespace cutwater::importance_plugin
