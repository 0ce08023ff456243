// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/analyses/plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace plants;
using testing::HasSubstr;

TEST(PathSets, AreWhatKeepsTheTopEventAway) {
    const auto answer = ask("path-sets", twoPumps());
    ASSERT_TRUE(answer.content);
    const sdk::Table& sets = table(*answer.content, "sets");
    ASSERT_EQ(sets.rows.size(), 2u);
    EXPECT_EQ(text(sets, 0, "events"), "pump-a, panel"); // 0.9 x 0.95: more likely to hold
    EXPECT_NEAR(number(sets, 0, "probability"), 0.855, 1e-15);
    EXPECT_EQ(text(sets, 1, "events"), "pump-b, panel"); // 0.8 x 0.95
    EXPECT_NEAR(number(sets, 1, "probability"), 0.76, 1e-15);
    EXPECT_EQ(number(table(*answer.content, "summary"), 0, "sets"), 2);
}

// Five-component bridge (two paths with a tie): NUREG-0492 style example; 4 minimal path sets of
// orders 2, 2, 3, 3 and 4 minimal cut sets of the same orders, by inspection of the drawing.
TEST(PathSets, OfTheBridge) {
    project::Project plant;
    using project::GateKind;
    for (const char* id : {"1", "2", "3", "4", "5"})
        plant.events.push_back(event(id, 0.1));
    // 1-2 above, 3-4 below, 5 across; cut sets {1,3} {2,4} {1,5,4} {3,5,2}.
    plant.gates = {gate("top", GateKind::orGate, {"c1", "c2", "c3", "c4"}),
                   gate("c1", GateKind::andGate, {"1", "3"}),
                   gate("c2", GateKind::andGate, {"2", "4"}),
                   gate("c3", GateKind::andGate, {"1", "5", "4"}),
                   gate("c4", GateKind::andGate, {"3", "5", "2"})};
    plant.tops = {top("B", "top")};
    const auto answer = ask("path-sets", plant);
    ASSERT_TRUE(answer.content);
    const sdk::Table& counts = table(*answer.content, "counts");
    ASSERT_EQ(counts.rows.size(), 2u);
    EXPECT_EQ(number(counts, 0, "order"), 2);
    EXPECT_EQ(number(counts, 0, "sets"), 2); // {1,2} {3,4}
    EXPECT_EQ(number(counts, 1, "order"), 3);
    EXPECT_EQ(number(counts, 1, "sets"), 2); // {1,5,4} {3,5,2}
}

TEST(PathSets, OfATreeThatIsNotCoherentSayWhatMustOccur) {
    project::Project plant;
    plant.events = {event("a", 0.1), event("b", 0.2)};
    plant.gates = {gate("x", project::GateKind::exactlyOne, {"a", "b"})};
    plant.tops = {top("X", "x")};
    const auto answer = ask("path-sets", plant);
    ASSERT_TRUE(answer.content);
    const sdk::Table& sets = table(*answer.content, "sets");
    ASSERT_EQ(sets.rows.size(), 2u); // neither occurs, 0.72, or both, 0.02
    EXPECT_EQ(text(sets, 0, "events"), "a, b");
    EXPECT_NEAR(number(sets, 0, "probability"), 0.72, 1e-15);
    EXPECT_EQ(text(sets, 1, "events"), "occurs: a, occurs: b");
    EXPECT_NEAR(number(sets, 1, "probability"), 0.02, 1e-15);
}

TEST(PathSets, HouseEventsAreReadTheRightWayRound) {
    project::Project plant = twoPumps();
    plant.events[2].kind = project::EventKind::house;
    plant.events[2].model = {};
    plant.events[2].state = true;
    const auto answer = ask("path-sets", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), HasSubstr("T1 always happens"));
    EXPECT_EQ(table(*answer.content, "sets").rows.size(), 0u); // nothing keeps it away
}
