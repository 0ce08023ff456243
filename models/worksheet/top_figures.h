// SPDX-License-Identifier: GPL-3.0-or-later
// How probable a top event is and how often it comes in a year of the calendar: what the risk
// matrix and the comparison with the worksheet's severity need of a tree.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <cstddef>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace cutwater::worksheet {

struct TopLimits {
    std::size_t memoryBytes = std::size_t{2} << 30;
    std::stop_token stop{};
    bool commonCauses = false; // count the common-cause groups; else events are independent
};

struct TopFigures {
    std::optional<double> probability; // at the moment it is asked about
    std::optional<double> perYear;
    std::string how;         // of `perYear`, or why there is none: a clause
    bool lowerBound = false; // of `perYear`: the tree is not coherent
    bool cancelled = false;
    std::vector<std::size_t> groups{}; // that were counted: positions in project.commonCauses
};

// Probability: exact; common causes as in models/reliability/common_cause.h where they are asked
// for, with the geometric mean of members that are not equally bad; else events independent.
// Frequency: probability x how often the question comes up
// where the top event says so (TopEvent::asked); else the mean over a year of the Birnbaum factors
// times the frequencies of the events (Vesely 1970), parts that are repaired at once in their
// long-run state. Solving is bounded by the limits; a tree that does not fit has no figures.
TopFigures topFiguresOf(const project::Project& project, const project::Index& index,
                        const project::TopEvent& top, const TopLimits& limits);

} // namespace cutwater::worksheet
