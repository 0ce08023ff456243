// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/safety-function/safety_function.h"

#include "plugins/safety-function/answer.h"
#include "plugins/sdk/tree/cautions.h"

namespace cutwater::safety_function_plugin {

std::vector<sdk::Parameter> SafetyFunction::parameters(const project::Project* project) const {
    return requestParameters(project);
}

sdk::Answer<sdk::Result> SafetyFunction::run(const project::Project& project,
                                             const sdk::Values& values, const sdk::Job& job) const {
    using Answer = sdk::Answer<sdk::Result>;
    auto request = requestOf(values);
    if (!request) return Answer::failed(request.problems());
    const auto circumstances = sdk::tree::circumstancesOf(project, values);
    if (!circumstances) return Answer::failed(circumstances.problems());
    const project::Index index(project);
    std::optional<TreeFigures> tree;
    if (request->top) {
        auto found = figuresFromTree(project, index, *request->top, request->interval,
                                     request->mission, job, *circumstances);
        if (!found.content) return {found.ending, {}, std::move(found.problems)};
        tree = std::move(*found.content);
        // Without an interval of its own the formulas get the tree's, so that both answer one
        // question.
        if (!request->interval) request->channel.interval = tree->period;
    }

    sdk::Result result;
    result.title = "Check of a safety function";
    result.tables = {figureTable()};
    if (tree) addTree(result, project, *request, *tree);
    if (request->voting) addFormulas(result, *request);
    result.tables.push_back(bandTable());
    if (tree) sdk::tree::addAssessmentNotes(result, *circumstances);
    addScope(result.notes);
    for (const std::string& own : project.assumptions)
        result.notes.push_back({sdk::NoteKind::assumption, own});
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::machine, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::safety_function_plugin
