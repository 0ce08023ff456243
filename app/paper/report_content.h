// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into a report: the results of analyses, and the drawn trees. Any thread.
#pragma once

#include "app/drawing/diagram.h"
#include "plugins/sdk/host.h"

#include <optional>
#include <string>
#include <vector>

namespace cutwater::paper {

// What stands in every report where nothing else is asked for: ids of analyses.
const std::vector<std::string>& standardAnalyses();

// The values that such an analysis gets where nobody chose any: common causes are counted where the
// project has groups, and lists are kept to what somebody reads.
sdk::Values standardValues(const std::vector<sdk::Parameter>& parameters,
                           const project::Project& project);

// Name and value as they are shown, of those that are given.
std::vector<std::pair<std::string, std::string>>
shownValues(const std::vector<sdk::Parameter>& parameters, const sdk::Values& values);

// "Minimal cut sets, version 0.1.0 (cut-sets)"
std::string methodOf(const sdk::PluginFacts& facts);

// Runs an analysis for the report. `given` may be incomplete.
sdk::Answer<sdk::ReportPart> computePart(const sdk::Analysis& analysis,
                                         const sdk::PluginFacts& facts,
                                         const project::Project& project, const sdk::Values& given,
                                         const sdk::Job& job);

// All sheets of all top events, A4, with the events' probabilities under them. Ends like
// drawing::draw(); no font is a failure.
sdk::Answer<std::vector<sdk::ReportDrawing>>
drawTrees(const project::Project& project, const sdk::Layout& layout, const sdk::Job& job);

} // namespace cutwater::paper
