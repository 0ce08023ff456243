// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/cause_proposals.h"
#include "tests/models/worksheet/boilers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater::worksheet {

using namespace project;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

namespace {

std::vector<CauseKind> kinds(const Project& p) {
    std::vector<CauseKind> all;
    for (const CauseProposal& one : proposeCauses(p, Index(p)).proposals)
        all.push_back(one.kind);
    return all;
}

} // namespace

// The two pumps stand below different inputs of an "and", in one room, and are of one type.
TEST(CauseProposals, NameWhatIsShared) {
    const Project p = test::boilers();
    const auto found = proposeCauses(p, Index(p));
    ASSERT_EQ(found.proposals.size(), 2u);
    EXPECT_EQ(found.proposals[0].kind, CauseKind::location);
    EXPECT_EQ(found.proposals[0].shared, "pump room");
    EXPECT_THAT(found.proposals[0].events, ElementsAre(0u, 1u));
    EXPECT_THAT(found.proposals[0].gates, ElementsAre(1u));
    EXPECT_THAT(found.proposals[0].reason, HasSubstr("gate pumps counts on them"));
    EXPECT_EQ(found.proposals[1].kind, CauseKind::type);
}

TEST(CauseProposals, SupplyFuelAndMaintenance) {
    Project p = test::boilers();
    for (Component& component : p.components)
        if (component.type == "pump") {
            component.location.clear();
            component.type = component.id;
            component.suppliedBy = {{"mains", {}}};
            Connection oil;
            oil.id = "oil-" + component.id;
            oil.medium = "fuel oil";
            oil.from = "burner";
            oil.to = component.id;
            p.connections.push_back(oil);
        }
    for (const char* id : {"pump-a.stops", "pump-b.stops"})
        test::mode(p, id).provedBy = "change-over each week";
    EXPECT_THAT(kinds(p), ElementsAre(CauseKind::supply, CauseKind::fuel, CauseKind::maintenance));
}

TEST(CauseProposals, NothingWhereNoGateCountsOnIt) {
    Project p = test::boilers();
    p.gates[1].kind = GateKind::orGate;
    EXPECT_TRUE(kinds(p).empty());
    p.gates[1].kind = GateKind::vote;
    p.gates[1].k = 1;
    EXPECT_TRUE(kinds(p).empty());
    p.gates[1].k = 2;
    EXPECT_EQ(kinds(p).size(), 2u);
    // Both below one input: no pair that the gate counts on.
    Gate lower = p.gates[1];
    lower.id = "lower";
    lower.kind = GateKind::orGate;
    p.gates.push_back(lower);
    p.gates[1].kind = GateKind::andGate;
    p.gates[1].inputs = {{"lower", {}}, {"other", {}}};
    EXPECT_TRUE(kinds(p).empty());
}

TEST(CauseProposals, SayWhatIsInAGroupAlready) {
    Project p = test::boilers();
    CommonCauseGroup group;
    group.id = "CC";
    group.members = {{"pump-a.stops", {}}, {"pump-b.stops", {}}};
    p.commonCauses = {group};
    for (const CauseProposal& one : proposeCauses(p, Index(p)).proposals)
        EXPECT_THAT(one.groups, ElementsAre("CC"));
}

} // namespace cutwater::worksheet
