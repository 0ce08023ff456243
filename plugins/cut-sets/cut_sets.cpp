// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/cut-sets/cut_sets.h"

#include "plugins/sdk/tree/set_analysis.h"

namespace cutwater::cut_sets {

std::vector<sdk::Parameter> CutSets::parameters(const project::Project* project) const {
    return sdk::tree::setAnalysisParameters(project);
}

sdk::Answer<sdk::Result> CutSets::run(const project::Project& project, const sdk::Values& values,
                                      const sdk::Job& job) const {
    return sdk::tree::runSetAnalysis(project, values, job, sdk::tree::Side::fails);
}

} // namespace cutwater::cut_sets
