// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/add.h"

#include "tests/models/project/edits/small_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::project::edits;
using testing::HasSubstr;

TEST(EditAdd, EventAtItsRow) {
    const auto result = addEvent(smallTree(), {"fuel", 1}, "Filter (fine) blocked");
    ASSERT_TRUE(result) << sentenceOf(result);
    EXPECT_EQ(inputsOf(result->project, "fuel"), "pump-a filter-fine-blocked pump-b");
    EXPECT_EQ(eventOf(result->project, "filter-fine-blocked")->name, "Filter (fine) blocked");
    EXPECT_EQ(result->doing, "Add %1");
    EXPECT_EQ(result->about, "Filter (fine) blocked");
    EXPECT_EQ(result->touched, std::vector<Id>{"filter-fine-blocked"});
}

TEST(EditAdd, IdsStayUniqueForEqualAndForStrangeNames) {
    const auto once = addEvent(smallTree(), {"fuel"}, "pump a");
    const auto twice = addEvent(once->project, {"fuel"}, "Pump A!");
    const auto foreign = addEvent(twice->project, {"fuel"}, "Пуск");
    ASSERT_TRUE(once && twice && foreign);
    EXPECT_EQ(inputsOf(foreign->project, "fuel"), "pump-a pump-b pump-a-2 pump-a-3 node");
    for (const Event& event : foreign->project.events)
        EXPECT_TRUE(isWellFormedId(event.id)) << event.id;
}

TEST(EditAdd, BelowAnEventMakesItAGateInItsPlace) {
    const auto result = addEvent(smallTree(), {"pump-a"}, "motor burnt");
    ASSERT_TRUE(result) << sentenceOf(result);
    EXPECT_EQ(eventOf(result->project, "pump-a"), nullptr);
    ASSERT_NE(gateOf(result->project, "pump-a"), nullptr);
    EXPECT_EQ(gateOf(result->project, "pump-a")->name, "pump A stops");
    EXPECT_EQ(gateOf(result->project, "pump-a")->kind, GateKind::orGate);
    EXPECT_EQ(inputsOf(result->project, "fuel"), "pump-a pump-b");
    EXPECT_FALSE(hasErrors(validate(result->project)));
}

TEST(EditAdd, BelowAFailureModeIsRefusedWithTheReason) {
    const auto result = addEvent(smallTree(), {"fan"}, "bearing");
    EXPECT_THAT(sentenceOf(result), HasSubstr("\"fan stops\" is failure mode FAN.stops"));
}

TEST(EditAdd, BelowAMemberOfACommonCauseIsRefused) {
    Project project = smallTree();
    CommonCauseGroup group;
    group.id = "CC";
    group.members = {{"pump-a", {}}, {"pump-b", {}}};
    project.commonCauses = {group};
    EXPECT_THAT(sentenceOf(addEvent(project, {"pump-a"}, "motor")),
                HasSubstr("common-cause group CC"));
}

TEST(EditAdd, ATopEventIsANewTree) {
    const auto result = addEvent(smallTree(), {"", 0}, "low water");
    ASSERT_TRUE(result);
    ASSERT_EQ(result->project.tops.size(), 2u);
    EXPECT_EQ(result->project.tops[0].node.id, "low-water");
    EXPECT_EQ(result->project.tops[0].id, "T2");
    EXPECT_NE(gateOf(result->project, "low-water"), nullptr);
}

TEST(EditAdd, EmptyTextAndUnknownParentAreRefused) {
    EXPECT_THAT(sentenceOf(addEvent(smallTree(), {"fuel"}, "  ")), HasSubstr("no text"));
    EXPECT_THAT(sentenceOf(addEvent(smallTree(), {"gone"}, "x")),
                HasSubstr("no event or gate gone"));
}

TEST(EditShare, OneNodeBelowTwoGates) {
    const auto result = shareNode(smallTree(), {"fuel", 0}, "fan");
    ASSERT_TRUE(result);
    EXPECT_EQ(inputsOf(result->project, "fuel"), "fan pump-a pump-b");
    EXPECT_EQ(result->project.events.size(), 3u);
}

TEST(EditShare, ACircleIsRefusedAtAnyDepth) {
    EXPECT_THAT(sentenceOf(shareNode(smallTree(), {"stop"}, "stop")), HasSubstr("below itself"));
    EXPECT_THAT(sentenceOf(shareNode(smallTree(), {"fuel"}, "stop")),
                HasSubstr("\"boiler stops\" stands above \"no fuel\""));
    // Below an event that would become a gate: pump-a is below stop.
    EXPECT_THAT(sentenceOf(shareNode(smallTree(), {"pump-a"}, "stop")), HasSubstr("below itself"));
}

TEST(EditShare, TwiceBelowOneGateIsRefused) {
    EXPECT_THAT(sentenceOf(shareNode(smallTree(), {"fuel"}, "pump-b")), HasSubstr("already"));
}

TEST(EditUseMode, MakesTheEventOnceAndSharesItThen) {
    const auto once = useMode(smallTree(), {"fuel"}, "FAN.no-start");
    ASSERT_TRUE(once) << sentenceOf(once);
    const Id id = once->touched.front();
    EXPECT_EQ(eventOf(once->project, id)->mode, "FAN.no-start");
    EXPECT_EQ(eventOf(once->project, id)->name, "fan does not start");
    const auto twice = useMode(once->project, {"stop"}, "FAN.no-start");
    ASSERT_TRUE(twice);
    EXPECT_EQ(twice->project.events.size(), 4u);
    EXPECT_EQ(inputsOf(twice->project, "stop"), "fuel fan " + id);
    EXPECT_THAT(sentenceOf(useMode(smallTree(), {"fuel"}, "x")), HasSubstr("no failure mode x"));
}

TEST(EditSeparate, CopiesTheGatesAndKeepsTheEventsShared) {
    const Project shared = shareNode(smallTree(), {}, "fuel")->project; // a second tree
    const auto result = separate(shared, {"fuel", "stop", 0});
    ASSERT_TRUE(result) << sentenceOf(result);
    EXPECT_EQ(inputsOf(result->project, "stop"), "fuel-2 fan");
    EXPECT_EQ(inputsOf(result->project, "fuel-2"), "pump-a pump-b");
    EXPECT_EQ(result->project.tops[1].node.id, "fuel");
    EXPECT_EQ(result->project.events.size(), 3u);
}

TEST(EditSeparate, WhatIsUsedOnceOrIsAnEventIsRefused) {
    EXPECT_THAT(sentenceOf(separate(smallTree(), {"fuel", "stop", 0})),
                HasSubstr("used once only"));
    EXPECT_THAT(sentenceOf(separate(smallTree(), {"fan", "stop", 1})), HasSubstr("one event"));
}
