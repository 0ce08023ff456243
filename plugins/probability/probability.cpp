// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/probability/probability.h"

#include "models/logic/bounded.h"
#include "plugins/probability/compared.h"
#include "plugins/probability/event_table.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/how_bounded.h"
#include "plugins/sdk/tree/tree_notes.h"

#include <fmt/format.h>

#include <set>

namespace cutwater::probability_plugin {
namespace {

using sdk::ColumnType;
using sdk::NoteKind;
using sdk::tree::Figures;
using sdk::tree::Solved;

constexpr double kNotRare = 0.1; // above it the rare-event sum is visibly too high

// What the figure in the column "probability" is.
const char* kindOf(const Solved& solved) {
    if (!solved.tree.hasPriorityAnd) return "exact";
    return solved.solution.coherent() ? "upper bound: order ignored" : "estimate: order ignored";
}

sdk::Table topTable() {
    return {"top-events",
            "Top events",
            {{"top", "Top", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"probability", "Probability", ColumnType::probability, ""},
             {"kind", "What it is", ColumnType::text, ""},
             {"rare-event-sum", "Rare-event sum", ColumnType::probability, ""},
             {"min-cut-upper-bound", "Min-cut upper bound", ColumnType::probability, ""},
             {"occurs-not", "Does not happen", ColumnType::probability, ""},
             {"sets", "Sets", ColumnType::integer, ""}}};
}

void addTop(sdk::Result& result, const Solved& solved, const Figures& figures) {
    const logic::Solution& solution = solved.solution;
    const logic::ProbabilityPair exact = solution.probability(figures.q);
    const double sum = solution.rareEventSum(figures.q);
    result.tables[0].rows.push_back({solved.target.id, solved.target.name, exact.occurs,
                                     std::string(kindOf(solved)), sum,
                                     solution.minCutUpperBound(figures.q), exact.occursNot,
                                     sdk::tree::countCell(solution.setCount())});
    const std::string& id = solved.target.id;
    if (sum > kNotRare && !solution.constant())
        result.notes.push_back(
            {NoteKind::warning,
             fmt::format("{}: the rare-event sum of {:.3g} is above {}, so it is no good "
                         "approximation here.",
                         id, sum, kNotRare)});
    if (!solution.coherent())
        result.notes.push_back(
            {NoteKind::warning, fmt::format("{} is not coherent: its rare-event sum and min-cut "
                                            "bound are no bounds; only the first figure counts.",
                                            id)});
    if (solved.tree.hasPriorityAnd) result.exactness = sdk::Exactness::bounded;
}

// A tree too large to be solved exactly: an interval that is proven to hold the figure.
sdk::Answer<bool> addBounded(sdk::Result& result, const sdk::tree::Target& target,
                             const sdk::tree::Unsolved& tree, const Figures& figures,
                             const sdk::Job& job) {
    using Answer = sdk::Answer<bool>;
    logic::Limits limits;
    limits.stop = job.stop;
    limits.memoryBytes = job.memoryBytes;
    const logic::BoundsOutcome outcome =
        logic::boundTop(tree.formula(), tree.top(), figures.q, limits);
    if (outcome.stop == logic::Stop::cancelled)
        return Answer::stopped(sdk::Ending::cancelled, sdk::tree::cancelledAt(target));
    if (!outcome.bounds)
        return Answer::stopped(sdk::Ending::overLimit,
                               sdk::tree::overMemoryAt(target, job.memoryBytes));
    const logic::Bounds& bounds = *outcome.bounds;
    result.exactness = sdk::Exactness::bounded;
    result.tables[0].rows.push_back(
        {target.id, target.name, bounds.upper,
         fmt::format("upper bound: between {:.4g} and {:.4g}", bounds.lower, bounds.upper),
         sdk::Cell(), sdk::Cell(), 1 - bounds.upper, sdk::Cell()});
    result.notes.push_back(
        {NoteKind::warning,
         fmt::format("{} is too large to be solved exactly within {} MB. Its probability lies "
                     "between {:.6g} and {:.6g}: {}.",
                     target.id, job.memoryBytes >> 20, bounds.lower, bounds.upper,
                     sdk::tree::howBounded(bounds))});
    return Answer::of(true);
}

// One problem for each event without a number, the reason first.
project::Problems unquantified(const project::Project& project, const sdk::tree::FigureBook& book,
                               const std::set<std::size_t>& lacking) {
    project::Problems problems;
    for (const std::size_t position : lacking) {
        const project::Problems& reasons = book.problemsOf(position);
        if (!reasons.empty()) {
            for (project::Problem problem : reasons) {
                if (problem.what.find(project.events[position].id) == std::string::npos)
                    problem.what =
                        fmt::format("event {}: {}", project.events[position].id, problem.what);
                problems.push_back(std::move(problem));
            }
            continue;
        }
        problems.push_back({project::Severity::error,
                            fmt::format("event {} has no number", project.events[position].id),
                            "give it a failure model", "event " + project.events[position].id,
                            project.events[position].line.number});
    }
    return problems;
}

} // namespace

std::vector<sdk::Parameter> ProbabilityOfTops::parameters(const project::Project* project) const {
    return {sdk::tree::topParameter(project), sdk::tree::missionParameter(),
            sdk::tree::commonCauseParameter(), sdk::tree::assessmentParameter(project)};
}

sdk::Answer<sdk::Result> ProbabilityOfTops::run(const project::Project& project,
                                                const sdk::Values& values,
                                                const sdk::Job& job) const {
    using Answer = sdk::Answer<sdk::Result>;
    const project::Index index(project);
    const auto targets = sdk::tree::targetsOf(project, index, values.text("top"));
    if (!targets) return Answer::failed(targets.problems());
    const auto circumstances = sdk::tree::circumstancesOf(project, values);
    if (!circumstances) return Answer::failed(circumstances.problems());
    sdk::Result result;
    result.title = "Probability of the top events";
    result.tables = {topTable()};
    sdk::tree::FigureBook book(project, index, values.number("mission"));
    std::set<std::size_t> lacking;
    std::vector<Solved> all;
    for (const sdk::tree::Target& target : *targets) {
        auto solved = sdk::tree::solveAll(project, index, {target}, sdk::tree::Side::fails, job,
                                          *circumstances);
        if (solved.content) {
            const Figures figures = book.of(solved.content->front());
            lacking.insert(figures.lacking.begin(), figures.lacking.end());
            if (lacking.empty()) addTop(result, solved.content->front(), figures);
            all.push_back(std::move(solved.content->front()));
            continue;
        }
        if (solved.ending != sdk::Ending::overLimit)
            return {solved.ending, {}, std::move(solved.problems)};
        const auto unsolved = sdk::tree::formulaOf(project, index, target, *circumstances);
        if (!unsolved) return Answer::failed(unsolved.problems());
        const Figures figures = book.of(unsolved->variables);
        lacking.insert(figures.lacking.begin(), figures.lacking.end());
        if (!lacking.empty()) continue;
        auto bounded = addBounded(result, target, *unsolved, figures, job);
        if (!bounded.content) return {bounded.ending, {}, std::move(bounded.problems)};
    }
    if (!lacking.empty()) return Answer::failed(unquantified(project, book, lacking));

    if (circumstances->assessment) {
        auto compared = addCompared(result, project, index, book, all, *circumstances, job);
        if (!compared.content) return {compared.ending, {}, std::move(compared.problems)};
    }
    result.tables.push_back(eventTable(project, index, book));
    sdk::tree::addAssessmentNotes(result, *circumstances);
    sdk::tree::addTreeNotes(result.notes, all, sdk::tree::Side::fails);
    result.notes.push_back(
        {NoteKind::method,
         "\"Exact\" means: for these event probabilities and this tree, up to the rounding of the "
         "computer. The rare-event sum adds up all sets; the min-cut upper bound (Esary and "
         "Proschan 1963) is 1 minus the product of (1 - set)."});
    result.notes.push_back({NoteKind::assumption,
                            "The figure is the chance that the top event is there at a moment "
                            "picked at random, or by the end of the mission where the models have "
                            "a mission time."});
    sdk::tree::addFigureNotes(result.notes, project, book);
    sdk::tree::addCautions(result.notes, circumstances->cautions(), project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::probability_plugin
