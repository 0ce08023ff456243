// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the risk matrix, as a task for the background.
#pragma once

#include "app/editor/answers/background.h"
#include "models/worksheet/risk_placement.h"

namespace cutwater::editor {

// Of one snapshot of the project; positions in the items are those of it.
struct RiskAnswer {
    Snapshot project;
    worksheet::RiskPicture picture;
};

// Makes a RiskAnswer; with the common-cause groups counted, or events taken as independent.
Background::Task riskTask(bool commonCauses);

} // namespace cutwater::editor
