// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/facts.h"

#include "tests/models/project/edits/small_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::project::edits;
using testing::HasSubstr;

TEST(EditFacts, RenameKeepsTheIdAndTakesTheTopEventAlong) {
    const auto result = rename(smallTree(), "stop", "boiler trips");
    ASSERT_TRUE(result);
    EXPECT_EQ(gateOf(result->project, "stop")->name, "boiler trips");
    EXPECT_EQ(result->project.tops[0].name, "boiler trips");
    Project own = smallTree();
    own.tops[0].name = "a name of its own";
    EXPECT_EQ(rename(own, "stop", "x")->project.tops[0].name, "a name of its own");
    EXPECT_FALSE(rename(smallTree(), "stop", ""));
    EXPECT_FALSE(rename(smallTree(), "gone", "x"));
}

TEST(EditFacts, EachKindOfGateIsSound) {
    for (const GateKind kind : {GateKind::andGate, GateKind::orGate, GateKind::vote,
                                GateKind::exactlyOne, GateKind::priorityAnd}) {
        const auto result = setGateKind(smallTree(), "fuel", kind);
        ASSERT_TRUE(result);
        EXPECT_EQ(gateOf(result->project, "fuel")->kind, kind);
        EXPECT_FALSE(hasErrors(validate(result->project))) << word(kind);
    }
}

TEST(EditFacts, AConditionBecomesAnInputAndBack) {
    Project project = smallTree();
    project.events[1].kind = EventKind::conditioning;
    const auto inhibit = setGateKind(project, "fuel", GateKind::inhibit);
    ASSERT_TRUE(inhibit);
    EXPECT_EQ(gateOf(inhibit->project, "fuel")->condition.id, "pump-b");
    EXPECT_EQ(inputsOf(inhibit->project, "fuel"), "pump-a");
    EXPECT_FALSE(hasErrors(validate(inhibit->project)));
    const auto back = setGateKind(inhibit->project, "fuel", GateKind::andGate);
    EXPECT_EQ(inputsOf(back->project, "fuel"), "pump-a pump-b");
    EXPECT_TRUE(gateOf(back->project, "fuel")->condition.id.empty());
}

TEST(EditFacts, KFromOneToTheNumberOfInputs) {
    const auto result = setK(smallTree(), "fuel", 2);
    ASSERT_TRUE(result);
    EXPECT_EQ(gateOf(result->project, "fuel")->kind, GateKind::vote);
    EXPECT_EQ(gateOf(result->project, "fuel")->k, 2);
    EXPECT_THAT(sentenceOf(setK(smallTree(), "fuel", 3)), HasSubstr("has 2 inputs"));
    EXPECT_THAT(sentenceOf(setK(smallTree(), "fuel", 0)), HasSubstr("from 1 to 2"));
    EXPECT_THAT(sentenceOf(setK(smallTree(), "fan", 1)), HasSubstr("is an event"));
}

TEST(EditFacts, EventsOfEachKindAndGatesWithoutInputs) {
    EXPECT_EQ(
        eventOf(setEventKind(smallTree(), "pump-a", EventKind::house)->project, "pump-a")->kind,
        EventKind::house);
    EXPECT_THAT(sentenceOf(setEventKind(smallTree(), "fuel", EventKind::basic)),
                HasSubstr("gate with inputs"));
    Project project = smallTree();
    project.gates[1].inputs.clear();
    const auto result = setEventKind(project, "fuel", EventKind::undeveloped);
    ASSERT_TRUE(result);
    EXPECT_EQ(eventOf(result->project, "fuel")->kind, EventKind::undeveloped);
    EXPECT_EQ(inputsOf(result->project, "stop"), "fuel fan");
}

TEST(EditFacts, StateIsForHouseEvents) {
    const Project house = setEventKind(smallTree(), "pump-a", EventKind::house)->project;
    EXPECT_TRUE(eventOf(setState(house, "pump-a", true)->project, "pump-a")->state);
    EXPECT_FALSE(setState(smallTree(), "pump-a", true));
}

TEST(EditFacts, AModeBringsItsModel) {
    Project project = smallTree();
    project.events[0].model.kind = ModelKind::probability;
    const auto given = setMode(project, "pump-a", "FAN.no-start");
    ASSERT_TRUE(given);
    EXPECT_EQ(eventOf(given->project, "pump-a")->model, FailureModel());
    EXPECT_THAT(sentenceOf(setMode(project, "pump-a", "FAN.stops")),
                HasSubstr("\"fan stops\" is that failure mode already"));
    FailureModel model;
    model.kind = ModelKind::mission;
    const auto changed = setModel(given->project, "pump-a", model);
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->project.modes[1].model, model) << "the worksheet's fact, not a second one";
    EXPECT_EQ(eventOf(changed->project, "pump-a")->model, FailureModel());
    EXPECT_EQ(eventOf(setModel(smallTree(), "pump-b", model)->project, "pump-b")->model, model);
}

TEST(EditFacts, TopEventsAndProject) {
    EXPECT_EQ(makeTop(smallTree(), "fuel")->project.tops.size(), 2u);
    EXPECT_THAT(sentenceOf(makeTop(smallTree(), "stop")), HasSubstr("already"));
    TopEvent facts = smallTree().tops[0];
    facts.severity = "severe";
    facts.node.id = "ignored";
    const auto top = setTopFacts(smallTree(), facts);
    ASSERT_TRUE(top);
    EXPECT_EQ(top->project.tops[0].severity, "severe");
    EXPECT_EQ(top->project.tops[0].node.id, "stop");
    Project named;
    named.name = "B";
    const auto project = setProjectFacts(smallTree(), named);
    EXPECT_EQ(project->project.name, "B");
    EXPECT_EQ(project->project.gates, smallTree().gates);
}
