// SPDX-License-Identifier: GPL-3.0-or-later
// Common causes counted in every analysis: the answers must be those of a plant in which somebody
// has drawn the causes as events of their own, and the notes must say which of the two was done.
#include "tests/plugins/periods/timed_plant.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace plants;
using testing::HasSubstr;
using testing::Not;

namespace {

constexpr double kBeta = 0.1;

project::CommonCauseGroup pairGroup(const char* a, const char* b) {
    project::CommonCauseGroup group;
    group.id = "CC";
    group.name = "same fuel";
    group.factors = {quantity(kBeta, project::Unit::number)};
    group.members = {{a, {}}, {b, {}}};
    return group;
}

// Two probes of 1e-5/h tested every 8760 h, in one group.
project::Project groupedProbes() {
    project::Project plant = twoProbes(false);
    plant.commonCauses = {pairGroup("probe-a", "probe-b")};
    return plant;
}

// The same with the cause drawn by hand.
project::Project drawnProbes(double beta = kBeta) {
    project::Project plant;
    plant.events = {tested("a", (1 - beta) * 1e-5, 8760), tested("both", beta * 1e-5, 8760),
                    tested("b", (1 - beta) * 1e-5, 8760)};
    plant.gates = {gate("blind", project::GateKind::orGate, {"both", "alone"}),
                   gate("alone", project::GateKind::andGate, {"a", "b"})};
    plant.tops = {top("T1", "blind")};
    return plant;
}

// Panel dead 0.05, or both pumps, 0.02 each, in one group.
project::Project groupedPumps() {
    project::Project plant = twoPumps();
    plant.events[0] = event("pump-a", 0.02);
    plant.events[1] = event("pump-b", 0.02);
    plant.commonCauses = {pairGroup("pump-a", "pump-b")};
    return plant;
}

sdk::Values counted() {
    sdk::Values values;
    values.set("common-cause", true);
    return values;
}

std::size_t rowOf(const sdk::Table& table, const std::string& column, const std::string& wanted) {
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (text(table, row, column) == wanted) return row;
    ADD_FAILURE() << "no row with " << wanted;
    return 0;
}

void expectCounted(const sdk::Result& result) {
    EXPECT_THAT(notes(result, sdk::NoteKind::method), HasSubstr("Common causes are counted (CC)"));
    EXPECT_THAT(notes(result, sdk::NoteKind::warning), Not(HasSubstr("not counted")));
}

} // namespace

TEST(CommonCausesCounted, OverTimeAsWithTheCauseDrawn) {
    const auto got = ask("over-time", groupedProbes(), counted());
    const auto drawn = ask("over-time", drawnProbes());
    ASSERT_TRUE(got.content && drawn.content);
    const sdk::Table &mine = table(*got.content, "figures"),
                     &his = table(*drawn.content, "figures");
    for (const char* column :
         {"mean-unavailability", "worst-unavailability", "expected-number", "frequency", "happens"})
        EXPECT_NEAR(number(mine, 0, column) / number(his, 0, column), 1, 1e-12) << column;
    const sdk::Table& completed = table(*got.content, "completed-by");
    const std::size_t row = rowOf(completed, "event", "probe-a + probe-b [common]");
    EXPECT_EQ(text(completed, row, "name"), "common cause: same fuel");
    EXPECT_NEAR(number(completed, row, "share"),
                number(table(*drawn.content, "completed-by"),
                       rowOf(table(*drawn.content, "completed-by"), "event", "both"), "share"),
                1e-9);
    expectCounted(*got.content);
    const auto without = ask("over-time", groupedProbes());
    ASSERT_TRUE(without.content);
    EXPECT_THAT(notes(*without.content, sdk::NoteKind::warning),
                HasSubstr("groups CC are not counted here"));
    EXPECT_LT(number(table(*without.content, "figures"), 0, "mean-unavailability"),
              number(mine, 0, "mean-unavailability"));
}

TEST(CommonCausesCounted, ImportanceWorkedByHand) { // alone 0.018, common 0.002, panel 0.05
    const auto got = ask("importance", groupedPumps(), counted());
    ASSERT_TRUE(got.content);
    const double alone = 0.018, common = 0.002, panel = 0.05;
    const double pumps = 1 - (1 - common) * (1 - alone * alone);
    const double top = 1 - (1 - panel) * (1 - pumps);
    const sdk::Table& events = table(*got.content, "events");
    ASSERT_EQ(events.rows.size(), 4u);
    const std::size_t one = rowOf(events, "event", "pump-a [alone]");
    EXPECT_NEAR(number(events, one, "probability"), alone, 1e-15);
    EXPECT_NEAR(number(events, one, "fussell-vesely"), 100 * alone * alone / top, 1e-9);
    // Taken out by itself: the other one and the common cause stay as they are.
    EXPECT_NEAR(number(events, one, "risk-achievement"),
                (1 - (1 - panel) * (1 - common) * (1 - alone)) / top, 1e-11);
    const std::size_t both = rowOf(events, "event", "pump-a + pump-b [common]");
    EXPECT_NEAR(number(events, both, "fussell-vesely"), 100 * common / top, 1e-9);
    EXPECT_NEAR(number(events, both, "risk-achievement"), 1 / top, 1e-11);

    const sdk::Table& groups = table(*got.content, "common-cause-groups");
    ASSERT_EQ(groups.rows.size(), 1u);
    const double withoutCommon = 1 - (1 - panel) * (1 - alone * alone);
    EXPECT_EQ(text(groups, 0, "group"), "CC");
    EXPECT_NEAR(number(groups, 0, "reduction"), 100 * (1 - withoutCommon / top), 1e-9);
    EXPECT_NEAR(number(groups, 0, "risk-achievement"), 1 / top, 1e-11);
    EXPECT_NEAR(number(groups, 0, "risk-reduction"), top / withoutCommon, 1e-11);
    EXPECT_THAT(groups.remark, Not(HasSubstr("NOT counted")));
    expectCounted(*got.content);
    // Without: the members as independent parts, and the table says so.
    const auto without = ask("importance", groupedPumps());
    ASSERT_TRUE(without.content);
    const sdk::Table& plain = table(*without.content, "common-cause-groups");
    EXPECT_THAT(plain.remark, HasSubstr("NOT counted"));
    EXPECT_NEAR(number(plain, 0, "reduction"),
                100 * (1 - panel / (1 - (1 - panel) * (1 - 0.02 * 0.02))), 1e-9);
}

TEST(CommonCausesCounted, AComponentIsTakenOutAloneAndSparedWithItsCommonCause) {
    project::Project plant = groupedPumps();
    for (const std::size_t i : {0, 1}) {
        project::Component component;
        component.id = plant.events[i].id + "-machine";
        plant.components.push_back(component);
        project::FailureMode mode;
        mode.id = plant.events[i].id + ".stops";
        mode.component = component.id;
        mode.model = plant.events[i].model;
        plant.modes.push_back(mode);
        plant.events[i].mode = mode.id;
    }
    const auto got = ask("importance", plant, counted());
    ASSERT_TRUE(got.content);
    const sdk::Table& components = table(*got.content, "components");
    ASSERT_EQ(components.rows.size(), 2u);
    const double alone = 0.018, common = 0.002, panel = 0.05;
    const double top = 1 - (1 - panel) * (1 - common) * (1 - alone * alone);
    EXPECT_NEAR(number(components, 0, "risk-achievement"),
                (1 - (1 - panel) * (1 - common) * (1 - alone)) / top, 1e-11);
    EXPECT_NEAR(number(components, 0, "reduction"), 100 * (1 - panel / top), 1e-9);
    EXPECT_EQ(std::get<std::int64_t>(cell(components, 0, "events")), 1);
}

TEST(CommonCausesCounted, SensitivityTurnsTheFactor) {
    project::Project plant = groupedPumps();
    plant.commonCauses[0].factors[0].uncertainty = project::Uniform{0.05, 0.2};
    const auto got = ask("sensitivity", plant, counted());
    ASSERT_TRUE(got.content);
    const sdk::Table& swings = table(*got.content, "swings");
    ASSERT_EQ(swings.rows.size(), 1u);
    EXPECT_EQ(text(swings, 0, "number"), "CC@factor-1");
    const auto topAt = [](double beta) {
        const double alone = (1 - beta) * 0.02;
        return 1 - 0.95 * (1 - beta * 0.02) * (1 - alone * alone);
    };
    EXPECT_NEAR(number(swings, 0, "top-at-low"), topAt(0.05 + 0.05 * 0.15), 1e-14);
    EXPECT_NEAR(number(swings, 0, "top-at-high"), topAt(0.05 + 0.95 * 0.15), 1e-14);
    expectCounted(*got.content);
    EXPECT_TRUE(table(*ask("sensitivity", plant).content, "swings").rows.empty());
}

TEST(CommonCausesCounted, SweepOfTheFactorAsWithTheCauseDrawn) {
    sdk::Values values = counted();
    values.set("vary", std::string("CC@factor-1"));
    values.set("from", std::string("0.05"));
    values.set("to", std::string("0.2"));
    values.set("steps", std::int64_t{4});
    const auto got = ask("sweep", groupedProbes(), values);
    ASSERT_TRUE(got.content);
    const sdk::Table& points = table(*got.content, "points");
    ASSERT_EQ(points.rows.size(), 4u);
    for (std::size_t row = 0; row < 4; ++row) {
        const double beta = number(points, row, "value");
        EXPECT_NEAR(beta, 0.05 + 0.05 * static_cast<double>(row), 1e-12);
        const auto drawn = ask("over-time", drawnProbes(beta));
        ASSERT_TRUE(drawn.content);
        EXPECT_NEAR(number(points, row, "figure") /
                        number(table(*drawn.content, "figures"), 0, "mean-unavailability"),
                    1, 1e-9);
    }
    expectCounted(*got.content);
}

TEST(CommonCausesCounted, ProbabilityAndItsSets) {
    const auto got = ask("probability", groupedPumps(), counted());
    ASSERT_TRUE(got.content);
    EXPECT_NEAR(number(table(*got.content, "top-events"), 0, "probability"),
                1 - 0.95 * (1 - 0.002) * (1 - 0.018 * 0.018), 1e-15);
    expectCounted(*got.content);
    const auto sets = ask("cut-sets", groupedPumps(), counted());
    ASSERT_TRUE(sets.content);
    EXPECT_EQ(table(*sets.content, "sets").rows.size(), 3u);
    expectCounted(*sets.content);
}
