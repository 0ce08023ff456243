// SPDX-License-Identifier: GPL-3.0-or-later
// The demo: redundant on paper or in fact?
#include "models/document/document.h"
#include "tests/plugins/analyses/plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

using namespace plants;
using testing::Contains;
using testing::Each;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::UnorderedElementsAre;

namespace {

const project::Project& demo() {
    static const project::Project loaded = [] {
        auto file = document::load(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater");
        return file ? file->project : project::Project{};
    }();
    return loaded;
}

sdk::Values load(const char* component, const char* name = nullptr, const char* value = nullptr) {
    sdk::Values given;
    given.set("load", std::string(component));
    if (name) given.set(name, std::string(value));
    return given;
}

std::vector<std::string> column(const sdk::Result& result, const std::string& id,
                                const std::string& name) {
    const sdk::Table& of = table(result, id);
    std::vector<std::string> cells;
    for (std::size_t row = 0; row < of.rows.size(); ++row)
        cells.push_back(empty(of, row, name) ? "" : text(of, row, name));
    return cells;
}

} // namespace

TEST(Redundancy, Boiler1IsRedundantOnPaper) {
    const auto answer = ask("redundancy", demo(), load("CB-1"));
    ASSERT_TRUE(answer.content);
    EXPECT_EQ(text(table(*answer.content, "loads"), 0, "verdict"), "on paper, not in fact");
    EXPECT_THAT(column(*answer.content, "single-failures", "mode"),
                UnorderedElementsAre("F7.open", "X4:3.loose", "RM-1.output-open", "CB-1.short"));
    const auto shared = column(*answer.content, "shared", "part");
    EXPECT_THAT(shared, Contains("F7 output fuse 24 V: open"));
    EXPECT_THAT(shared, Contains("X4:3 terminal, 24 V return: loose"));
    EXPECT_THAT(column(*answer.content, "single-failures", "where"),
                Contains("the return CB-1 to PS-1, the return CB-1 to BAT"));
    EXPECT_FALSE(answer.content->marks.empty());
}

TEST(Redundancy, Boiler2HasAFuseAndAReturnForEachLeg) {
    const auto answer = ask("redundancy", demo(), load("CB-2"));
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(column(*answer.content, "single-failures", "mode"),
                UnorderedElementsAre("RM-2.output-open", "CB-2.short"));
    EXPECT_THAT(column(*answer.content, "shared", "part"),
                Each(Not(testing::AnyOf(HasSubstr("F27"), HasSubstr("X5")))));
}

// The drawn tree says that the battery board gives nothing without its charger; the network cannot
// know that. In everything else they agree.
TEST(Redundancy, TheDrawnTreesDifferInTheCharger) {
    for (const char* bus : {"CB-1", "CB-2"}) {
        const auto answer = ask("redundancy", demo(), load(bus));
        ASSERT_TRUE(answer.content);
        const auto verdicts = column(*answer.content, "drawn-tree", "verdict");
        const auto sets = column(*answer.content, "drawn-tree", "set");
        ASSERT_GT(verdicts.size(), 1u);
        for (std::size_t row = 1; row < sets.size(); ++row) {
            EXPECT_EQ(verdicts[row], "only drawn: missing in the network?");
            EXPECT_THAT(sets[row], HasSubstr("BCH.no-output"));
        }
        EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), HasSubstr("do not agree"));
    }
}

TEST(Redundancy, ABatteryThatRunsFlatLeavesTheBoardAlone) {
    const auto answer = ask("redundancy", demo(), load("CB-2", "batteries", "run-flat"));
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(column(*answer.content, "single-failures", "mode"), Contains("ERB.dead"));
}

TEST(Redundancy, ATreeWithoutTheFuseIsFoundOut) {
    project::Project plant = demo();
    for (project::Gate& gate : plant.gates)
        if (gate.id == "G-supply-1")
            std::erase_if(gate.inputs, [](const auto& input) { return input.id == "F7.open"; });
    const auto answer = ask("redundancy", plant, load("CB-1", "drawn", "G-supply-1"));
    ASSERT_TRUE(answer.content);
    const auto verdicts = column(*answer.content, "drawn-tree", "verdict");
    const auto sets = column(*answer.content, "drawn-tree", "set");
    std::set<std::string> missing;
    for (std::size_t row = 0; row < sets.size(); ++row)
        if (verdicts[row] == "only traced: missing in the tree?") missing.insert(sets[row]);
    EXPECT_THAT(missing, UnorderedElementsAre("F7.open"));
}

TEST(Redundancy, AgreementIsSaid) {
    project::Project plant = demo();
    for (project::Gate& gate : plant.gates)
        if (gate.id == "G-battery-board")
            std::erase_if(gate.inputs,
                          [](const auto& input) { return input.id == "BCH.no-output"; });
    const auto answer = ask("redundancy", plant, load("CB-1"));
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(column(*answer.content, "drawn-tree", "verdict"),
                testing::ElementsAre("they agree in all 16 sets"));
}

TEST(Redundancy, AllLoadsThatClaimRedundancy) {
    const auto answer = ask("redundancy", demo());
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(column(*answer.content, "loads", "load"),
                UnorderedElementsAre("B1", "NZ-1", "CB-1", "B2", "NZ-2", "CB-2"));
    // The nozzle's oil needs the valves' current: F7 reaches into the fuel.
    EXPECT_THAT(column(*answer.content, "shared", "where"), Contains(HasSubstr("RM-1 to CB-1")));
}

TEST(Redundancy, PathSetsKeepTheSupply) {
    const auto answer = ask("redundancy", demo(), load("CB-1"));
    ASSERT_TRUE(answer.content);
    const sdk::Table& paths = table(*answer.content, "path-sets");
    ASSERT_EQ(paths.rows.size(), 2u); // one for each leg
    for (std::size_t row = 0; row < 2; ++row) {
        EXPECT_THAT(text(paths, row, "set"), HasSubstr("F7.open"));
        EXPECT_GT(number(paths, row, "probability"), 0.99);
    }
}

TEST(Redundancy, SlipsAreAnsweredWithTheNearestName) {
    const auto noLoad = ask("redundancy", demo(), load("CB-11"));
    EXPECT_EQ(noLoad.ending, sdk::Ending::failed);
    EXPECT_THAT(noLoad.problems.front().remedy, HasSubstr("try 'CB-1"));
    const auto noMode = ask("redundancy", demo(), load("CB-1", "breaks", "F7.opens"));
    EXPECT_THAT(noMode.problems.front().remedy, HasSubstr("F7.open"));
    const auto unfed = ask("redundancy", demo(), load("ERB"));
    EXPECT_THAT(unfed.problems.front().what, HasSubstr("nothing feeds ERB"));
    EXPECT_THAT(ask("redundancy", twoPumps()).problems.front().what,
                HasSubstr("no supply network"));
}

TEST(Redundancy, TheUsersListsCount) {
    const auto passes = ask("redundancy", demo(), load("CB-1", "passes", "F7.open, X4:3.loose"));
    ASSERT_TRUE(passes.content);
    EXPECT_THAT(column(*passes.content, "single-failures", "mode"),
                UnorderedElementsAre("RM-1.output-open", "CB-1.short"));
    const auto breaks = ask("redundancy", demo(), load("CB-1", "breaks", "RM-1.input-link"));
    ASSERT_TRUE(breaks.content);
    EXPECT_THAT(column(*breaks.content, "single-failures", "mode"), Contains("RM-1.input-link"));
}
