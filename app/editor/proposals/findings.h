// SPDX-License-Identifier: GPL-3.0-or-later
// What the worksheet, the plant and the trees say about each other: computed in the background.
#pragma once

#include "app/editor/answers/background.h"
#include "models/worksheet/cause_proposals.h"
#include "models/worksheet/coverage.h"
#include "models/worksheet/skeleton.h"
#include "models/worksheet/top_figures.h"

#include <map>
#include <memory>
#include <string>

namespace cutwater::editor {

// Of one snapshot of the project; positions are those of it.
struct Findings {
    Snapshot project;
    worksheet::CauseProposals causes;
    worksheet::Coverage coverage;
    std::map<std::size_t, worksheet::TopFigures> figures; // of tops that answer for an end effect
    std::string effect;                                   // that a tree is wished for; or empty
    std::shared_ptr<const worksheet::Skeleton> skeleton;  // of it; null where there is none
    QString wrong;                                        // why there is none
};

// `effect`: the end effect that a tree is wished for; may be empty.
Background::Task findingsTask(const std::string& effect);

} // namespace cutwater::editor
