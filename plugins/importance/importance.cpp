// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/importance/importance.h"

#include "plugins/importance/event_rows.h"
#include "plugins/importance/group_rows.h"
#include "plugins/importance/notes.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/tree_notes.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::importance_plugin {
namespace {

using sdk::tree::Solved;

enum TableNumber : std::size_t { kEvents, kOther, kComponents, kGroups, kFrequency };

sdk::Parameter whole(const char* name, double minimum, std::int64_t standard,
                     const char* sentence) {
    sdk::Parameter parameter;
    parameter.name = name;
    parameter.type = sdk::ParameterType::integer;
    parameter.minimum = minimum;
    parameter.maximum = 1e7;
    parameter.standard = standard;
    parameter.sentence = sentence;
    return parameter;
}

sdk::Parameter sortParameter() {
    sdk::Parameter parameter;
    parameter.name = "sort";
    parameter.type = sdk::ParameterType::choice;
    parameter.choices = sortWords();
    parameter.standard = std::string("fussell-vesely");
    parameter.sentence = "the measure that events are sorted by, the largest first";
    return parameter;
}

struct Wish {
    std::optional<double> mission;
    std::string sort;
    std::size_t rows = 25;
};

struct Run {
    const project::Project& project;
    const project::Index& index;
    const Wish& wish;
    const sdk::Job& job;
    sdk::tree::FigureBook& book;
};

// The tables of one top. Problems; or false where it was stopped.
project::Outcome<bool> addTop(sdk::Result& result, const Run& run, const Solved& solved) {
    auto numbers = numbersOf(run.project, run.index, solved, run.book, run.wish.mission);
    if (!numbers) return numbers.problems();
    if (solved.solution.constant()) return true; // tree_notes says so
    reliability::ImportanceWish wish;
    wish.limits.stop = run.job.stop;
    wish.limits.memoryBytes = run.job.memoryBytes;
    const EventRows rows{run.project, run.index, solved, *numbers, run.wish.sort, run.wish.rows};
    std::vector<std::string> initiating;
    for (const std::size_t position : numbers->initiating)
        initiating.push_back(run.project.events[position].id);

    const auto events = reliability::importance(solved.solution, numbers->q, wish);
    if (!events) return false;
    std::size_t left = 0;
    if (solved.solution.probability(numbers->q).occurs > 0) {
        left += addEvents(result, kEvents, rows, *events);
        for (const auto& [table, groups] :
             {std::pair{kComponents, componentsOf(rows)}, {kGroups, commonCausesOf(rows)}}) {
            std::vector<reliability::EventGroup> variables;
            for (const Group& group : groups)
                variables.push_back(group.variables);
            const auto entries =
                reliability::groupImportance(solved.solution, numbers->q, variables, run.job.stop);
            if (!entries) return false;
            left += addGroups(result, table, rows, groups, *entries);
        }
    }
    auto frequencies = reliability::frequencyImportance(solved.solution, numbers->q,
                                                        numbers->frequency, run.job.stop);
    if (run.job.stop.stop_requested()) return false;
    if (frequencies)
        left += addFrequencies(result, kFrequency, rows, std::move(frequencies->events));
    addTopNotes(result, solved, *numbers, *events, initiating);
    if (left > 0)
        result.notes.push_back(
            {sdk::NoteKind::method, fmt::format("{}: the {} rows that weigh least are not shown; "
                                                "--rows shows more.",
                                                solved.target.id, left)});
    return true;
}

} // namespace

std::vector<sdk::Parameter> Importance::parameters(const project::Project* project) const {
    return {sdk::tree::topParameter(project),
            sdk::tree::missionParameter(),
            sortParameter(),
            whole("rows", 1, 25, "rows shown of each table and top event, the heaviest first"),
            sdk::tree::commonCauseParameter(),
            sdk::tree::assessmentParameter(project)};
}

sdk::Answer<sdk::Result> Importance::run(const project::Project& project, const sdk::Values& values,
                                         const sdk::Job& job) const {
    using Answer = sdk::Answer<sdk::Result>;
    const project::Index index(project);
    const auto targets = sdk::tree::targetsOf(project, index, values.text("top"));
    if (!targets) return Answer::failed(targets.problems());
    const auto circumstances = sdk::tree::circumstancesOf(project, values);
    if (!circumstances) return Answer::failed(circumstances.problems());
    auto solved =
        sdk::tree::solveAll(project, index, *targets, sdk::tree::Side::fails, job, *circumstances);
    if (!solved.content) return {solved.ending, {}, std::move(solved.problems)};

    const Wish wish{values.number("mission"), values.text("sort").value_or("fussell-vesely"),
                    static_cast<std::size_t>(values.integer("rows").value_or(25))};
    sdk::tree::FigureBook book(project, index, wish.mission);
    const Run run{project, index, wish, job, book};
    sdk::Result result;
    result.title = "Importance of events, components and groups";
    result.tables = {eventTable(), otherTable(), componentTable(),
                     commonCauseTable(circumstances->commonCauses), frequencyTable()};
    project::Problems problems;
    for (const Solved& one : *solved.content) {
        const auto outcome = addTop(result, run, one);
        if (outcome && !*outcome)
            return Answer::stopped(sdk::Ending::cancelled, sdk::tree::cancelledAt(one.target));
        if (outcome) continue;
        for (const project::Problem& problem : outcome.problems())
            if (std::find(problems.begin(), problems.end(), problem) == problems.end())
                problems.push_back(problem);
    }
    if (!problems.empty()) return Answer::failed(std::move(problems));

    const bool withFrequency = !result.tables[kFrequency].rows.empty();
    // An empty table says nothing, but that no group has two members here is worth knowing.
    if (!withFrequency) result.tables.erase(result.tables.begin() + kFrequency);
    addReadingNotes(result.notes, withFrequency);
    sdk::tree::addAssessmentNotes(result, *circumstances);
    sdk::tree::addTreeNotes(result.notes, *solved.content, sdk::tree::Side::fails);
    sdk::tree::addFigureNotes(result.notes, project, book);
    sdk::tree::addCautions(result.notes, circumstances->cautions(), project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::importance_plugin
