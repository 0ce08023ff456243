// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/fragment.h"

#include "models/project/edits/add.h"
#include "tests/models/project/edits/small_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::project::edits;
using testing::HasSubstr;

namespace {

Project otherProject() {
    Project project;
    project.gates = {smallGate("stop", "engine stops", GateKind::orGate, {"oil"})};
    project.events = {smallEvent("oil", "no oil")};
    TopEvent top;
    top.id = "T1";
    top.node.id = "stop";
    project.tops = {top};
    return project;
}

} // namespace

TEST(Fragment, HoldsWhatIsNeededAndNoMore) {
    const auto fragment = copyNodes(smallTree(), {"stop"});
    ASSERT_TRUE(fragment);
    EXPECT_EQ(fragment->gates.size(), 2u);
    EXPECT_EQ(fragment->modes.size(), 1u) << "FAN.no-start is not used";
    EXPECT_EQ(fragment->components.size(), 2u) << "the fan, and the plant it is part of";
    EXPECT_FALSE(hasErrors(validate(*fragment)));
    EXPECT_TRUE(copyNodes(smallTree(), {"pump-a"})->components.empty());
    EXPECT_FALSE(copyNodes(smallTree(), {"gone"}));
}

TEST(Fragment, IntoAnotherProject) {
    const auto result = paste(otherProject(), *copyNodes(smallTree(), {"stop"}), {"stop", 0});
    ASSERT_TRUE(result) << sentenceOf(result);
    EXPECT_EQ(inputsOf(result->project, "stop"), "stop-2 oil");
    EXPECT_EQ(inputsOf(result->project, "stop-2"), "fuel fan");
    EXPECT_EQ(result->project.modes.size(), 1u);
    EXPECT_EQ(result->project.components.size(), 2u);
    EXPECT_FALSE(hasErrors(validate(result->project)));
}

TEST(Fragment, IntoItsOwnProjectTheFailureModeStaysOneEvent) {
    const Project project = addEvent(smallTree(), {}, "other boiler stops")->project;
    const auto result = paste(project, *copyNodes(project, {"stop"}), {"other-boiler-stops"});
    ASSERT_TRUE(result) << sentenceOf(result);
    EXPECT_EQ(inputsOf(result->project, "other-boiler-stops"), "stop-2");
    EXPECT_EQ(inputsOf(result->project, "stop-2"), "fuel-2 fan");
    EXPECT_EQ(inputsOf(result->project, "fuel-2"), "pump-a-2 pump-b-2");
    EXPECT_EQ(result->project.modes, project.modes);
    EXPECT_EQ(result->project.components, project.components);
}

TEST(Fragment, OtherFactsUnderTheSameIdStayApart) {
    Project other = otherProject();
    other.components = smallTree().components;
    other.components[1].name = "another fan";
    other.modes = smallTree().modes;
    const auto result = paste(other, *copyNodes(smallTree(), {"fan"}), {"stop"});
    ASSERT_TRUE(result) << sentenceOf(result);
    const Event* fan = eventOf(result->project, "fan");
    ASSERT_NE(fan, nullptr);
    EXPECT_EQ(fan->mode, "FAN.stops-2");
    EXPECT_EQ(result->project.modes.back().component, "FAN-2");
    EXPECT_EQ(result->project.components.back().parent, "PLANT");
    EXPECT_FALSE(hasErrors(validate(result->project)));
}

TEST(Fragment, SharedParametersComeAlong) {
    Project from = smallTree();
    Parameter parameter;
    parameter.id = "rate";
    parameter.quantity.value = 2;
    parameter.quantity.unit = Unit::perYear;
    from.parameters = {parameter};
    Quantity named;
    named.parameter = "rate";
    from.events[0].model.kind = ModelKind::mission;
    from.events[0].model.set(Role::rate, named);
    Project to = otherProject();
    to.parameters = {parameter};
    to.parameters[0].quantity.value = 3;
    const auto result = paste(to, *copyNodes(from, {"pump-a"}), {"stop"});
    ASSERT_TRUE(result);
    EXPECT_EQ(result->project.parameters.size(), 2u);
    EXPECT_EQ(eventOf(result->project, "pump-a")->model.find(Role::rate)->parameter, "rate-2");
}

TEST(Fragment, NothingToPasteIsSaid) {
    EXPECT_THAT(sentenceOf(paste(smallTree(), {}, {"stop"})), HasSubstr("nothing to paste"));
}
