// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/arrange.h"

#include "models/project/edits/add.h"
#include "tests/models/project/edits/small_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::project::edits;
using testing::HasSubstr;

TEST(EditRemove, TakesWhatIsUnusedThenWithIt) {
    const auto result = removeUses(smallTree(), {{"fuel", "stop", 0}});
    ASSERT_TRUE(result) << sentenceOf(result);
    EXPECT_EQ(inputsOf(result->project, "stop"), "fan");
    EXPECT_EQ(result->project.gates.size(), 1u);
    EXPECT_EQ(result->project.events.size(), 1u);
    EXPECT_EQ(result->touched, std::vector<Id>{"fan"});
}

TEST(EditRemove, ASharedNodeStaysWhereElseItIsUsed) {
    Project project = shareNode(smallTree(), {"stop"}, "pump-a")->project;
    const auto result = removeUses(project, {{"fuel", "stop", 0}});
    ASSERT_TRUE(result);
    EXPECT_NE(eventOf(result->project, "pump-a"), nullptr);
    EXPECT_EQ(eventOf(result->project, "pump-b"), nullptr);
}

TEST(EditRemove, GoesFromCommonCausesAndAssessmentsToo) {
    Project project = smallTree();
    CommonCauseGroup group;
    group.id = "CC";
    group.members = {{"pump-a", {}}, {"pump-b", {}}, {"fan", {}}};
    project.commonCauses = {group};
    Assessment assessment;
    assessment.id = "A";
    assessment.forced = {{{"pump-a", {}}, true, {}}, {{"fan", {}}, true, {}}};
    project.assessments = {assessment};
    const auto result = removeUses(project, {{"fuel", "stop", 0}});
    ASSERT_TRUE(result);
    EXPECT_EQ(result->project.commonCauses[0].members,
              std::vector<Reference>{(Reference{"fan", {}})});
    EXPECT_EQ(result->project.assessments[0].forced.size(), 1u);
}

TEST(EditRemove, SeveralAtOnceAndTheWholeTree) {
    const auto two = removeUses(smallTree(), {{"pump-a", "fuel", 0}, {"pump-b", "fuel", 1}});
    ASSERT_TRUE(two);
    EXPECT_EQ(inputsOf(two->project, "fuel"), "");
    EXPECT_EQ(two->about, "2 items");
    const auto all = removeUses(smallTree(), {{"stop", "", 0}});
    ASSERT_TRUE(all);
    EXPECT_TRUE(all->project.tops.empty() && all->project.gates.empty() &&
                all->project.events.empty());
    EXPECT_EQ(all->project.modes.size(), 2u) << "the plant stays";
}

TEST(EditRemove, RefusesATopEventOfTheLogAndAStaleRow) {
    Project project = smallTree();
    LogEntry entry;
    entry.id = "L1";
    entry.topEvent = "T1";
    project.log = {entry};
    EXPECT_THAT(sentenceOf(removeUses(project, {{"stop", "", 0}})),
                HasSubstr("1 entry of the log speaks of top event T1"));
    EXPECT_THAT(sentenceOf(removeUses(project, {{"fan", "stop", 0}})),
                HasSubstr("not where it was"));
}

TEST(EditMove, BetweenGatesAndWithinOne) {
    const auto other = moveUses(smallTree(), {{"fan", "stop", 1}}, {"fuel", 1});
    ASSERT_TRUE(other) << sentenceOf(other);
    EXPECT_EQ(inputsOf(other->project, "fuel"), "pump-a fan pump-b");
    EXPECT_EQ(inputsOf(other->project, "stop"), "fuel");
    // The row counts before the move: behind the last one.
    const auto within = moveUses(smallTree(), {{"pump-a", "fuel", 0}}, {"fuel", 2});
    ASSERT_TRUE(within);
    EXPECT_EQ(inputsOf(within->project, "fuel"), "pump-b pump-a");
    EXPECT_EQ(inputsOf(moveUses(smallTree(), {{"pump-a", "fuel", 0}}, {"fuel"})->project, "fuel"),
              "pump-b pump-a");
}

TEST(EditMove, OutToATopEventAndBack) {
    const auto out = moveUses(smallTree(), {{"fuel", "stop", 0}}, {"", kLast});
    ASSERT_TRUE(out) << sentenceOf(out);
    ASSERT_EQ(out->project.tops.size(), 2u);
    EXPECT_EQ(out->project.tops[1].node.id, "fuel");
    EXPECT_EQ(out->project.tops[1].name, "no fuel");
    const auto back = moveUses(out->project, {{"fuel", "", 1}}, {"stop", 0});
    ASSERT_TRUE(back) << sentenceOf(back);
    EXPECT_EQ(back->project.gates, smallTree().gates);
    EXPECT_EQ(back->project.tops, smallTree().tops);
}

TEST(EditMove, TopEventsAmongThemselvesKeepTheirFacts) {
    Project project = addEvent(smallTree(), {}, "low water")->project;
    project.tops[1].severity = "severe";
    const auto result = moveUses(project, {{"low-water", "", 1}}, {"", 0});
    ASSERT_TRUE(result);
    EXPECT_EQ(result->project.tops[0], project.tops[1]);
    EXPECT_EQ(result->project.tops[1], project.tops[0]);
}

TEST(EditMove, RefusesACircleAndADouble) {
    const Project project = addEvent(smallTree(), {"pump-a"}, "motor")->project;
    EXPECT_THAT(sentenceOf(moveUses(project, {{"fuel", "stop", 0}}, {"pump-a"})),
                HasSubstr("would stand below itself"));
    const Project shared = shareNode(smallTree(), {"fuel"}, "fan")->project;
    EXPECT_THAT(sentenceOf(moveUses(shared, {{"fan", "stop", 1}}, {"fuel"})), HasSubstr("already"));
}

TEST(EditReorder, StepsAndEnds) {
    EXPECT_EQ(inputsOf(reorder(smallTree(), {"fan", "stop", 1}, -1)->project, "stop"), "fan fuel");
    EXPECT_EQ(inputsOf(reorder(smallTree(), {"fuel", "stop", 0}, 1)->project, "stop"), "fan fuel");
    EXPECT_THAT(sentenceOf(reorder(smallTree(), {"fuel", "stop", 0}, -1)), HasSubstr("first one"));
    EXPECT_THAT(sentenceOf(reorder(smallTree(), {"fan", "stop", 1}, 1)), HasSubstr("last one"));
}

TEST(EditInsertGate, AboveSomeInputsInTheirOrder) {
    const Project project = addEvent(smallTree(), {"stop"}, "panel dead")->project;
    const auto result = insertGateAbove(project, {{"panel-dead", "stop", 2}, {"fuel", "stop", 0}},
                                        GateKind::vote, "");
    ASSERT_TRUE(result) << sentenceOf(result);
    EXPECT_EQ(inputsOf(result->project, "stop"), "gate fan");
    EXPECT_EQ(inputsOf(result->project, "gate"), "fuel panel-dead");
    EXPECT_EQ(gateOf(result->project, "gate")->k, 2);
    EXPECT_FALSE(hasErrors(validate(result->project)));
}

TEST(EditInsertGate, AboveATopEvent) {
    const auto result =
        insertGateAbove(smallTree(), {{"stop", "", 0}}, GateKind::orGate, "no steam");
    ASSERT_TRUE(result);
    EXPECT_EQ(result->project.tops[0].node.id, "no-steam");
    EXPECT_EQ(inputsOf(result->project, "no-steam"), "stop");
}

TEST(EditInsertGate, RefusesDifferentParents) {
    EXPECT_THAT(sentenceOf(insertGateAbove(smallTree(), {{"fan", "stop", 1}, {"pump-a", "fuel", 0}},
                                           GateKind::orGate, "")),
                HasSubstr("not stand below one gate"));
}

TEST(EditDissolve, PutsTheInputsInItsPlace) {
    const auto result = dissolveGate(smallTree(), "fuel");
    ASSERT_TRUE(result) << sentenceOf(result);
    EXPECT_EQ(inputsOf(result->project, "stop"), "pump-a pump-b fan");
    EXPECT_EQ(gateOf(result->project, "fuel"), nullptr);
}

TEST(EditDissolve, EverywhereItIsUsedAndWithoutDoubles) {
    Project project = shareNode(smallTree(), {"stop"}, "pump-a")->project;
    project.gates.push_back(smallGate("other", "other", GateKind::orGate, {"fuel"}));
    project = shareNode(project, {}, "other")->project;
    const auto result = dissolveGate(project, "fuel");
    ASSERT_TRUE(result);
    EXPECT_EQ(inputsOf(result->project, "stop"), "pump-b fan pump-a");
    EXPECT_EQ(inputsOf(result->project, "other"), "pump-a pump-b");
}

TEST(EditDissolve, RefusesATopWithSeveralInputsAndEvents) {
    EXPECT_THAT(sentenceOf(dissolveGate(smallTree(), "stop")),
                HasSubstr("top event with 2 inputs"));
    EXPECT_THAT(sentenceOf(dissolveGate(smallTree(), "fan")), HasSubstr("is an event"));
    const Project one = removeUses(smallTree(), {{"fan", "stop", 1}})->project;
    EXPECT_EQ(dissolveGate(one, "stop")->project.tops[0].node.id, "fuel");
}
