// SPDX-License-Identifier: GPL-3.0-or-later
// One traced supply, solved: its sets, its single failures, and those of each leg.
#pragma once

#include "models/logic/solution.h"
#include "models/reliability/supply.h"
#include "plugins/sdk/interfaces.h"

#include <set>

namespace cutwater::redundancy_plugin {

using ModeSet = std::set<std::size_t>; // positions in project.modes

constexpr std::size_t kMostSets = 20'000; // that are compared or listed one by one

struct Traced {
    reliability::SupplyTrace trace;
    std::optional<logic::Solution> dead; // the load has no supply
    std::optional<double> probability;   // where all modes that count have a number
    ModeSet singles;
    std::vector<ModeSet> legSingles; // by leg
    std::vector<ModeSet> sets;       // minimal cut sets, smallest first
    bool allSets = false;            // `sets` is complete
    std::vector<std::pair<ModeSet, std::optional<double>>>
        paths; // minimal path sets: what must
               // hold, and the chance that it does
    bool allPaths = false;
};

// `limit`: path sets that are listed.
sdk::Answer<Traced> solveTrace(const project::Project& project, const project::Index& index,
                               reliability::SupplyTrace trace, std::size_t limit,
                               const sdk::Job& job);

// A problem where the engine was stopped, and how.
struct Halt {
    sdk::Ending ending = sdk::Ending::cancelled;
    project::Problem problem;
};
Halt haltOf(logic::Stop stop, const std::string& what, const sdk::Job& job);

} // namespace cutwater::redundancy_plugin
