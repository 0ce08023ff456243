// SPDX-License-Identifier: GPL-3.0-or-later
// From the worksheet to a first tree: gates that are proposed for one end effect, each with its
// reason, to be taken one by one. Grouped by the plant breakdown; "and" where a part is supplied by
// two of a kind, else "or".
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <set>
#include <string>
#include <vector>

namespace cutwater::worksheet {

struct Proposal {
    std::string id;      // "P1", the top gate first; stable as long as the project is
    project::Gate gate;  // inputs are ids of events and of other proposed gates
    std::string reason;  // one sentence
    bool certain = true; // false: a person has to look, the reason says at what
};

struct Skeleton {
    std::string effect;                 // as the worksheet has it
    std::vector<Proposal> proposals;    // a gate stands before those below it
    std::vector<project::Event> events; // that the gates need and the project does not have
    project::TopEvent top;              // for the first gate
    std::vector<std::string> remarks;   // sentences: what was left out
};

// Problems: no failure mode has that end effect (the nearest text is proposed); more than 2000
// gates.
project::Outcome<Skeleton> proposeTree(const project::Project& project, const project::Index& index,
                                       const std::string& effect);

// The project with the accepted gates, the events they need, and the top event where the first gate
// is accepted. Inputs of a gate that was not accepted go to the nearest accepted gate above it.
// Problems: an id that is no proposal; none accepted; gates without one above them. What comes out
// is validated.
project::Outcome<project::Project> acceptProposals(const project::Project& project,
                                                   const Skeleton& skeleton,
                                                   const std::set<std::string>& accepted);

} // namespace cutwater::worksheet
