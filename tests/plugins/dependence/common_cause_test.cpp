// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/analyses/plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace plants;
using testing::HasSubstr;
using testing::Not;

namespace {

// T1: panel dead (0.05), or pump-a and pump-b fail; the pumps share a cause.
project::Project pair(double a, double b, double beta) {
    project::Project plant = twoPumps();
    plant.events[0] = event("pump-a", a);
    plant.events[1] = event("pump-b", b);
    project::CommonCauseGroup group;
    group.id = "CC-pumps";
    group.reason = "one suction";
    project::Quantity factor;
    factor.value = beta;
    factor.unit = project::Unit::number;
    group.factors = {factor};
    group.members = {{"pump-a", {}}, {"pump-b", {}}};
    plant.commonCauses = {group};
    return plant;
}

sdk::Values rule(const char* word) {
    sdk::Values values;
    values.set("unequal", std::string(word));
    return values;
}

} // namespace

TEST(CommonCauses, SideBySide) {
    const auto answer = ask("common-cause", pair(0.01, 0.01, 0.1));
    ASSERT_TRUE(answer.content);
    const sdk::Table& tops = table(*answer.content, "top-events");
    ASSERT_EQ(tops.rows.size(), 1u);
    EXPECT_NEAR(number(tops, 0, "without"), 1 - 0.95 * (1 - 1e-4), 1e-15);
    EXPECT_NEAR(number(tops, 0, "with"), 1 - 0.95 * (1 - 0.001) * (1 - 0.009 * 0.009), 1e-15);
    EXPECT_EQ(std::get<std::int64_t>(cell(tops, 0, "sets-without")), 2);
    EXPECT_EQ(std::get<std::int64_t>(cell(tops, 0, "sets-with")), 3);
    EXPECT_EQ(std::get<std::int64_t>(cell(tops, 0, "singles-without")), 1);
    EXPECT_EQ(std::get<std::int64_t>(cell(tops, 0, "singles-added")), 1);
    const sdk::Table& added = table(*answer.content, "single-failures-added");
    ASSERT_EQ(added.rows.size(), 1u);
    EXPECT_EQ(text(added, 0, "cause"), "pump-a + pump-b [common]");
    EXPECT_NEAR(number(added, 0, "probability"), 0.001, 1e-16);
    EXPECT_EQ(text(added, 0, "reason"), "one suction");
    const sdk::Table& effects = table(*answer.content, "effects");
    ASSERT_EQ(effects.rows.size(), 1u);
    EXPECT_NEAR(number(effects, 0, "without-it"), number(tops, 0, "without"), 1e-15);
}

TEST(CommonCauses, UnequalMembersByEitherRule) {
    const project::Project plant = pair(0.01, 0.0004, 0.1); // geometric mean 0.002
    const auto mean = ask("common-cause", plant);
    const auto smallest = ask("common-cause", plant, rule("smallest"));
    ASSERT_TRUE(mean.content && smallest.content);
    const auto cause = [](const sdk::Result& result) {
        return number(table(result, "single-failures-added"), 0, "probability");
    };
    EXPECT_NEAR(cause(*mean.content), 0.0002, 1e-16);
    EXPECT_NEAR(cause(*smallest.content), 0.00004, 1e-17);
    EXPECT_THAT(notes(*mean.content, sdk::NoteKind::warning), HasSubstr("not equally bad"));
    EXPECT_THAT(notes(*smallest.content, sdk::NoteKind::warning), HasSubstr("the smallest of"));
}

TEST(CommonCauses, ABetterMemberGivesAwayNoMoreThanItHas) {
    // Geometric mean 0.01; a tenth of it is the better member's whole 0.001.
    const auto answer = ask("common-cause", pair(0.1, 0.0001, 0.1));
    ASSERT_TRUE(answer.content);
    EXPECT_NEAR(number(table(*answer.content, "single-failures-added"), 0, "probability"), 0.0001,
                1e-16);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), Not(HasSubstr("give away more")));
}

TEST(CommonCauses, MembersInSeriesMakeItLessLikelyAndTheResultSaysWhy) {
    project::Project plant = pair(0.1, 0.1, 0.5);
    plant.gates[1].kind = project::GateKind::orGate;
    const auto answer = ask("common-cause", plant);
    ASSERT_TRUE(answer.content);
    const sdk::Table& tops = table(*answer.content, "top-events");
    EXPECT_NEAR(number(tops, 0, "with"), 1 - 0.95 * 0.95 * 0.95 * 0.95, 1e-15);
    EXPECT_LT(number(tops, 0, "with"), number(tops, 0, "without"));
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::method), HasSubstr("counted once"));
    EXPECT_TRUE(table(*answer.content, "single-failures-added").rows.empty()); // no news
}

TEST(CommonCauses, AMemberOutsideTheTreeLeavesNothingToExpand) {
    project::Project plant = pair(0.01, 0.01, 0.1);
    plant.gates[1].inputs = {{"pump-a", {}}};
    const auto answer = ask("common-cause", plant);
    ASSERT_TRUE(answer.content);
    const sdk::Table& tops = table(*answer.content, "top-events");
    EXPECT_EQ(number(tops, 0, "with"), number(tops, 0, "without"));
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), HasSubstr("nothing changes"));
}

TEST(CommonCauses, AMemberInTwoGroupsThatAskForTooMuch) {
    project::Project plant = pair(0.01, 0.01, 0.7);
    plant.commonCauses.push_back(plant.commonCauses.front());
    plant.commonCauses.back().id = "CC-other";
    const auto answer = ask("common-cause", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), HasSubstr("give away more"));
    EXPECT_NEAR(number(table(*answer.content, "top-events"), 0, "with"),
                1 - 0.95 * (1 - 0.007) * (1 - 0.007), 1e-15);
}

TEST(CommonCauses, TooManyCausesAreRefusedInASentence) {
    project::Project plant = twoPumps();
    project::CommonCauseGroup group;
    group.id = "CC-many";
    group.kind = project::CommonCauseKind::alpha;
    plant.events.clear();
    plant.gates[0].inputs.clear();
    for (int i = 0; i < 20; ++i) {
        const std::string id = "e" + std::to_string(i);
        plant.events.push_back(event(id, 0.01));
        plant.gates[0].inputs.push_back({id, {}});
        group.members.push_back({id, {}});
        project::Quantity factor;
        factor.value = 0.05;
        factor.unit = project::Unit::number;
        group.factors.push_back(factor);
    }
    plant.gates[0].kind = project::GateKind::andGate;
    plant.gates.resize(1);
    plant.commonCauses = {group};
    const auto answer = ask("common-cause", plant);
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("CC-many of 20 members"));
}

TEST(CommonCauses, AProjectWithoutGroupsIsToldSo) {
    const auto answer = ask("common-cause", twoPumps());
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    EXPECT_THAT(answer.problems.front().what, HasSubstr("no common-cause group"));
}
