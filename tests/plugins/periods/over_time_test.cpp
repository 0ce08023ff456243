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

TEST(OverTimePlugin, ANotCoherentTreeIsBoundedAndSaysSo) {
    project::Project plant = twoProbes(false);
    plant.gates[0].kind = project::GateKind::exactlyOne;
    const auto answer = ask("over-time", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_EQ(answer.content->exactness, sdk::Exactness::bounded);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), HasSubstr("lower bounds"));
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
