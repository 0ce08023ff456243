// SPDX-License-Identifier: GPL-3.0-or-later
// Common causes that the plant's own data point at: failure modes that a gate counts on failing
// independently, although their parts share a supply, a place, a kind, a fuel or a hand.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <string>
#include <string_view>
#include <vector>

namespace cutwater::worksheet {

enum class CauseKind { supply, location, type, fuel, maintenance };
std::string_view word(CauseKind kind); // "same supply" ...

struct CauseProposal {
    CauseKind kind = CauseKind::supply;
    std::string shared;              // what they share: "PS-1", "burner front"
    std::vector<std::size_t> events; // positions in project.events, ascending
    std::vector<std::size_t> gates;  // that count on it: positions in project.gates
    std::vector<project::Id> groups; // common-cause groups that hold two or more of them already
    std::string reason;              // one sentence
};

struct CauseProposals {
    std::vector<CauseProposal> proposals; // by kind, then by what is shared
    std::size_t gatesLeftOut = 0; // with more than 4000 events below: they were not looked at
};

// Looks at each gate that needs two or more of its inputs. Events below different inputs of it are
// proposed where they share a fact. Events below a shared subtree of all inputs are no pair.
CauseProposals proposeCauses(const project::Project& project, const project::Index& index);

} // namespace cutwater::worksheet
