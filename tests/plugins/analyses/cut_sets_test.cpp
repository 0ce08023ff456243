// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/analyses/plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace plants;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

namespace {

// At least 2 of 4, each 0.1, 0.2, 0.3, 0.4: six sets, by hand 0.02 0.03 0.04 0.06 0.08 0.12 = 0.35.
project::Project twoOfFour() {
    project::Project plant;
    plant.events = {event("e1", 0.1), event("e2", 0.2), event("e3", 0.3), event("e4", 0.4)};
    plant.gates = {gate("g", project::GateKind::vote, {"e1", "e2", "e3", "e4"}, 2)};
    plant.tops = {top("V", "g")};
    return plant;
}

sdk::Values with(const std::string& name, sdk::Value value) {
    sdk::Values values;
    values.set(name, std::move(value));
    return values;
}

} // namespace

TEST(CutSets, ListsSetsWithProbabilityAndShare) {
    const auto answer = ask("cut-sets", twoPumps());
    ASSERT_TRUE(answer.content);
    const sdk::Result& result = *answer.content;
    EXPECT_EQ(result.exactness, sdk::Exactness::exact);

    const sdk::Table& sets = table(result, "sets");
    ASSERT_EQ(sets.rows.size(), 2u);
    EXPECT_EQ(text(sets, 0, "events"), "panel");
    EXPECT_EQ(text(sets, 0, "names"), "the panel");
    EXPECT_EQ(number(sets, 0, "order"), 1);
    EXPECT_DOUBLE_EQ(number(sets, 0, "probability"), 0.05);
    EXPECT_NEAR(number(sets, 0, "share"), 100 * 0.05 / 0.07, 1e-9);
    EXPECT_EQ(text(sets, 1, "events"), "pump-a, pump-b");
    EXPECT_DOUBLE_EQ(number(sets, 1, "probability"), 0.1 * 0.2);

    const sdk::Table& summary = table(result, "summary");
    EXPECT_EQ(number(summary, 0, "sets"), 2);
    EXPECT_EQ(number(summary, 0, "listed"), 2);
    EXPECT_NEAR(number(summary, 0, "rare-event-sum"), 0.07, 1e-15);
    EXPECT_EQ(number(summary, 0, "left-out"), 0);

    ASSERT_EQ(result.marks.size(), 2u);
    EXPECT_EQ(result.marks[1].table, "sets");
    EXPECT_EQ(result.marks[1].row, 1u);
    EXPECT_THAT(result.marks[1].nodes, ElementsAre("pump-a", "pump-b"));
}

TEST(CutSets, WarnsWhereTheSumOfAllSetsIsNoApproximation) {
    const auto answer = ask("cut-sets", twoOfFour());
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                HasSubstr("V: the sum of all sets is 0.35, above 0.1"));
    const auto rare = ask("cut-sets", twoPumps());
    ASSERT_TRUE(rare.content);
    EXPECT_THAT(notes(*rare.content, sdk::NoteKind::warning), Not(HasSubstr("sum of all sets")));
}

TEST(CutSets, CountsByOrder) {
    const auto answer = ask("cut-sets", twoPumps());
    ASSERT_TRUE(answer.content);
    const sdk::Table& counts = table(*answer.content, "counts");
    ASSERT_EQ(counts.rows.size(), 2u);
    EXPECT_EQ(number(counts, 0, "order"), 1);
    EXPECT_EQ(number(counts, 0, "sets"), 1);
    EXPECT_EQ(number(counts, 1, "order"), 2);
    EXPECT_EQ(number(counts, 1, "sets"), 1);
}

TEST(CutSets, ALimitSaysHowMuchItLeftOut) {
    sdk::Values values = with("limit", std::int64_t{2});
    values.set("sort", std::string("probability"));
    const auto answer = ask("cut-sets", twoOfFour(), values);
    ASSERT_TRUE(answer.content);
    const sdk::Result& result = *answer.content;
    EXPECT_EQ(result.exactness, sdk::Exactness::bounded);
    const sdk::Table& sets = table(result, "sets");
    ASSERT_EQ(sets.rows.size(), 2u);
    EXPECT_EQ(text(sets, 0, "events"), "e3, e4");
    EXPECT_EQ(text(sets, 1, "events"), "e2, e4");
    const sdk::Table& summary = table(result, "summary");
    EXPECT_EQ(number(summary, 0, "sets"), 6);
    EXPECT_NEAR(number(summary, 0, "rare-event-sum"), 0.35, 1e-14);
    EXPECT_NEAR(number(summary, 0, "left-out"), 0.35 - 0.12 - 0.08, 1e-14);
    EXPECT_THAT(notes(result, sdk::NoteKind::warning),
                HasSubstr("2 of 6 sets are listed; the cut-offs left out 4, whose probabilities "
                          "add up to 0.15 of 0.35"));
}

TEST(CutSets, CutOffsByOrderAndProbability) {
    const auto small = ask("cut-sets", twoPumps(), with("max-order", std::int64_t{1}));
    ASSERT_TRUE(small.content);
    EXPECT_EQ(table(*small.content, "sets").rows.size(), 1u);
    EXPECT_NEAR(number(table(*small.content, "summary"), 0, "left-out"), 0.02, 1e-15);

    const auto likely = ask("cut-sets", twoOfFour(), with("min-probability", 0.05));
    ASSERT_TRUE(likely.content);
    EXPECT_EQ(table(*likely.content, "sets").rows.size(), 3u); // 0.06, 0.08, 0.12
}

TEST(CutSets, WithoutNumbersTheSetsAreStillThere) {
    project::Project plant = twoPumps();
    plant.events[1] = event("pump-b");
    const auto answer = ask("cut-sets", plant, with("sort", std::string("probability")));
    ASSERT_TRUE(answer.content);
    const sdk::Result& result = *answer.content;
    const sdk::Table& sets = table(result, "sets");
    ASSERT_EQ(sets.rows.size(), 2u);
    EXPECT_DOUBLE_EQ(number(sets, 0, "probability"), 0.05); // all its events have numbers
    EXPECT_TRUE(empty(sets, 1, "probability"));
    EXPECT_TRUE(empty(sets, 0, "share"));
    EXPECT_TRUE(empty(table(result, "summary"), 0, "rare-event-sum"));
    EXPECT_THAT(notes(result, sdk::NoteKind::warning), HasSubstr("No number: pump-b."));
}

TEST(CutSets, AProbabilityCutOffNeedsNumbers) {
    project::Project plant = twoPumps();
    plant.events[1] = event("pump-b");
    const auto answer = ask("cut-sets", plant, with("min-probability", 1e-9));
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("pump-b"));
}

TEST(CutSets, APrimeImplicantSaysNot) {
    project::Project plant;
    plant.events = {event("a", 0.1), event("b", 0.2)};
    plant.gates = {gate("x", project::GateKind::exactlyOne, {"a", "b"})};
    plant.tops = {top("X", "x")};
    const auto answer = ask("cut-sets", plant);
    ASSERT_TRUE(answer.content);
    const sdk::Table& sets = table(*answer.content, "sets");
    ASSERT_EQ(sets.rows.size(), 2u);
    EXPECT_EQ(text(sets, 0, "events"), "not a, b"); // 0.9 x 0.2 = 0.18, the more probable one
    EXPECT_NEAR(number(sets, 0, "probability"), 0.18, 1e-15);
    EXPECT_EQ(text(sets, 1, "events"), "a, not b");
    EXPECT_EQ(text(sets, 1, "names"), "the a; not the b");
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::method), HasSubstr("prime implicants"));
}

TEST(CutSets, AllTopEventsOrTheOneThatIsNamed) {
    project::Project plant = twoPumps();
    plant.tops.push_back(top("T2", "no-flow"));
    const auto all = ask("cut-sets", plant);
    ASSERT_TRUE(all.content);
    EXPECT_EQ(table(*all.content, "summary").rows.size(), 2u);
    const auto one = ask("cut-sets", plant, with("top", std::string("T2")));
    ASSERT_TRUE(one.content);
    EXPECT_EQ(table(*one.content, "sets").rows.size(), 1u);
    const auto gateItself = ask("cut-sets", plant, with("top", std::string("no-flow")));
    ASSERT_TRUE(gateItself.content);
    EXPECT_EQ(text(table(*gateItself.content, "summary"), 0, "top"), "no-flow");
    const auto unknown = ask("cut-sets", plant, with("top", std::string("T3")));
    EXPECT_EQ(unknown.ending, sdk::Ending::failed);
}

TEST(CutSets, HouseEventsCanDecideAlone) {
    project::Project plant = twoPumps();
    plant.events[2].kind = project::EventKind::house;
    plant.events[2].model = {};
    plant.events[2].state = true;
    const auto answer = ask("cut-sets", plant);
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), HasSubstr("T1 always happens"));
}

TEST(CutSets, IgnoredOrderAndCommonCausesAreSaid) {
    project::Project plant = twoPumps();
    plant.gates[1].kind = project::GateKind::priorityAnd;
    project::CommonCauseGroup group;
    group.id = "CC1";
    group.members = {{"pump-a", {}}, {"pump-b", {}}};
    plant.commonCauses = {group};
    const auto answer = ask("cut-sets", plant);
    ASSERT_TRUE(answer.content);
    const std::string warnings = notes(*answer.content, sdk::NoteKind::warning);
    EXPECT_THAT(warnings, HasSubstr("order of its failures was ignored"));
    EXPECT_THAT(warnings, HasSubstr("CC1"));
}

TEST(CutSets, ARequestToStopIsHeard) {
    std::stop_source source;
    source.request_stop();
    sdk::Job job;
    job.stop = source.get_token();
    const auto answer = ask("cut-sets", twoPumps(), {}, job);
    EXPECT_EQ(answer.ending, sdk::Ending::cancelled);
    EXPECT_EQ(answer.problems.size(), 1u);
}

TEST(CutSets, StandingCautionsComeLastAndTheProjectsOwnAreAdded) {
    project::Project plant = twoPumps();
    plant.cautions = {"Mind the step."};
    const auto answer = ask("cut-sets", plant);
    ASSERT_TRUE(answer.content);
    const std::string cautions = notes(*answer.content, sdk::NoteKind::caution);
    EXPECT_THAT(cautions, HasSubstr("replaces no maker's manual"));
    EXPECT_THAT(cautions, HasSubstr("is not \"cannot happen\""));
    EXPECT_THAT(cautions, HasSubstr("Who signs decides"));
    EXPECT_THAT(cautions, HasSubstr("Mind the step."));
    EXPECT_EQ(answer.content->notes.back().sentence, "Mind the step.");
}

TEST(CutSets, AProjectWithoutTopEventsSaysWhatToDo) {
    project::Project plant = twoPumps();
    plant.tops.clear();
    const auto answer = ask("cut-sets", plant);
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("no top event"));
}
