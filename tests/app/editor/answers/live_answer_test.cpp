// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/live_answer.h"

#include "app/editor/answers/tree_part.h"
#include "tests/app/cli/process.h"
#include "tests/plugins/analyses/plants.h"

#include "models/document/document.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater;
using editor::LiveAnswer;
using editor::LiveMeans;
using project::GateKind;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

using Ending = LiveAnswer::Ending;

LiveAnswer live(const project::Project& project, const std::string& top = {},
                const LiveMeans& means = {}) {
    return editor::computeLive(project, top, means);
}

} // namespace

TEST(LiveAnswer, OfTwoPumpsByHand) {
    const LiveAnswer answer = live(plants::twoPumps());
    EXPECT_EQ(answer.ending, Ending::answered);
    EXPECT_EQ(answer.top, "T1");
    ASSERT_TRUE(answer.figure);
    EXPECT_TRUE(answer.figure->exact);
    EXPECT_NEAR(answer.figure->upper, 1 - (1 - 0.05) * (1 - 0.1 * 0.2), 1e-15);
    EXPECT_EQ(answer.figure->lower, answer.figure->upper);
    EXPECT_EQ(answer.setCount, "2");
    ASSERT_THAT(answer.orders, SizeIs(2));
    EXPECT_EQ(answer.orders[0].order, 1u);
    EXPECT_THAT(answer.orders[0].nodes, ElementsAre("panel"));
    EXPECT_THAT(answer.orders[1].nodes, ElementsAre("pump-a", "pump-b"));
    EXPECT_TRUE(answer.orders[1].everyOne);
    ASSERT_THAT(answer.singles, SizeIs(1));
    EXPECT_EQ(answer.singles[0].nodes.front(), "panel");
    EXPECT_EQ(answer.singles[0].failure, "the panel");
    EXPECT_EQ(answer.singles[0].probability, 0.05);
    ASSERT_THAT(answer.likely, SizeIs(1));
    EXPECT_THAT(answer.likely[0].nodes, ElementsAre("pump-a", "pump-b"));
    EXPECT_NEAR(*answer.likely[0].probability, 0.02, 1e-15);
}

TEST(LiveAnswer, SaysComponentFailureAndPlace) {
    project::Project plant = plants::twoPumps();
    project::Component room, panel;
    room.id = room.tag = "BR";
    room.name = "boiler room";
    panel.id = panel.tag = "P-1";
    panel.name = "control panel";
    panel.location = "deck 3";
    panel.parent = "BR";
    project::FailureMode dead;
    dead.id = "P-1.dead";
    dead.component = "P-1";
    dead.name = "no supply";
    dead.model = plant.events[2].model;
    plant.components = {room, panel};
    plant.modes = {dead};
    plant.events[2].mode = dead.id;
    plant.events[2].model = {};
    const LiveAnswer answer = live(plant);
    ASSERT_THAT(answer.singles, SizeIs(1));
    EXPECT_EQ(answer.singles[0].component, "control panel P-1");
    EXPECT_EQ(answer.singles[0].failure, "no supply");
    EXPECT_EQ(answer.singles[0].place, "deck 3, boiler room");
    plant.components[1].location.clear();
    EXPECT_EQ(live(plant).singles[0].place, "boiler room");
}

TEST(LiveAnswer, AnErrorOfTheTreeIsSaidWithItsNode) {
    project::Project plant = plants::twoPumps();
    plant.gates[1].inputs.clear();
    const LiveAnswer answer = live(plant);
    EXPECT_EQ(answer.ending, Ending::errors);
    EXPECT_FALSE(answer.figure);
    ASSERT_THAT(answer.errors, SizeIs(1));
    EXPECT_THAT(answer.errors[0].sentence, HasSubstr("no-flow"));
    EXPECT_THAT(answer.errors[0].nodes, ElementsAre("no-flow"));
    EXPECT_THAT(answer.elsewhere, IsEmpty());
}

TEST(LiveAnswer, AnErrorElsewhereDoesNotSilenceTheTree) {
    project::Project plant = plants::twoPumps();
    plant.gates.push_back(plants::gate("half-typed", GateKind::orGate, {}));
    const LiveAnswer answer = live(plant);
    EXPECT_EQ(answer.ending, Ending::answered);
    EXPECT_TRUE(answer.figure);
    EXPECT_THAT(answer.errors, IsEmpty());
    ASSERT_THAT(answer.elsewhere, SizeIs(1));
    EXPECT_THAT(answer.elsewhere[0].nodes, ElementsAre("half-typed"));
}

TEST(LiveAnswer, ACircleAndADoubleIdAreErrorsOfTheTree) {
    project::Project plant = plants::twoPumps();
    plant.gates[1].inputs.push_back({"stops", {}});
    EXPECT_EQ(live(plant).ending, Ending::errors);
    plant = plants::twoPumps();
    plant.gates.push_back(plants::gate("panel", GateKind::orGate, {"pump-a"}));
    EXPECT_EQ(live(plant).ending, Ending::errors);
    plant = plants::twoPumps();
    plant.gates[0].inputs.push_back({"nobody", {}});
    const LiveAnswer answer = live(plant);
    EXPECT_EQ(answer.ending, Ending::errors);
    ASSERT_THAT(answer.errors, SizeIs(1));
    EXPECT_THAT(answer.errors[0].nodes, ElementsAre("stops"));
}

TEST(LiveAnswer, WithoutNumbersThereAreStillSets) {
    project::Project plant = plants::twoPumps();
    plant.events[0] = plants::event("pump-a");
    const LiveAnswer answer = live(plant);
    EXPECT_EQ(answer.ending, Ending::answered);
    EXPECT_FALSE(answer.figure);
    EXPECT_THAT(answer.singles, SizeIs(1));
    ASSERT_FALSE(answer.warnings.empty());
    EXPECT_THAT(answer.warnings[0].sentence, HasSubstr("one event has no number"));
    EXPECT_THAT(answer.warnings[0].nodes, ElementsAre("pump-a"));
}

TEST(LiveAnswer, WithoutTopEvents) {
    EXPECT_EQ(live({}).ending, Ending::noTop);
    EXPECT_EQ(live(plants::twoPumps(), "gone").ending, Ending::noTop);
    // Any gate may be asked about.
    const LiveAnswer gate = live(plants::twoPumps(), "no-flow");
    ASSERT_TRUE(gate.figure);
    EXPECT_NEAR(gate.figure->upper, 0.02, 1e-15);
}

TEST(LiveAnswer, TheOrderOfFailuresIsSaidToBeIgnored) {
    project::Project plant = plants::twoPumps();
    plant.gates[1].kind = GateKind::priorityAnd;
    const LiveAnswer answer = live(plant);
    ASSERT_TRUE(answer.figure);
    EXPECT_FALSE(answer.figure->exact);
    EXPECT_EQ(answer.figure->lower, 0);
    EXPECT_NEAR(answer.figure->upper, 1 - 0.95 * 0.98, 1e-15);
    EXPECT_THAT(answer.figure->words, HasSubstr("order"));
}

TEST(LiveAnswer, AnAbsenceIsCalledOne) {
    project::Project plant = plants::twoPumps();
    plant.gates[1] = plants::gate("no-flow", GateKind::notGate, {"pump-a"});
    const LiveAnswer answer = live(plant);
    ASSERT_THAT(answer.singles, SizeIs(2));
    EXPECT_EQ(answer.singles[0].nodes.front(), "pump-a");
    EXPECT_TRUE(answer.singles[0].negated);
    EXPECT_NEAR(*answer.singles[0].probability, 0.9, 1e-15);
}

TEST(LiveAnswer, ATreeThatDoesNotFitGetsAProvenInterval) {
    auto tangle = document::parse(shell::tangle(40, 60));
    ASSERT_TRUE(tangle);
    for (project::Event& event : tangle->project.events)
        event = plants::event(event.id, 0.01);
    const LiveAnswer exact = live(tangle->project);
    ASSERT_TRUE(exact.figure && exact.figure->exact);
    LiveMeans few;
    few.nodesPerModule = 50;
    const LiveAnswer bounded = live(tangle->project, {}, few);
    EXPECT_EQ(bounded.ending, Ending::answered);
    EXPECT_FALSE(bounded.setsKnown);
    ASSERT_TRUE(bounded.figure);
    EXPECT_FALSE(bounded.figure->exact);
    EXPECT_LE(bounded.figure->lower, exact.figure->upper * (1 + 1e-12));
    EXPECT_GE(bounded.figure->upper, exact.figure->upper * (1 - 1e-12));
    EXPECT_LT(bounded.figure->upper, 1.1 * bounded.figure->lower);
    EXPECT_FALSE(bounded.warnings.empty());
}

TEST(LiveAnswer, StopsWhenAsked) {
    std::stop_source stop;
    stop.request_stop();
    LiveMeans means;
    means.stop = stop.get_token();
    EXPECT_EQ(live(plants::twoPumps(), {}, means).ending, Ending::cancelled);
}

TEST(LiveAnswer, TheProblemOfAModeShowsItsEvents) {
    project::Project plant = plants::twoPumps();
    project::FailureMode mode;
    mode.id = "P.dead";
    mode.component = "P";
    plant.modes = {mode};
    plant.events[2].mode = "P.dead";
    const project::Index index(plant);
    const project::Problem rate{project::Severity::error, "", "", "rate of failure mode P.dead", 0};
    EXPECT_THAT(editor::nodesOf(rate, plant, index), ElementsAre("panel"));
    const project::Problem top{project::Severity::error, "", "", "top event T1", 0};
    EXPECT_THAT(editor::nodesOf(top, plant, index), ElementsAre("stops"));
    const project::Problem part{project::Severity::error, "", "", "component P", 0};
    EXPECT_THAT(editor::nodesOf(part, plant, index), ElementsAre("panel"));
    const project::Problem other{project::Severity::error, "", "", "parameter lambda", 0};
    EXPECT_THAT(editor::nodesOf(other, plant, index), IsEmpty());
}
