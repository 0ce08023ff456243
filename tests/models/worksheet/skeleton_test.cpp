// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/skeleton.h"
#include "tests/models/worksheet/boilers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stdexcept>

#include <algorithm>
#include <map>

namespace cutwater::worksheet {

using namespace project;
using ::testing::HasSubstr;

namespace {

Skeleton proposed(const Project& p, const std::string& effect) {
    auto skeleton = proposeTree(p, Index(p), effect);
    if (!skeleton) throw std::runtime_error(skeleton.problems().front().what);
    return std::move(*skeleton);
}

std::set<std::string> all(const Skeleton& skeleton) {
    std::set<std::string> ids;
    for (const Proposal& proposal : skeleton.proposals)
        ids.insert(proposal.id);
    return ids;
}

// Whether the top gate occurs when exactly these failure modes have: gates evaluated bottom up by
// asking again and again until nothing changes. Shares nothing with the engine.
bool occurs(const Project& p, const Id& top, const std::set<std::string>& failed) {
    std::map<std::string, bool> state;
    for (const Event& event : p.events)
        state[event.id] = failed.contains(event.mode) && !event.mode.empty();
    for (std::size_t round = 0; round <= p.gates.size(); ++round)
        for (const Gate& gate : p.gates) {
            const auto is = [&](const Reference& input) { return state[input.id]; };
            state[gate.id] = gate.kind == GateKind::andGate
                                 ? std::all_of(gate.inputs.begin(), gate.inputs.end(), is)
                                 : std::any_of(gate.inputs.begin(), gate.inputs.end(), is);
        }
    return state[top];
}

} // namespace

TEST(Skeleton, HoldsEachModeOfTheEffectAsASingleFailure) {
    const Project p = test::boilers();
    const Skeleton skeleton = proposed(p, "boiler without steam");
    const auto made = acceptProposals(p, skeleton, all(skeleton));
    ASSERT_TRUE(made) << made.problems().front().what;
    const Id top = made->tops.back().node.id;
    EXPECT_EQ(made->tops.back().endEffects.front(), "boiler without steam");
    for (const char* id : {"electrodes.fouled", "electrodes.worn", "panel.dead"})
        EXPECT_TRUE(occurs(*made, top, {id})) << id;
    EXPECT_FALSE(occurs(*made, top, {"pump-a.stops", "pump-b.stops"}));
    EXPECT_FALSE(occurs(*made, top, {}));
}

// The panel has two feeds, each through a diode: only both together take it down.
TEST(Skeleton, PutsAnAndWhereTwoFeedsArrive) {
    const Project p = test::boilers();
    const Skeleton skeleton = proposed(p, "boiler without steam");
    const auto made = acceptProposals(p, skeleton, all(skeleton));
    ASSERT_TRUE(made);
    const Id top = made->tops.back().node.id;
    EXPECT_FALSE(occurs(*made, top, {"mains.dead"}));
    EXPECT_FALSE(occurs(*made, top, {"battery.dead"}));
    EXPECT_TRUE(occurs(*made, top, {"mains.dead", "battery.dead"}));
    EXPECT_TRUE(occurs(*made, top, {"diode-a.open", "battery.dead"}));
    EXPECT_FALSE(occurs(*made, top, {"diode-a.open", "mains.dead"})); // both in one leg
}

TEST(Skeleton, PutsAnAndWhereTwoSuppliersAreOfAKind) {
    Project p = test::boilers();
    p.connections.clear();
    for (Component& component : p.components)
        if (component.id == "burner") component.suppliedBy = {{"pump-a", {}}, {"pump-b", {}}};
    FailureMode carbon;
    carbon.id = "burner.carbon";
    carbon.component = "burner";
    carbon.name = "carboned";
    carbon.endEffect = "no fire";
    p.modes.push_back(carbon);
    const Skeleton skeleton = proposed(p, "no fire");
    const auto made = acceptProposals(p, skeleton, all(skeleton));
    ASSERT_TRUE(made);
    const Id top = made->tops.back().node.id;
    EXPECT_TRUE(occurs(*made, top, {"burner.carbon"}));
    EXPECT_FALSE(occurs(*made, top, {"pump-a.stops"}));
    EXPECT_TRUE(occurs(*made, top, {"pump-a.stops", "pump-b.stops"}));
    // Events that are there already are used, not made again.
    EXPECT_EQ(std::count_if(made->events.begin(), made->events.end(),
                            [](const Event& event) { return event.mode == "pump-a.stops"; }),
              1);
}

TEST(Skeleton, AcceptedInPartKeepsWhatAnOrHolds) {
    const Project p = test::boilers();
    const Skeleton skeleton = proposed(p, "boiler without steam");
    const auto made = acceptProposals(p, skeleton, {"P1"});
    ASSERT_TRUE(made) << made.problems().front().what;
    EXPECT_EQ(made->gates.size(), p.gates.size() + 1);
    const Id top = made->tops.back().node.id;
    EXPECT_TRUE(occurs(*made, top, {"electrodes.worn"}));
    EXPECT_TRUE(occurs(*made, top, {"panel.dead"}));
    // The "and" of the feeds was not accepted: it is left out whole.
    EXPECT_FALSE(occurs(*made, top, {"mains.dead", "battery.dead"}));
}

TEST(Skeleton, EveryProposalHasItsReasonAndInputs) {
    const Project p = test::boilers();
    const Skeleton skeleton = proposed(p, "BOILER without steam.");
    for (const Proposal& proposal : skeleton.proposals) {
        EXPECT_FALSE(proposal.reason.empty());
        EXPECT_FALSE(proposal.gate.inputs.empty()) << proposal.gate.id;
    }
}

TEST(Skeleton, SuppliesInACircleEnd) {
    Project p = test::boilers();
    for (Component& component : p.components) {
        if (component.id == "panel") component.suppliedBy = {{"mains", {}}};
        if (component.id == "mains") component.suppliedBy = {{"panel", {}}};
    }
    const Skeleton skeleton = proposed(p, "boiler without steam");
    EXPECT_THAT(skeleton.remarks, ::testing::Contains(HasSubstr("circle")));
    EXPECT_TRUE(acceptProposals(p, skeleton, all(skeleton)));
}

TEST(Skeleton, MistakesAreOneSentence) {
    const Project p = test::boilers();
    const auto near = proposeTree(p, Index(p), "boiler without stean");
    ASSERT_FALSE(near);
    EXPECT_THAT(near.problems().front().remedy, HasSubstr("boiler without steam"));
    const Skeleton skeleton = proposed(p, "boiler without steam");
    EXPECT_FALSE(acceptProposals(p, skeleton, {"P99", "P1"}));
    EXPECT_FALSE(acceptProposals(p, skeleton, {"P2"}));
    EXPECT_FALSE(acceptProposals(p, skeleton, {}));
}

} // namespace cutwater::worksheet
