// SPDX-License-Identifier: GPL-3.0-or-later
// The analysis that finds minimal sets, for either side of a tree.
#pragma once

#include "plugins/sdk/tree/set_table.h"

namespace cutwater::sdk::tree {

std::vector<Parameter> setAnalysisParameters(const project::Project* project);
Answer<Result> runSetAnalysis(const project::Project& project, const Values& values, const Job& job,
                              Side side);

} // namespace cutwater::sdk::tree
