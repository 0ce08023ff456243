// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be said about common-cause groups, counted or not.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"
#include "models/reliability/common_cause.h"
#include "plugins/sdk/result.h"

#include <optional>
#include <set>
#include <vector>

namespace cutwater::sdk::tree {

// What an analysis has found out about the groups on its way.
struct CommonCauseUse {
    std::set<std::size_t> counted; // positions in project.commonCauses
    std::set<std::size_t> mixed;   // with members whose models are of different kinds
    std::size_t overdrawn = 0;     // members that give away more than they have
};

// One note: which groups with two members among `events` were counted, or that they were not.
void addCommonCauseNotes(std::vector<Note>& notes, const project::Project& project,
                         const std::vector<std::size_t>& events, const CommonCauseUse& use);

// For figures of top events that stand beside something else: which groups were counted, or a
// warning that none were asked for where the project has any.
void addGroupNotes(std::vector<Note>& notes, const project::Project& project,
                   const std::set<std::size_t>& counted, bool asked);

// Members of one group that differ, or that fail too often for a share of the probability.
void addMemberWarnings(std::vector<Note>& notes, const project::Project& project,
                       const project::Index& index, const std::set<std::size_t>& groups,
                       std::optional<double> mission, reliability::UnequalRule rule);

} // namespace cutwater::sdk::tree
