// SPDX-License-Identifier: GPL-3.0-or-later
// One single failure as a row: from the event to its failure mode, its component and its place.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"
#include "plugins/sdk/result.h"

#include <string>
#include <vector>

namespace cutwater::single_failures {

// "Boiler 1 > burner > igniter": the breakdown from the top down, the component itself last.
std::string placeOf(const project::Index& index, const project::Component& component);
// "draw the burner, look (35 min): carbon across the gap tells fouled; ...".
std::string checksOf(const project::FailureMode& mode);
// Minutes of all its checks together; empty where none is stated.
sdk::Cell minutesOf(const project::FailureMode& mode);
// Nobody sees it until a test or a demand: said so, or found by tests only.
bool isDormant(const project::Index& index, const project::Event& event);

// Tables without rows, and a row for each; `negated`: the event must *not* occur.
sdk::Table seenTable();
sdk::Table dormantTable();
std::vector<sdk::Cell> seenRow(const project::Index& index, const std::string& top,
                               const project::Event& event, bool negated, sdk::Cell probability);
std::vector<sdk::Cell> dormantRow(const project::Index& index, const std::string& top,
                                  const project::Event& event, bool negated, sdk::Cell probability);

} // namespace cutwater::single_failures
