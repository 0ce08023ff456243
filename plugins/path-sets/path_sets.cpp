// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/path-sets/path_sets.h"

#include "plugins/sdk/tree/set_analysis.h"

namespace cutwater::path_sets {

std::vector<sdk::Parameter> PathSets::parameters(const project::Project* project) const {
    return sdk::tree::setAnalysisParameters(project);
}

sdk::Answer<sdk::Result> PathSets::run(const project::Project& project, const sdk::Values& values,
                                       const sdk::Job& job) const {
    return sdk::tree::runSetAnalysis(project, values, job, sdk::tree::Side::works);
}

} // namespace cutwater::path_sets
