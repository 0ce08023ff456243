// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/uncertainty/uncertainty.h"

#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/tree_notes.h"
#include "plugins/uncertainty/answer.h"

#include <fmt/format.h>

#include <set>

namespace cutwater::uncertainty_plugin {
namespace {

using sdk::Ending;
using sdk::tree::Solved;
using Answer = sdk::Answer<sdk::Result>;

} // namespace

std::vector<sdk::Parameter> Uncertainty::parameters(const project::Project* project) const {
    std::vector<sdk::Parameter> all{sdk::tree::topParameter(project),
                                    sdk::tree::missionParameter()};
    for (sdk::Parameter& parameter : wishParameters())
        all.push_back(std::move(parameter));
    all.push_back(sdk::tree::commonCauseParameter());
    all.push_back(sdk::tree::assessmentParameter(project));
    return all;
}

Answer Uncertainty::run(const project::Project& project, const sdk::Values& values,
                        const sdk::Job& job) const {
    const project::Index index(project);
    const auto targets = sdk::tree::targetsOf(project, index, values.text("top"));
    if (!targets) return Answer::failed(targets.problems());
    sdk::Job solving = job; // its share of the progress is small
    solving.progress = nullptr;
    const auto circumstances = sdk::tree::circumstancesOf(project, values);
    if (!circumstances) return Answer::failed(circumstances.problems());
    auto solved = sdk::tree::solveAll(project, index, *targets, sdk::tree::Side::fails, solving,
                                      *circumstances);
    if (!solved.content) return {solved.ending, {}, std::move(solved.problems)};
    Wish wish = wishOf(values);
    const auto mission = values.number("mission");

    reliability::UncertainTops tops(project, index, mission);
    sdk::tree::FigureBook book(project, index, mission);
    std::vector<TopAnswer> answers;
    std::set<std::string> seen; // the same event lacks its number in several tops
    project::Problems problems;
    sdk::Result result;
    for (const Solved& one : *solved.content) {
        answers.push_back({one.target, one.solution.probability(book.of(one).q).occurs, {}});
        for (const project::Problem& problem : tops.add(one.solution, one.variables))
            if (seen.insert(problem.what).second) problems.push_back(problem);
        if (one.tree.hasPriorityAnd) result.exactness = sdk::Exactness::bounded;
    }
    if (!problems.empty()) return Answer::failed(std::move(problems));

    wish.drawing.stop = job.stop;
    if (job.progress)
        wish.drawing.progress = [&job](double share) { job.progress(share, "drawing samples"); };
    const auto samples = tops.draw(wish.drawing);
    if (!samples)
        return Answer::stopped(Ending::cancelled, sdk::tree::cancelledAt(targets->front()));

    for (std::size_t t = 0; t < answers.size(); ++t) {
        answers[t].summary = reliability::summarise(samples->ofTop[t], wish.drawing.drawing);
        addCurves(result.series, answers[t].target, samples->ofTop[t], wish.drawing.drawing);
    }
    result.title = "How well the top events are known";
    result.exactness = sdk::Exactness::bounded;
    result.tables = {topTable(answers), confidenceTable(answers),
                     runTable(wish, tops.inputs().inputs().size()),
                     inputTable(project, tops.inputs(), *samples, wish.drawing.samples)};
    addNotes(result.notes, answers, tops.inputs(), *samples, wish);
    sdk::tree::addAssessmentNotes(result, *circumstances);
    sdk::tree::addTreeNotes(result.notes, *solved.content, sdk::tree::Side::fails);
    sdk::tree::addFigureNotes(result.notes, project, book);
    sdk::tree::addCautions(result.notes, circumstances->cautions(), project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::uncertainty_plugin
