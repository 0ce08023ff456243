// SPDX-License-Identifier: GPL-3.0-or-later
// One top event, solved a second time with its common causes expanded.
#pragma once

#include "models/reliability/common_cause.h"
#include "plugins/sdk/tree/figures.h"

namespace cutwater::common_cause_plugin {

struct GroupFigure {
    std::size_t group = 0; // position in project.commonCauses
    double withoutIt = 0;  // the top where this group's members fail independently
};

struct Comparison {
    bool grouped = false; // at least one group counts here
    double plain = 0, common = 0;
    logic::Count plainSets, commonSets;
    std::uint64_t plainSingles = 0, commonSingles = 0;
    struct Single {
        std::vector<std::size_t> events; // what the cause takes, positions in project.events
        std::size_t group = 0;           // position in project.commonCauses
        std::string id;
        double probability = 0;
    };
    std::vector<Single> added; // most probable first
    std::vector<GroupFigure> groups;
    std::size_t overdrawn = 0; // members that had not enough for all their groups
};

struct Numbers {
    std::optional<double> mission;
    reliability::UnequalRule rule = reliability::UnequalRule::geometricMean;
};

// Problems: an event that counts has no number, or a group is too large.
sdk::Answer<Comparison> compare(const project::Project& project, const project::Index& index,
                                const sdk::tree::Solved& solved, const sdk::tree::Figures& figures,
                                const Numbers& numbers, const sdk::Job& job);

} // namespace cutwater::common_cause_plugin
