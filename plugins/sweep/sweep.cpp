// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sweep/sweep.h"

#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/tree_notes.h"
#include "plugins/sweep/sweep_tables.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace cutwater::sweep_plugin {
namespace {

using sdk::NoteKind;
using sdk::tree::Solved;

sdk::Parameter text(const char* name, const char* sentence) {
    sdk::Parameter parameter;
    parameter.name = name;
    parameter.sentence = sentence;
    return parameter;
}

sdk::Parameter choice(const char* name, std::vector<std::string> choices, const char* standard,
                      const char* sentence) {
    sdk::Parameter parameter = text(name, sentence);
    parameter.type = sdk::ParameterType::choice;
    parameter.choices = std::move(choices);
    parameter.standard = std::string(standard);
    return parameter;
}

sdk::Parameter number(const char* name, const char* unit, double minimum,
                      std::optional<double> standard, const char* sentence) {
    sdk::Parameter parameter = text(name, sentence);
    parameter.type = sdk::ParameterType::number;
    parameter.unit = unit;
    parameter.minimum = minimum;
    parameter.maximum = 1e9;
    if (standard) parameter.standard = *standard;
    return parameter;
}

sdk::Parameter stepsParameter() {
    sdk::Parameter steps = text("steps", "values that are tried, both ends included");
    steps.type = sdk::ParameterType::integer;
    steps.minimum = 2;
    steps.maximum = 10'000;
    steps.standard = std::int64_t{25};
    return steps;
}

Measure measureOf(const std::string& word) {
    const auto& words = measureWords();
    const auto found = std::find(words.begin(), words.end(), word);
    return static_cast<Measure>(found - words.begin());
}

// All numbers that these top events use.
std::vector<reliability::Knob> numbersOf(const project::Project& project,
                                         const project::Index& index,
                                         const std::vector<Solved>& all) {
    std::set<std::size_t> events, groups;
    for (const Solved& solved : all) {
        const auto own = solved.variables.eventsOf(solved.solution.relevantVariables());
        events.insert(own.begin(), own.end());
        groups.insert(solved.variables.groups().begin(), solved.variables.groups().end());
    }
    return reliability::knobsOf(project, index,
                                std::vector<std::size_t>(events.begin(), events.end()),
                                std::vector<std::size_t>(groups.begin(), groups.end()));
}

void addNotes(sdk::Result& result, const Varied& varied, Measure measure, double period) {
    result.notes.push_back(
        {NoteKind::method,
         fmt::format("{} is set to each value in turn, everything else stays as it is in the "
                     "project; the tree is solved once.",
                     varied.words())});
    if (measure == Measure::probability) {
        result.notes.push_back(
            {NoteKind::assumption,
             "The probability uses the mean of each tested part by itself. How tests of several "
             "parts fall together is seen by the measures mean and worst only."});
        return;
    }
    result.notes.push_back(
        {NoteKind::assumption,
         varied.isInterval()
             ? fmt::format("Followed from a start with everything working; the first test interval "
                           "is left out, and then whole ones are counted, at least {:.6g} h.",
                           period)
             : fmt::format("Followed over {:.6g} h from a start with everything working.",
                           period)});
    if (varied.isInterval())
        result.notes.push_back(
            {NoteKind::assumption,
             "What a test does to the part besides taking it out of service (wear, a valve left in "
             "the wrong position) is counted only where the tree has an event for it. Without "
             "that, "
             "and without a test duration, more tests always look better."});
}

} // namespace

std::vector<sdk::Parameter> Sweep::parameters(const project::Project* project) const {
    return {sdk::tree::topParameter(project),
            text("vary",
                 "the number that is varied: the id of a shared parameter, or OWNER@ROLE for a "
                 "number of a failure mode or event (level-probe.fouled@rate), or with "
                 "--common-cause GROUP@factor-1; several with commas are set to the same value"),
            text("from",
                 "the smallest value, in hours, per hour, or with a unit (\"1 wk\"); without it "
                 "a tenth of the present one"),
            text("to", "the largest value; without it ten times the present one"),
            stepsParameter(),
            choice("scale", {"auto", "equal", "ratio"}, "auto",
                   "steps of equal length or of equal ratio; auto: by how far the ends are apart"),
            choice("measure", measureWords(), "mean",
                   "what is looked at: probability at the mean of each event, mean or worst "
                   "unavailability over the period, or mean frequency"),
            number("period", "h", 1e-6, 8760.0, "period for mean, worst and frequency"),
            number("limit", "", 0, {}, "the figure must not be above this"),
            choice("prefer", {"largest", "smallest"}, "largest",
                   "which of the values within the limit is wanted"),
            sdk::tree::missionParameter(),
            sdk::tree::commonCauseParameter(),
            sdk::tree::assessmentParameter(project)};
}

sdk::Answer<sdk::Result> Sweep::run(const project::Project& project, const sdk::Values& values,
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

    const auto known = numbersOf(project, index, *solved.content);
    const auto varied = variedOf(project, known, values.text("vary"), values.text("from"),
                                 values.text("to"), values.text("scale").value_or("auto"));
    if (!varied) return Answer::failed(varied.problems());
    const Measure measure = measureOf(values.text("measure").value_or("mean"));
    const double period = values.number("period").value_or(8760);

    reliability::SweepWish wish;
    wish.from = varied->from;
    wish.to = varied->to;
    wish.steps = static_cast<std::size_t>(values.integer("steps").value_or(25));
    wish.logarithmic = varied->logarithmic;
    wish.limit = values.number("limit");
    wish.largest = values.text("prefer") != "smallest";

    sdk::Result result;
    result.title = fmt::format("Sweep of {}", varied->words());
    result.tables = {bestTable(*varied, measure), pointTable(*varied, measure)};
    reliability::WhatIf whatIf(project, values.number("mission"));
    double done = 0;
    for (const Solved& one : *solved.content) {
        Figure figure(one, *varied, whatIf, measure, period, job);
        done += 1;
        if (!figure.usesTheNumber()) continue;
        double steps = 0;
        const auto swept = reliability::sweep(wish, [&](double value) {
            const double expected = static_cast<double>(wish.steps) + 50; // with the closing in
            if (job.progress)
                job.progress(
                    (done - 1 + std::min(1.0, ++steps / expected)) /
                        static_cast<double>(solved.content->size()),
                    fmt::format("{}: {} at {:.4g}", one.target.id, varied->words(), value));
            return figure.at(value);
        });
        const auto now = swept ? figure.at(varied->point) : std::nullopt;
        if (!figure.problems().empty()) return Answer::failed(figure.problems());
        if (!swept || !now)
            return Answer::stopped(sdk::Ending::cancelled, sdk::tree::cancelledAt(one.target));
        addSwept(result, {one.target, *varied, measure, *swept, *now, wish.limit, wish.largest});
        if (!figure.exactFrequency() && measure == Measure::frequency)
            result.exactness = sdk::Exactness::bounded;
    }
    addNotes(result, *varied, measure, period);
    sdk::tree::FigureBook figures(project, index, values.number("mission"));
    sdk::tree::addAssessmentNotes(result, *circumstances);
    sdk::tree::addTreeNotes(result.notes, *solved.content, sdk::tree::Side::fails);
    if (measure == Measure::probability) {
        for (const Solved& one : *solved.content)
            figures.of(one);
        sdk::tree::addFigureNotes(result.notes, project, figures);
    } else {
        reliability::ProfileWish profiles;
        profiles.mission = values.number("mission");
        sdk::tree::CourseBook book(project, index, profiles);
        for (const Solved& one : *solved.content)
            (void)book.of(one); // for its notes; problems would have stopped the sweep
        book.addNotes(result.notes);
    }
    sdk::tree::addCautions(result.notes, circumstances->cautions(), project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::sweep_plugin
