// SPDX-License-Identifier: GPL-3.0-or-later
// What an analysis of a tree may be told beside the tree: to count common causes, and to take the
// plant as it is under an assessment (a bridge, a unit out of service) instead of its normal state.
#pragma once

#include "plugins/sdk/interfaces.h"
#include "plugins/sdk/tree/cautions.h"

#include <map>
#include <string>
#include <vector>

namespace cutwater::sdk::tree {

struct Circumstances {
    bool commonCauses = false;
    const project::Assessment* assessment = nullptr; // null: the normal state
    std::map<project::Id, bool> forced;              // its events: certain or impossible

    // Under an assessment somebody works on the machine: all cautions.
    CautionScope cautions() const {
        return assessment ? CautionScope::machine : CautionScope::figures;
    }
};

// "common-cause" and "assessment"; the second offers the project's assessments where one is given.
Parameter commonCauseParameter();
Parameter assessmentParameter(const project::Project* project);

// Problems: no such assessment. Holds a pointer into the project.
project::Outcome<Circumstances> circumstancesOf(const project::Project& project,
                                                const Values& values);

// Loud where the plant is not in its normal state: what was forced, for how long, under which
// measures, and that the tool does not decide. Adds to the title, too.
void addAssessmentNotes(Result& result, const Circumstances& circumstances);

} // namespace cutwater::sdk::tree
