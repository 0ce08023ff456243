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

// The top's formula with its common causes, solved; content only where it went well.
sdk::Answer<logic::Solution> solveExpanded(const reliability::CommonCauseFormula& expanded,
                                           const Solved& solved, const sdk::Job& job) {
    logic::Limits limits;
    limits.stop = job.stop;
    limits.memoryBytes = job.memoryBytes;
    auto outcome = logic::solve(expanded.formula, expanded.top, limits);
    if (outcome.stop == logic::Stop::cancelled)
        return sdk::Answer<logic::Solution>::stopped(Ending::cancelled,
                                                     sdk::tree::cancelledAt(solved.target));
    if (!outcome.solution)
        return sdk::Answer<logic::Solution>::stopped(
            Ending::overLimit, sdk::tree::overMemoryAt(solved.target, job.memoryBytes));
    return sdk::Answer<logic::Solution>::of(std::move(*outcome.solution));
}

// Probability with all numbers at their point values.
double pointValue(const project::Project& project, const project::Index& index,
                  const logic::Solution& solution, const reliability::TreeFormula& tree,
                  const std::optional<reliability::CommonCauseFormula>& expanded,
                  std::optional<double> mission, reliability::UnequalRule rule) {
    std::vector<double> ofEvent(project.events.size(), 0.0);
    const auto look = [&](std::size_t event) {
        const auto found =
            reliability::probabilityOf(project, index, project.events[event], mission);
        if (found) ofEvent[event] = found->value;
    };
    std::vector<double> q;
    if (!expanded) {
        for (const std::uint32_t variable : solution.relevantVariables())
            look(tree.eventOfVariable[variable]);
        for (const std::size_t event : tree.eventOfVariable)
            q.push_back(ofEvent[event]);
        return solution.probability(q).occurs;
    }
    const reliability::CauseProbabilities weigh(project, *expanded, rule);
    for (const std::size_t event : weigh.events())
        look(event);
    std::vector<std::vector<double>> shares;
    for (const std::size_t position : expanded->groups) {
        const auto& group = project.commonCauses[position];
        shares.push_back(reliability::commonCauseShares(
            group.kind, reliability::factorsOf(index, group), group.members.size()));
    }
    q.resize(expanded->causes.size());
    weigh.fill(shares, ofEvent, q);
    return solution.probability(q).occurs;
}

} // namespace

std::vector<sdk::Parameter> Uncertainty::parameters(const project::Project* project) const {
    std::vector<sdk::Parameter> all{sdk::tree::topParameter(project),
                                    sdk::tree::missionParameter()};
    for (sdk::Parameter& parameter : wishParameters())
        all.push_back(std::move(parameter));
    return all;
}

Answer Uncertainty::run(const project::Project& project, const sdk::Values& values,
                        const sdk::Job& job) const {
    const project::Index index(project);
    const auto targets = sdk::tree::targetsOf(project, index, values.text("top"));
    if (!targets) return Answer::failed(targets.problems());
    sdk::Job solving = job; // its share of the progress is small
    solving.progress = nullptr;
    auto solved = sdk::tree::solveAll(project, index, *targets, sdk::tree::Side::fails, solving);
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
        book.of(one);
        std::optional<reliability::CommonCauseFormula> expanded;
        logic::Solution solution = one.solution;
        if (wish.commonCauses) {
            auto made = reliability::withCommonCauses(project, index, one.tree);
            if (!made) return Answer::failed(made.problems());
            if (!made->groups.empty()) {
                auto again = solveExpanded(*made, one, job);
                if (!again.content) return {again.ending, {}, std::move(again.problems)};
                solution = std::move(*again.content);
                expanded = std::move(*made);
            }
        }
        answers.push_back(
            {one.target,
             pointValue(project, index, solution, one.tree, expanded, mission, wish.drawing.rule),
             {}});
        for (const project::Problem& problem :
             expanded ? tops.add(solution, std::move(*expanded)) : tops.add(solution, one.tree))
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
    sdk::tree::addTreeNotes(result.notes, *solved.content, sdk::tree::Side::fails);
    if (wish.commonCauses) {
        book.addAssumptions(result.notes);
        book.addWarnings(result.notes);
        for (const std::string& own : project.assumptions)
            result.notes.push_back({sdk::NoteKind::assumption, own});
    } else {
        sdk::tree::addFigureNotes(result.notes, project, book);
    }
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::figures, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::uncertainty_plugin
