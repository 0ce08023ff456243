// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/analyses/plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace plants;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

// panel and relief valve bring T1 about alone; the valve's failure is dormant.
project::Project plantWithParts() {
    project::Project plant = twoPumps();
    project::Component boiler, burner, panel;
    boiler.id = "B1";
    boiler.name = "Boiler 1";
    burner.id = "BR";
    burner.name = "burner";
    burner.parent = "B1";
    panel.id = "CP";
    panel.tag = "CP-1";
    panel.name = "control panel";
    panel.location = "burner front";
    panel.parent = "BR";
    plant.components = {boiler, burner, panel};
    project::FailureMode dead, stuck;
    dead.id = "CP.dead";
    dead.component = "CP";
    dead.name = "no power";
    dead.detection = "all lamps out";
    project::Check fuse, lamp;
    fuse.look = "look at the fuse";
    fuse.minutes = 5;
    fuse.tells = "blown: dead";
    lamp.look = "press the lamp test";
    lamp.minutes = 2;
    dead.checks = {fuse, lamp};
    stuck.id = "CP.stuck";
    stuck.component = "CP";
    stuck.name = "trip relay stuck";
    stuck.dormant = true;
    stuck.provedBy = "weekly trip test";
    plant.modes = {dead, stuck};
    plant.events[2].mode = "CP.dead";
    plant.events.push_back(event("relay-stuck"));
    plant.events.back().mode = "CP.stuck";
    plant.gates[0].inputs.push_back({"relay-stuck", {}});
    return plant;
}

} // namespace

TEST(SingleFailures, SayWhatFailsWhereItSitsAndHowItShows) {
    const auto answer = ask("single-failures", plantWithParts());
    ASSERT_TRUE(answer.content);
    const sdk::Table& seen = table(*answer.content, "single-failures");
    ASSERT_EQ(seen.rows.size(), 1u); // not the pumps: one of them alone does nothing
    EXPECT_EQ(text(seen, 0, "top"), "T1");
    EXPECT_EQ(text(seen, 0, "event"), "panel");
    EXPECT_EQ(text(seen, 0, "tag"), "CP-1");
    EXPECT_EQ(text(seen, 0, "component"), "control panel");
    EXPECT_EQ(text(seen, 0, "failure"), "no power");
    EXPECT_EQ(text(seen, 0, "place"), "Boiler 1 > burner > control panel");
    EXPECT_EQ(text(seen, 0, "location"), "burner front");
    EXPECT_EQ(text(seen, 0, "shows"), "all lamps out");
    EXPECT_EQ(text(seen, 0, "check"),
              "look at the fuse (5 min): blown: dead; press the lamp test (2 min)");
    EXPECT_EQ(number(seen, 0, "minutes"), 7);
}

TEST(SingleFailures, DormantOnesStandApart) {
    const auto answer = ask("single-failures", plantWithParts());
    ASSERT_TRUE(answer.content);
    const sdk::Table& dormant = table(*answer.content, "dormant");
    ASSERT_EQ(dormant.rows.size(), 1u);
    EXPECT_EQ(text(dormant, 0, "failure"), "trip relay stuck");
    EXPECT_EQ(text(dormant, 0, "proved-by"), "weekly trip test");
    const sdk::Table& summary = table(*answer.content, "summary");
    EXPECT_EQ(number(summary, 0, "seen"), 1);
    EXPECT_EQ(number(summary, 0, "dormant"), 1);
    ASSERT_EQ(answer.content->marks.size(), 2u);
    for (const sdk::Mark& mark : answer.content->marks)
        EXPECT_EQ(mark.row, 0u) << mark.table;
}

TEST(SingleFailures, NeedNeitherNumbersNorComponents) {
    project::Project plant = twoPumps();
    for (project::Event& one : plant.events)
        one.model = {};
    const auto answer = ask("single-failures", plant);
    ASSERT_TRUE(answer.content);
    const sdk::Table& seen = table(*answer.content, "single-failures");
    ASSERT_EQ(seen.rows.size(), 1u);
    EXPECT_EQ(text(seen, 0, "failure"), "the panel");
    EXPECT_TRUE(empty(seen, 0, "component"));
    EXPECT_TRUE(empty(seen, 0, "probability"));
}

TEST(SingleFailures, SendNobodyToTheMachineWithoutAllCautions) {
    const auto answer = ask("single-failures", twoPumps());
    ASSERT_TRUE(answer.content);
    std::size_t cautions = 0;
    for (const sdk::Note& note : answer.content->notes)
        cautions += note.kind == sdk::NoteKind::caution ? 1 : 0;
    EXPECT_EQ(cautions, 11u);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::caution), HasSubstr("without a full purge"));
}
