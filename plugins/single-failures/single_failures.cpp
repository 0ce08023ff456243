// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/single-failures/single_failures.h"

#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/figures.h"
#include "plugins/sdk/tree/tree_notes.h"
#include "plugins/single-failures/failure_rows.h"

#include <fmt/format.h>

namespace cutwater::single_failures {

using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;

namespace {

sdk::Table summaryTable() {
    return {"summary",
            "Single failures of each top event",
            {{"top", "Top", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"seen", "Show at once", ColumnType::integer, ""},
             {"dormant", "Nobody sees", ColumnType::integer, ""}}};
}

// Puts the single failures of one top into the tables; false where it was asked to stop.
bool addTop(sdk::Result& result, const project::Project& project, const project::Index& index,
            const sdk::tree::Solved& solved, const sdk::tree::Figures& figures,
            const sdk::Job& job) {
    logic::ListingWish wish;
    wish.maxOrder = 1;
    wish.memoryBytes = job.memoryBytes;
    logic::Listing listing = solved.solution.list(figures.q, wish);
    std::int64_t seen = 0, dormant = 0;
    while (const auto set = listing.next()) {
        if (job.stop.stop_requested()) return false;
        if (set->literals.size() != 1) continue; // always happens: tree_notes says so
        const logic::SetLiteral literal = set->literals.front();
        const project::Event& event =
            project.events[solved.variables.events(literal.variable).front()];
        const Cell probability =
            sdk::tree::numberCell(figures.known[literal.variable], set->probability);
        const bool hidden = isDormant(index, event);
        sdk::Table& table = result.tables[hidden ? 2 : 1];
        table.rows.push_back((hidden ? dormantRow : seenRow)(index, solved.target.id, event,
                                                             literal.negated, probability));
        result.marks.push_back({table.id, table.rows.size() - 1, {event.id}});
        ++(hidden ? dormant : seen);
    }
    if (listing.outOfMemory()) {
        result.exactness = sdk::Exactness::bounded;
        result.notes.push_back(
            {NoteKind::warning, fmt::format("{}: the list ended early because the memory was used "
                                            "up.",
                                            solved.target.id)});
    }
    result.tables[0].rows.push_back({solved.target.id, solved.target.name, seen, dormant});
    return true;
}

} // namespace

std::vector<sdk::Parameter> SingleFailures::parameters(const project::Project* project) const {
    return {sdk::tree::topParameter(project), sdk::tree::missionParameter(),
            sdk::tree::assessmentParameter(project)};
}

sdk::Answer<sdk::Result> SingleFailures::run(const project::Project& project,
                                             const sdk::Values& values, const sdk::Job& job) const {
    using Answer = sdk::Answer<sdk::Result>;
    const project::Index index(project);
    const auto targets = sdk::tree::targetsOf(project, index, values.text("top"));
    if (!targets) return Answer::failed(targets.problems());
    const auto circumstances = sdk::tree::circumstancesOf(project, values);
    if (!circumstances) return Answer::failed(circumstances.problems());
    auto solved =
        sdk::tree::solveAll(project, index, *targets, sdk::tree::Side::fails, job, *circumstances);
    if (!solved.content) return {solved.ending, {}, std::move(solved.problems)};

    sdk::Result result;
    result.title = "Single failures: each one alone brings the top event about";
    result.tables = {summaryTable(), seenTable(), dormantTable()};
    result.tables[2].remark =
        "A dormant failure may be there already. Only a test or a demand shows "
        "it.";
    sdk::tree::FigureBook book(project, index, values.number("mission"));
    for (const sdk::tree::Solved& one : *solved.content)
        if (!addTop(result, project, index, one, book.of(one), job))
            return Answer::stopped(sdk::Ending::cancelled, sdk::tree::cancelledAt(one.target));

    sdk::tree::addAssessmentNotes(result, *circumstances);
    sdk::tree::addTreeNotes(result.notes, *solved.content, sdk::tree::Side::fails);
    result.notes.push_back(
        {NoteKind::method,
         "Single failures are the minimal cut sets of order 1. A part that is missing in the tree "
         "is missing here, too. One cause that takes several parts is not among them: see the "
         "analysis common-cause."});
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::machine, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::single_failures
