// SPDX-License-Identifier: GPL-3.0-or-later
// From a project's tree to a formula that the engine can solve, and back from variables to events.
#pragma once

#include "models/logic/formula.h"
#include "models/project/index.h"
#include "models/project/project.h"

#include <map>
#include <string>
#include <vector>

namespace cutwater::reliability {

struct TreeFormula {
    logic::Formula formula;
    logic::Literal top;
    std::vector<std::size_t> eventOfVariable; // position in project.events
    bool hasPriorityAnd =
        false; // treated as and: the order of its inputs is ignored (an upper bound)
};

// The formula below `node` (a gate or an event). House events become constants; `forced` overrides
// any event's state (assessments). Variables are numbered in the order of a depth-first walk, left
// to right. Precondition: validate() found no errors. No recursion.
TreeFormula toFormula(const project::Project& project, const project::Index& index,
                      const project::Id& node, const std::map<project::Id, bool>& forced = {});

} // namespace cutwater::reliability
