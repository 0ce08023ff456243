// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/over-time/over_time.h"

#include "plugins/over-time/period_tables.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/tree_notes.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::over_time {
namespace {

using reliability::PeriodFigures;
using reliability::TopCourse;
using sdk::NoteKind;
using sdk::tree::Solved;

constexpr double kOften = 0.1;          // above it the bounds of "at least once" are far apart
constexpr double kIntegralError = 1e-6; // worse is worth a warning

sdk::Parameter periodParameter() {
    sdk::Parameter period;
    period.name = "period";
    period.type = sdk::ParameterType::number;
    period.unit = "h";
    period.minimum = 1e-6;
    period.maximum = 1e9;
    period.standard = 8760.0;
    period.sentence = "how long the top events are followed, from hour 0";
    return period;
}

sdk::Parameter startParameter() {
    sdk::Parameter start;
    start.name = "start";
    start.type = sdk::ParameterType::choice;
    start.choices = {"new", "steady"};
    start.standard = std::string("new");
    start.sentence =
        "new: everything works at hour 0; steady: parts that are repaired at once begin "
        "in their long-run state";
    return start;
}

sdk::Parameter clockParameter() {
    sdk::Parameter clock;
    clock.name = "clock";
    clock.type = sdk::ParameterType::choice;
    clock.choices = {"own", "calendar"};
    clock.standard = std::string("own");
    clock.sentence = "own: every hour of the period is an hour of each event's clock; calendar: "
                     "firing hours and starts are spread over the calendar by the project's "
                     "exposures";
    return clock;
}

sdk::Parameter rowsParameter() {
    sdk::Parameter rows;
    rows.name = "rows";
    rows.type = sdk::ParameterType::integer;
    rows.minimum = 1;
    rows.maximum = 1e6;
    rows.standard = std::int64_t{10};
    rows.sentence = "events shown of each top event, the heaviest first";
    return rows;
}

void addTopNotes(sdk::Result& result, const Solved& solved, const PeriodFigures& figures,
                 bool exactHappens) {
    const std::string& id = solved.target.id;
    const auto warn = [&](std::string sentence) {
        result.notes.push_back({NoteKind::warning, std::move(sentence)});
    };
    if (!figures.exactNumber) {
        result.exactness = sdk::Exactness::bounded;
        warn(fmt::format("{} is not coherent, and too many of its events both help and hinder it: "
                         "its frequency and expected number are lower bounds, and \"at most\" is "
                         "no bound.",
                         id));
    }
    if (figures.expectedAtJumps > 0)
        result.notes.push_back(
            {NoteKind::method,
             fmt::format("{} is not coherent: {:.4g} of its expected number are brought about by "
                         "tests and new missions that take away what hinders it. They stand in no "
                         "frequency curve and in no event's share.",
                         id, figures.expectedAtJumps)});
    if (solved.tree.hasPriorityAnd) result.exactness = sdk::Exactness::bounded;
    if (!exactHappens && figures.unreliabilityHigh > kOften)
        warn(fmt::format(
            "{}: it is likely to happen more than once or to be there already, so the "
            "bounds of \"at least once\" ({:.2g} to {:.2g}) are far apart; the expected "
            "number and the mean unavailability are not touched by this.",
            id, figures.unreliabilityLow, figures.unreliabilityHigh));
    if (figures.integrationError > kIntegralError)
        warn(fmt::format("{}: the integrals over the period are good to about {:.1g} only.", id,
                         figures.integrationError));
}

void addMethodNotes(std::vector<sdk::Note>& notes) {
    const auto method = [&notes](const char* sentence) {
        notes.push_back({NoteKind::method, sentence});
    };
    method(
        "Unavailability: exact from the diagrams at every moment that is looked at; its mean is "
        "integrated (15-point Gauss-Kronrod) from one test, repair stage or mission to the next, "
        "so that no jump falls inside a step.");
    method(
        "Frequency: the sum over the events of the Birnbaum factor times how often the event "
        "comes (Vesely 1970). Where an event hinders the top its going counts, by the chance that "
        "the top is away with it and there without. The expected number is the integral over "
        "the period.");
    method(
        "\"At least once\": at least the highest unavailability; at most the unavailability at the "
        "start plus the expected number. The figure between them, 1 minus exp(minus the integral "
        "of frequency / (1 - unavailability)), is an estimate and no bound.");
}

struct Run {
    const project::Project& project;
    const project::Index& index;
    const sdk::Job& job;
    double period = 8760;
    std::size_t rows = 10;
};

// Walks one top through the period; false where it was stopped.
bool addTop(sdk::Result& result, const Run& run, const Solved& solved, const TopCourse& course,
            double doneBefore, double share) {
    reliability::PeriodWish wish;
    wish.end = run.period;
    wish.stop = run.job.stop;
    if (run.job.progress)
        wish.progress = [&](double done) {
            run.job.progress(doneBefore + share * done, "following " + solved.target.id);
        };
    const auto figures = reliability::overPeriod(course, wish);
    if (!figures) return false;
    const Walked walked{solved, course, *figures};
    addFigures(result.tables[0], walked);
    addWorst(result, result.tables[1], run.project, run.index, walked, run.rows);
    addCompleted(result, result.tables[2], run.project, run.index, walked, run.rows);
    addCurves(result.series, walked);
    addTopNotes(result, solved, *figures, figures->unreliabilityExact.has_value());
    return true;
}

} // namespace

std::vector<sdk::Parameter> OverTime::parameters(const project::Project* project) const {
    return {sdk::tree::topParameter(project),
            periodParameter(),
            sdk::tree::missionParameter(),
            startParameter(),
            clockParameter(),
            rowsParameter(),
            sdk::tree::commonCauseParameter(),
            sdk::tree::assessmentParameter(project)};
}

sdk::Answer<sdk::Result> OverTime::run(const project::Project& project, const sdk::Values& values,
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

    const Run run{project, index, job, values.number("period").value_or(8760),
                  static_cast<std::size_t>(values.integer("rows").value_or(10))};
    reliability::ProfileWish wish;
    wish.mission = values.number("mission");
    wish.steady = values.text("start") == "steady";
    const reliability::ExposureBook exposures(project, index);
    if (values.text("clock") == "calendar") wish.calendar = &exposures;
    sdk::tree::CourseBook book(project, index, wish);
    std::vector<TopCourse> courses;
    project::Problems problems;
    for (const Solved& one : *solved.content) {
        auto profiles = book.of(one);
        if (!profiles) {
            for (const project::Problem& problem : profiles.problems())
                if (std::find(problems.begin(), problems.end(), problem) == problems.end())
                    problems.push_back(problem);
            continue;
        }
        courses.push_back(sdk::tree::courseOfTop(one, std::move(*profiles), job));
        if (auto many = sdk::tree::tooManyBreakpoints(one.target, courses.back(), run.period))
            problems.push_back(std::move(*many));
    }
    if (!problems.empty()) return Answer::failed(std::move(problems));

    sdk::Result result;
    result.title = fmt::format("Top events over {:.6g} h", run.period);
    result.tables = {figuresTable(), worstTable(), completedTable()};
    const double share = 1.0 / static_cast<double>(courses.size());
    for (std::size_t i = 0; i < courses.size(); ++i)
        if (!addTop(result, run, (*solved.content)[i], courses[i], static_cast<double>(i) * share,
                    share))
            return Answer::stopped(sdk::Ending::cancelled,
                                   sdk::tree::cancelledAt((*solved.content)[i].target));
    sdk::tree::addAssessmentNotes(result, *circumstances);
    sdk::tree::addTreeNotes(result.notes, *solved.content, sdk::tree::Side::fails);
    addMethodNotes(result.notes);
    book.addNotes(result.notes);
    sdk::tree::addCautions(result.notes, circumstances->cautions(), project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::over_time
