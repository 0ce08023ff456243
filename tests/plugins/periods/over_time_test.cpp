// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/periods/timed_plant.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace plants;
using testing::HasSubstr;

namespace {

sdk::Values period(double hours) {
    sdk::Values values;
    values.set("period", hours);
    return values;
}

} // namespace

TEST(OverTimePlugin, MeanAndWorstMomentOfTwoProbes) {
    const auto answer = ask("over-time", twoProbes(false), period(8760));
    ASSERT_TRUE(answer.content);
    const sdk::Table& figures = table(*answer.content, "figures");
    ASSERT_EQ(figures.rows.size(), 1u);
    // The row 1oo2 of the averages over a test interval; not the product of the two means, 0.00181.
    EXPECT_NEAR(number(figures, 0, "mean-unavailability"), 0.00239652526, 2e-11);
    const double worst = std::pow(1 - std::exp(-0.0876), 2);
    EXPECT_NEAR(number(figures, 0, "worst-unavailability"), worst, 1e-12);
    EXPECT_EQ(text(figures, 0, "worst-time"), "at the end, 8760 h");
    // No test falls into the period: what comes stays, and comes once.
    EXPECT_NEAR(number(figures, 0, "expected-number"), worst, 1e-12);
    const sdk::Table& carries = table(*answer.content, "worst-moment");
    ASSERT_EQ(carries.rows.size(), 2u);
    EXPECT_NEAR(number(carries, 0, "share"), 100, 1e-9);
    const sdk::Table& completed = table(*answer.content, "completed-by");
    ASSERT_EQ(completed.rows.size(), 2u);
    EXPECT_NEAR(number(completed, 0, "share") + number(completed, 1, "share"), 100, 1e-9);
}

TEST(OverTimePlugin, TestsInTurnAreBetter) {
    const auto together = ask("over-time", twoProbes(false), period(87600));
    const auto inTurn = ask("over-time", twoProbes(true), period(87600));
    ASSERT_TRUE(together.content && inTurn.content);
    EXPECT_LT(number(table(*inTurn.content, "figures"), 0, "mean-unavailability"),
              0.7 * number(table(*together.content, "figures"), 0, "mean-unavailability"));
    EXPECT_EQ(text(table(*together.content, "figures"), 0, "worst-time"), "just before 8760 h");
    const sdk::Series& curve = together.content->series.at(0);
    EXPECT_EQ(curve.x.size(), curve.y.size());
    EXPECT_GE(curve.x.size(), 20u);
    EXPECT_THAT(curve.x, testing::Each(testing::AllOf(testing::Ge(0.0), testing::Le(87600.0))));
}

TEST(OverTimePlugin, AnInitiatorCountsInTheFrequencyOnly) {
    const auto answer = ask("over-time", lowWater(), period(8760));
    ASSERT_TRUE(answer.content);
    const sdk::Table& figures = table(*answer.content, "figures");
    EXPECT_NEAR(number(figures, 0, "frequency-per-year"), 0.00425485656, 1e-11);
    EXPECT_EQ(number(figures, 0, "mean-unavailability"), 0);
    EXPECT_EQ(text(table(*answer.content, "completed-by"), 0, "event"), "low");
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::assumption), HasSubstr("1 initiating event"));
}

TEST(OverTimePlugin, SaysWhatItCannotFollow) {
    project::Project plant = lowWater();
    plant.events[0].model.set(project::Role::frequency, quantity(0.001, project::Unit::perStart));
    auto answer = ask("over-time", plant);
    ASSERT_FALSE(answer.content);
    EXPECT_THAT(answer.problems.at(0).what,
                HasSubstr("event low: the frequency is given per start"));
    EXPECT_FALSE(answer.problems[0].remedy.empty());

    plant = twoProbes(false);
    plant.events[0].model.set(project::Role::interval, quantity(1, project::Unit::seconds));
    answer = ask("over-time", plant, period(1e6));
    ASSERT_FALSE(answer.content);
    EXPECT_THAT(answer.problems.at(0).what, HasSubstr("tests and missions"));
}

TEST(OverTimePlugin, WarnsWhereItsFiguresAreWeak) {
    project::Project plant = twoProbes(false);
    plant.events[0].model.set(project::Role::rate, quantity(1e-4, project::Unit::perHour));
    const auto answer = ask("over-time", plant, period(87600));
    ASSERT_TRUE(answer.content);
    const std::string warnings = notes(*answer.content, sdk::NoteKind::warning);
    EXPECT_THAT(warnings, HasSubstr("probe-a: rate x interval is 0.88"));
    EXPECT_THAT(warnings, HasSubstr("far apart"));
}

TEST(OverTimePlugin, ANotCoherentTreeHasAnExactFrequency) {
    // Exactly one of two probes, tested together. Within a year one has failed and the other not;
    // the test mends what it finds, so that nothing is brought about by it.
    project::Project plant = twoProbes(false);
    plant.gates[0].kind = project::GateKind::exactlyOne;
    const auto answer = ask("over-time", plant, period(8760));
    ASSERT_TRUE(answer.content);
    EXPECT_EQ(answer.content->exactness, sdk::Exactness::exact);
    const double q = -std::expm1(-1e-5 * 8760);
    // The first of two failures brings it about: 1 - (1 - q)^2 times in the year.
    EXPECT_NEAR(number(table(*answer.content, "figures"), 0, "expected-number"),
                1 - (1 - q) * (1 - q), 1e-10);
}

TEST(OverTimePlugin, FiringHoursAndStartsAreSpreadOverTheCalendar) {
    project::Project plant = twoProbes(false);
    project::Component boiler, burner;
    boiler.id = "boiler";
    burner.id = "burner";
    burner.parent = "boiler";
    plant.components = {boiler, burner};
    for (std::size_t i = 0; i < 2; ++i) {
        project::FailureMode mode;
        mode.id = "m" + std::to_string(i);
        mode.component = "burner";
        mode.model = plant.events[i].model;
        mode.model.clock = project::Clock::firingHour;
        plant.modes.push_back(mode);
        plant.events[i].mode = mode.id;
    }
    auto& repaired = plant.modes[0].model;
    repaired = {};
    repaired.kind = project::ModelKind::repairable;
    repaired.clock = project::Clock::firingHour;
    repaired.set(project::Role::rate, quantity(1e-3, project::Unit::perHour));
    repaired.set(project::Role::repair, quantity(10, project::Unit::hours));
    plant.gates[0].inputs = {{"probe-a", {}}};
    project::Exposure exposure;
    exposure.component = "boiler";
    exposure.calendarHours = 17520;
    exposure.firingHours = 4380;
    exposure.starts = 2000;
    plant.exposures = {exposure};
    sdk::Values values = period(8760);
    values.set("start", std::string("steady"));
    const auto own = ask("over-time", plant, values);
    values.set("clock", std::string("calendar"));
    const auto calendar = ask("over-time", plant, values);
    ASSERT_TRUE(own.content && calendar.content);
    EXPECT_NEAR(number(table(*own.content, "figures"), 0, "frequency"), 1e-3 / 1.01, 1e-12);
    // A quarter of the hours: a quarter of the rate; a repair takes what it takes.
    EXPECT_NEAR(number(table(*calendar.content, "figures"), 0, "frequency"), 2.5e-4 / 1.0025,
                1e-12);
    EXPECT_THAT(notes(*own.content, sdk::NoteKind::warning), HasSubstr("--clock calendar"));
    EXPECT_THAT(notes(*calendar.content, sdk::NoteKind::assumption),
                HasSubstr("firing hours are 0.25 of the calendar's, by the exposure of boiler"));

    auto& perStart = plant.modes[0].model;
    perStart = {};
    perStart.kind = project::ModelKind::frequency;
    perStart.clock = project::Clock::start;
    perStart.set(project::Role::frequency, quantity(0.003, project::Unit::perStart));
    const auto starts = ask("over-time", plant, values);
    ASSERT_TRUE(starts.content);
    EXPECT_NEAR(number(table(*starts.content, "figures"), 0, "frequency-per-year"), 3, 1e-9);
    EXPECT_THAT(notes(*starts.content, sdk::NoteKind::assumption), HasSubstr("1000 per year"));
    plant.exposures.clear();
    const auto unknown = ask("over-time", plant, values);
    ASSERT_FALSE(unknown.content);
    EXPECT_THAT(unknown.problems.at(0).remedy, HasSubstr("exposure with starts"));
}

TEST(OverTimePlugin, StopsWhenAsked) {
    std::stop_source source;
    sdk::Job job;
    job.stop = source.get_token();
    job.progress = [&](double, const std::string& what) {
        if (what.find("following") == 0) source.request_stop();
    };
    const auto answer = ask("over-time", twoProbes(true), period(876000), job);
    EXPECT_EQ(answer.ending, sdk::Ending::cancelled);
}
