// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/periods/timed_plant.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace plants;
using testing::HasSubstr;

namespace {

std::size_t rowOf(const sdk::Table& table, const std::string& column, const std::string& wanted) {
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (text(table, row, column) == wanted) return row;
    ADD_FAILURE() << "no row with " << wanted;
    return 0;
}

// As twoPumps(), the pumps on one component and the panel alone; the pumps are also a group.
project::Project withParts() {
    project::Project plant = twoPumps();
    project::Component skid;
    skid.id = "skid";
    skid.tag = "SK-1";
    plant.components = {skid};
    for (std::size_t i = 0; i < 2; ++i) {
        project::FailureMode mode;
        mode.id = "m" + std::to_string(i);
        mode.component = "skid";
        mode.model = plant.events[i].model;
        plant.modes.push_back(mode);
        plant.events[i].mode = mode.id;
    }
    project::CommonCauseGroup group;
    group.id = "CC";
    group.factors = {quantity(0.1, project::Unit::number)};
    group.members = {{"pump-a", {}}, {"pump-b", {}}};
    plant.commonCauses = {group};
    return plant;
}

} // namespace

TEST(ImportancePlugin, AllMeasuresOfAHandWorkedTree) { // 4.1: A + B.C, q 0.01, 0.1, 0.2
    project::Project plant = twoPumps();
    plant.events[2] = event("panel", 0.01);
    const auto answer = ask("importance", plant);
    ASSERT_TRUE(answer.content);
    const sdk::Table& events = table(*answer.content, "events");
    const sdk::Table& other = table(*answer.content, "other-measures");
    ASSERT_EQ(events.rows.size(), 3u);
    struct Row {
        const char* event;
        double birnbaum, criticality, union_, achievement, reduction, sum;
    };
    const Row rows[] = {
        {"panel", 0.98, 0.3288590604, 0.3355704698, 33.55704698, 1.49, 0.01 / 0.03},
        {"pump-a", 0.198, 0.6644295302, 0.6711409396, 6.979865772, 2.98, 0.02 / 0.03},
        {"pump-b", 0.099, 0.6644295302, 0.6711409396, 3.657718121, 2.98, 0.02 / 0.03}};
    for (const Row& row : rows) {
        SCOPED_TRACE(row.event);
        const std::size_t r = rowOf(events, "event", row.event);
        EXPECT_NEAR(number(events, r, "fussell-vesely"), 100 * row.union_, 1e-7);
        EXPECT_NEAR(number(events, r, "risk-achievement"), row.achievement, 1e-7);
        EXPECT_NEAR(number(events, r, "risk-reduction"), row.reduction, 1e-7);
        const std::size_t o = rowOf(other, "event", row.event);
        EXPECT_NEAR(number(other, o, "birnbaum"), row.birnbaum, 1e-9);
        EXPECT_NEAR(number(other, o, "criticality"), 100 * row.criticality, 1e-7);
        EXPECT_NEAR(number(other, o, "sum-of-sets"), 100 * row.sum, 1e-9);
    }
    EXPECT_EQ(text(events, 0, "event"), "pump-a"); // sorted by Fussell-Vesely
}

TEST(ImportancePlugin, SortsByWhatIsWished) {
    project::Project plant = twoPumps();
    plant.events[2] = event("panel", 0.01);
    sdk::Values values;
    values.set("sort", std::string("risk-achievement"));
    values.set("rows", std::int64_t{1});
    const auto answer = ask("importance", plant, values);
    ASSERT_TRUE(answer.content);
    const sdk::Table& events = table(*answer.content, "events");
    ASSERT_EQ(events.rows.size(), 1u);
    EXPECT_EQ(text(events, 0, "event"), "panel");
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::method),
                HasSubstr("2 rows that weigh least"));
}

TEST(ImportancePlugin, ComponentsAndGroupsAsOne) {
    const auto answer = ask("importance", withParts()); // Q = 0.05 + 0.95 * 0.02 = 0.069
    ASSERT_TRUE(answer.content);
    for (const char* id : {"components", "common-cause-groups"}) {
        const sdk::Table& groups = table(*answer.content, id);
        ASSERT_EQ(groups.rows.size(), 1u) << id;
        EXPECT_EQ(std::get<std::int64_t>(cell(groups, 0, "events")), 2);
        EXPECT_NEAR(number(groups, 0, "reduction"), 100 * (1 - 0.05 / 0.069), 1e-9);
        EXPECT_NEAR(number(groups, 0, "risk-achievement"), 1 / 0.069, 1e-9);
        EXPECT_NEAR(number(groups, 0, "risk-reduction"), 0.069 / 0.05, 1e-9);
        EXPECT_NEAR(number(groups, 0, "birnbaum"), 0.95, 1e-12);
    }
    EXPECT_EQ(text(table(*answer.content, "components"), 0, "component"), "SK-1");
}

TEST(ImportancePlugin, OfAnInitiatorItSpeaksOfTheFrequency) {
    const auto answer = ask("importance", lowWater());
    ASSERT_TRUE(answer.content);
    EXPECT_TRUE(table(*answer.content, "events").rows.empty()); // it is never there
    const sdk::Table& frequency = table(*answer.content, "frequency");
    ASSERT_EQ(frequency.rows.size(), 2u);
    const std::size_t low = rowOf(frequency, "event", "low");
    EXPECT_NEAR(number(frequency, low, "completes"), 100, 1e-9);
    EXPECT_NEAR(number(frequency, 1 - low, "risk-achievement"), 1 / 0.0425485655782, 1e-8);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                HasSubstr("initiating events (low)"));
}

TEST(ImportancePlugin, WarnsWhereSetsAreNotRare) {
    project::Project plant = twoPumps();
    plant.events[2] = event("panel", 0.4);
    const auto answer = ask("importance", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                HasSubstr("sum of all sets is 0.42"));
}

TEST(ImportancePlugin, SaysWhichEventHasNoNumber) {
    project::Project plant = twoPumps();
    plant.events[1] = event("pump-b");
    const auto answer = ask("importance", plant);
    ASSERT_FALSE(answer.content);
    EXPECT_THAT(answer.problems.at(0).what, HasSubstr("pump-b"));
}
