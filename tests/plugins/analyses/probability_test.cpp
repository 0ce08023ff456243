// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/analyses/plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace plants;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

TEST(ProbabilityOfTops, ThreeFiguresSideBySide) {
    project::Project plant = twoPumps();
    // The panel in both branches: {panel, pump-a} and {panel, pump-b} share an event.
    plant.gates = {gate("stops", project::GateKind::orGate, {"left", "right"}),
                   gate("left", project::GateKind::andGate, {"panel", "pump-a"}),
                   gate("right", project::GateKind::andGate, {"panel", "pump-b"})};
    const auto answer = ask("probability", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_EQ(answer.content->exactness, sdk::Exactness::exact);
    const sdk::Table& tops = table(*answer.content, "top-events");
    ASSERT_EQ(tops.rows.size(), 1u);
    EXPECT_NEAR(number(tops, 0, "probability"), 0.05 * (0.1 + 0.2 - 0.02), 1e-16);
    EXPECT_NEAR(number(tops, 0, "rare-event-sum"), 0.005 + 0.01, 1e-16);
    EXPECT_NEAR(number(tops, 0, "min-cut-upper-bound"), 1 - (1 - 0.005) * (1 - 0.01), 1e-15);
    EXPECT_NEAR(number(tops, 0, "occurs-not"), 1 - 0.014, 1e-15);
    EXPECT_EQ(text(tops, 0, "kind"), "exact");
}

TEST(ProbabilityOfTops, ShowsWhatWentIn) {
    const auto answer = ask("probability", twoPumps());
    ASSERT_TRUE(answer.content);
    const sdk::Table& events = table(*answer.content, "events");
    ASSERT_EQ(events.rows.size(), 3u);
    EXPECT_EQ(text(events, 0, "event"), "pump-a");
    EXPECT_DOUBLE_EQ(number(events, 0, "probability"), 0.1);
    EXPECT_EQ(text(events, 0, "source"), "invented for the test");
}

TEST(ProbabilityOfTops, ALargeSumIsWarnedOf) {
    project::Project plant = twoPumps();
    const auto small = ask("probability", plant); // 0.07
    ASSERT_TRUE(small.content);
    EXPECT_THAT(notes(*small.content, sdk::NoteKind::warning), Not(HasSubstr("rare-event sum")));
    plant.events[2] = event("panel", 0.3);
    const auto large = ask("probability", plant);
    ASSERT_TRUE(large.content);
    EXPECT_THAT(notes(*large.content, sdk::NoteKind::warning),
                HasSubstr("rare-event sum of 0.32 is above 0.1"));
}

TEST(ProbabilityOfTops, EventsWithoutNumbersAreAllNamedWithTheirLine) {
    project::Project plant = twoPumps();
    plant.events[0] = event("pump-a");
    plant.events[0].line.number = 17;
    plant.events[2] = event("panel");
    const auto answer = ask("probability", plant);
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 2u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("pump-a"));
    EXPECT_EQ(answer.problems[0].line, 17);
    EXPECT_THAT(answer.problems[1].what, HasSubstr("panel"));
}

TEST(ProbabilityOfTops, AnEventThatMakesNoDifferenceNeedsNoNumber) {
    project::Project plant = twoPumps();
    plant.events.push_back(event("idle")); // (panel and idle) or panel: idle drops out
    plant.gates.push_back(gate("both", project::GateKind::andGate, {"panel", "idle"}));
    plant.gates[0].inputs.push_back({"both", {}});
    const auto answer = ask("probability", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_NEAR(number(table(*answer.content, "top-events"), 0, "probability"), 1 - 0.95 * 0.98,
                1e-15);
}

TEST(ProbabilityOfTops, IgnoredOrderIsNotCalledExact) {
    project::Project plant = twoPumps();
    plant.gates[1].kind = project::GateKind::priorityAnd;
    const auto answer = ask("probability", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_EQ(answer.content->exactness, sdk::Exactness::bounded);
    EXPECT_EQ(text(table(*answer.content, "top-events"), 0, "kind"), "upper bound: order ignored");
}

TEST(ProbabilityOfTops, TheMissionTimeCountsForModelsWithoutOne) {
    project::Project plant = twoPumps();
    plant.gates[0].inputs = {{"panel", {}}};
    plant.events[2].model = {};
    plant.events[2].model.kind = project::ModelKind::mission;
    project::Quantity rate;
    rate.value = 1e-3;
    rate.unit = project::Unit::perHour;
    plant.events[2].model.set(project::Role::rate, rate);
    const auto without = ask("probability", plant);
    EXPECT_EQ(without.ending, sdk::Ending::failed);
    sdk::Values values;
    values.set("mission", 100.0);
    const auto with = ask("probability", plant, values);
    ASSERT_TRUE(with.content);
    EXPECT_NEAR(number(table(*with.content, "top-events"), 0, "probability"), 0.0951625819640404,
                1e-15); // 1 - exp(-0.1)
    EXPECT_THAT(notes(*with.content, sdk::NoteKind::warning), HasSubstr("which clock"));
}

TEST(ProbabilityOfTops, TwoDormantPartsInOneTreeAreExplained) {
    project::Project plant = twoPumps();
    for (std::size_t i : {0u, 1u}) {
        plant.events[i].model = {};
        plant.events[i].model.kind = project::ModelKind::tested;
        plant.events[i].model.clock = project::Clock::calendarHour;
        project::Quantity rate, interval;
        rate.value = 1e-6;
        rate.unit = project::Unit::perHour;
        interval.value = 1000;
        interval.unit = project::Unit::hours;
        plant.events[i].model.set(project::Role::rate, rate);
        plant.events[i].model.set(project::Role::interval, interval);
    }
    const auto answer = ask("probability", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::assumption), HasSubstr("up to 4/3"));
}
