// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/set_analysis.h"

#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/tree_notes.h"

#include <fmt/format.h>

namespace cutwater::sdk::tree {
namespace {

project::Problem cutOffNeedsNumbers(const Target& target, const std::string& lacking) {
    return {project::Severity::error,
            fmt::format("min-probability needs numbers, and under {} these events have none: {}",
                        target.id, lacking),
            "give them a failure model, or leave min-probability out", "top event " + target.id,
            target.line};
}

Note withoutNumbers(const Target& target, const std::string& lacking) {
    return {NoteKind::warning,
            fmt::format("{}: sets with events that have no number are shown without a probability, "
                        "and all sets by order. No number: {}.",
                        target.id, lacking)};
}

Note method(Side side) {
    if (side == Side::fails)
        return {
            NoteKind::method,
            "The counts are of all sets, read off the diagram without listing them. The sum of "
            "all sets is the rare-event approximation, which is too high where it is not small; "
            "the analysis `probability` gives the exact figure."};
    return {
        NoteKind::method,
        "Path sets are the minimal cut sets of the dual tree (and and or exchanged). They share "
        "events: their probabilities do not add up to anything."};
}

} // namespace

std::vector<Parameter> setAnalysisParameters(const project::Project* project) {
    std::vector<Parameter> parameters{topParameter(project)};
    for (Parameter& parameter : setParameters())
        parameters.push_back(std::move(parameter));
    parameters.push_back(missionParameter());
    parameters.push_back(commonCauseParameter());
    parameters.push_back(assessmentParameter(project));
    return parameters;
}

Answer<Result> runSetAnalysis(const project::Project& project, const Values& values, const Job& job,
                              Side side) {
    const project::Index index(project);
    const auto targets = targetsOf(project, index, values.text("top"));
    if (!targets) return Answer<Result>::failed(targets.problems());
    const auto circumstances = circumstancesOf(project, values);
    if (!circumstances) return Answer<Result>::failed(circumstances.problems());
    auto solved = solveAll(project, index, *targets, side, job, *circumstances);
    if (!solved.content) return {solved.ending, {}, std::move(solved.problems)};

    const SetWish asked = setWish(values, job, side);
    SetTables tables = emptySetTables(side);
    FigureBook book(project, index, values.number("mission"));
    for (const Solved& one : *solved.content) {
        const Figures figures = book.of(one);
        SetWish wish = asked;
        if (!figures.complete()) {
            const std::string lacking = idList(project, figures.lacking);
            if (wish.listing.minProbability > 0)
                return Answer<Result>::failed({cutOffNeedsNumbers(one.target, lacking)});
            // "Most probable first" would put the unknown ones first.
            wish.listing.sorting = logic::Sorting::byOrder;
            tables.notes.push_back(withoutNumbers(one.target, lacking));
        }
        const Interrupted stop = addSets(tables, project, index, one, figures, wish, job);
        if (stop.ending != Ending::finished)
            return Answer<Result>::stopped(stop.ending, stop.problem);
    }

    Result result;
    result.title = side == Side::fails ? "Minimal cut sets"
                                       : "Minimal path sets: what keeps the top event away";
    result.exactness = tables.allListed ? Exactness::exact : Exactness::bounded;
    result.tables = {std::move(tables.summary), std::move(tables.counts), std::move(tables.sets)};
    result.marks = std::move(tables.marks);
    result.notes = std::move(tables.notes);
    addAssessmentNotes(result, *circumstances);
    addTreeNotes(result.notes, *solved.content, side);
    result.notes.push_back(method(side));
    addFigureNotes(result.notes, project, book);
    addCautions(result.notes, circumstances->cautions(), project);
    return Answer<Result>::of(std::move(result));
}

} // namespace cutwater::sdk::tree
