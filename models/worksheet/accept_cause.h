// SPDX-License-Identifier: GPL-3.0-or-later
// A proposed common cause taken into the project as a beta-factor group.
#pragma once

#include "models/worksheet/cause_proposals.h"

#include <string>

namespace cutwater::worksheet {

// What a person has to add to a proposal: how strongly the parts fail together, and who says so.
struct CauseTerms {
    project::Quantity beta; // the share of the failures that is common: above 0, at most 1
    std::string name;       // of the group; empty: what is shared
};

// Ids of the proposals as lists show them: C1, C2 ... in the order of proposeCauses(). They count
// over all proposals, so that leaving some out of a list does not change them.
std::string causeId(std::size_t position);

// The project with the new group: its members are the events of the proposal, its reason is the
// proposal's. Problems: beta out of range, or without a source; a group has these members already;
// an event of the proposal is no longer there.
project::Outcome<project::Project> acceptCause(const project::Project& project,
                                               const CauseProposal& proposal,
                                               const CauseTerms& terms);

} // namespace cutwater::worksheet
