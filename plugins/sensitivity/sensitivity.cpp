// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sensitivity/sensitivity.h"

#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/tree_notes.h"
#include "plugins/sensitivity/swing_table.h"

#include <fmt/format.h>

namespace cutwater::sensitivity_plugin {
namespace {

using reliability::Swings;
using sdk::ColumnType;
using sdk::NoteKind;
using sdk::tree::Solved;

sdk::Table pointTable() {
    return {"top-events",
            "Top events with every number at its point value",
            {{"top", "Top", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"probability", "Probability", ColumnType::probability, ""},
             {"numbers", "Numbers that move it", ColumnType::integer, ""}}};
}

sdk::Parameter factorParameter() {
    sdk::Parameter factor;
    factor.name = "factor";
    factor.type = sdk::ParameterType::number;
    factor.minimum = 1;
    factor.maximum = 1e6;
    factor.sentence = "numbers without a distribution are divided and multiplied by this; without "
                      "it they are left alone";
    return factor;
}

sdk::Parameter rowsParameter() {
    sdk::Parameter rows;
    rows.name = "rows";
    rows.type = sdk::ParameterType::integer;
    rows.minimum = 1;
    rows.maximum = 1e6;
    rows.standard = std::int64_t{20};
    rows.sentence = "numbers shown of each top event, the widest swing first";
    return rows;
}

void addNotes(sdk::Result& result, const Swings& swings, double factor) {
    result.notes.push_back(
        {NoteKind::method,
         "Each number in turn goes to the 5 % and the 95 % point of its distribution; all others "
         "stay at their point values. A number that several events share moves them together."});
    result.notes.push_back(
        {NoteKind::assumption,
         "One number at a time: what two of them do together, and a highest or lowest value "
         "between "
         "the two ends, is not seen. For all of them at once see the analysis uncertainty."});
    result.notes.push_back(
        {NoteKind::assumption,
         "A wide bar says: find out more about this number, or make the plant care less about it. "
         "A "
         "number that is known well can still matter: see the analysis importance."});
    std::vector<std::string> cut;
    for (const reliability::Swing& swing : swings.swings)
        if (swing.cut) cut.push_back(swings.knobs[swing.knob].id());
    if (!cut.empty())
        result.notes.push_back(
            {NoteKind::warning, fmt::format("{}: an end of the range is above 1 and was set to 1; "
                                            "the distribution does not fit a probability.",
                                            fmt::join(cut, ", "))});
    if (!swings.leftAlone.empty())
        result.notes.push_back(
            {NoteKind::warning,
             fmt::format("{} numbers have no distribution and were not moved: they look certain "
                         "here and are not. --factor moves them, too.",
                         swings.leftAlone.size())});
    if (factor > 1)
        result.notes.push_back(
            {NoteKind::assumption, fmt::format("Numbers without a distribution were divided and "
                                               "multiplied by {:g}.",
                                               factor)});
}

} // namespace

std::vector<sdk::Parameter> Sensitivity::parameters(const project::Project* project) const {
    return {sdk::tree::topParameter(project),
            sdk::tree::missionParameter(),
            factorParameter(),
            rowsParameter(),
            sdk::tree::commonCauseParameter(),
            sdk::tree::assessmentParameter(project)};
}

sdk::Answer<sdk::Result> Sensitivity::run(const project::Project& project,
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

    std::vector<reliability::SolvedTop> tops;
    for (const Solved& one : *solved.content)
        tops.push_back({one.solution, one.variables});
    reliability::SwingWish wish;
    wish.factor = values.number("factor").value_or(1);
    wish.stop = job.stop;
    if (job.progress)
        wish.progress = [&](double done) { job.progress(done, "turning one number at a time"); };
    const auto swings = reliability::swings(project, index, tops, values.number("mission"), wish);
    if (!swings) return Answer::failed(swings.problems());
    if (swings->stopped)
        return Answer::stopped(sdk::Ending::cancelled, sdk::tree::cancelledAt(targets->front()));

    sdk::Result result;
    result.title = "Sensitivity to single numbers";
    result.tables = {pointTable(), swingTable()};
    const auto rows = static_cast<std::size_t>(values.integer("rows").value_or(20));
    for (std::size_t top = 0; top < targets->size(); ++top) {
        const sdk::tree::Target& target = (*targets)[top];
        const std::size_t before = result.tables.back().rows.size();
        const std::size_t left = addSwings(result, project, target, top, *swings, rows);
        const std::size_t moved = result.tables.back().rows.size() - before + left;
        result.tables.front().rows.push_back(
            {target.id, target.name, swings->point[top], static_cast<std::int64_t>(moved)});
        if (left > 0)
            result.notes.push_back(
                {NoteKind::method,
                 fmt::format("{}: the {} numbers that move it least are not shown; --rows shows "
                             "more.",
                             target.id, left)});
    }
    addNotes(result, *swings, wish.factor);
    sdk::tree::FigureBook book(project, index, values.number("mission"));
    for (const Solved& one : *solved.content)
        book.of(one);
    sdk::tree::addAssessmentNotes(result, *circumstances);
    sdk::tree::addTreeNotes(result.notes, *solved.content, sdk::tree::Side::fails);
    sdk::tree::addFigureNotes(result.notes, project, book);
    sdk::tree::addCautions(result.notes, circumstances->cautions(), project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::sensitivity_plugin
