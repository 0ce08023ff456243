// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/periods/timed_plant.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace plants;
using testing::HasSubstr;

namespace {

project::Project oneProbe(double testHours) { // 1e-5/h, tested every 720 h
    project::Project plant;
    plant.events = {tested("probe", 1e-5, 720)};
    if (testHours > 0)
        plant.events[0].model.set(project::Role::testDuration,
                                  quantity(testHours, project::Unit::hours));
    plant.gates = {gate("blind", project::GateKind::orGate, {"probe"})};
    plant.tops = {top("T1", "blind")};
    return plant;
}

sdk::Values vary(const char* what, const char* from, const char* to) {
    sdk::Values values;
    values.set("vary", std::string(what));
    values.set("from", std::string(from));
    values.set("to", std::string(to));
    return values;
}

} // namespace

TEST(SweepPlugin,
     BestTestInterval) { // rate tau / 2 + t / tau has its lowest point at sqrt(2 t / rate)
    sdk::Values values = vary("probe@interval", "50", "8 wk");
    values.set("limit", 0.007);
    const auto answer = ask("sweep", oneProbe(1.5), values);
    ASSERT_TRUE(answer.content);
    const sdk::Table& best = table(*answer.content, "best");
    ASSERT_EQ(best.rows.size(), 1u);
    EXPECT_EQ(number(best, 0, "now"), 720);
    EXPECT_NEAR(number(best, 0, "best"), std::sqrt(2 * 1.5 / 1e-5), 10);
    EXPECT_NEAR(number(best, 0, "figure-best"), std::sqrt(2 * 1.5 * 1e-5), 4e-5);
    EXPECT_NEAR(number(best, 0, "figure-within"), 0.007, 1e-6);
    EXPECT_GT(number(best, 0, "within"), number(best, 0, "best"));
    const sdk::Table& points = table(*answer.content, "points");
    ASSERT_EQ(points.rows.size(), 25u);
    EXPECT_EQ(number(points, 0, "value"), 50);
    EXPECT_EQ(number(points, 24, "value"), 8 * 168);
    EXPECT_EQ(answer.content->series.at(0).x.size(), 25u);
}

TEST(SweepPlugin, WithoutATestTimeMoreTestsAlwaysLookBetterAndItSaysSo) {
    const auto answer = ask("sweep", oneProbe(0), vary("probe@interval", "50", "1000"));
    ASSERT_TRUE(answer.content);
    EXPECT_EQ(number(table(*answer.content, "best"), 0, "best"), 50);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                HasSubstr("at the end of the range"));
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::assumption),
                HasSubstr("more tests always look better"));
}

TEST(SweepPlugin, SeveralNumbersTogetherInOneUnit) {
    const project::Project plant = twoProbes(false);
    sdk::Values values = vary("probe-a@interval, probe-b@interval", "4380", "8760");
    values.set("steps", std::int64_t{2});
    const auto answer = ask("sweep", plant, values);
    ASSERT_TRUE(answer.content);
    const sdk::Table& points = table(*answer.content, "points");
    EXPECT_NEAR(number(points, 1, "figure"), 0.00239652526, 2e-11); // 1oo2 over 8760 h
}

TEST(SweepPlugin, BadWishesGetASentence) {
    const project::Project plant = oneProbe(0);
    const auto what = [&](const sdk::Values& values) {
        const auto answer = ask("sweep", plant, values);
        EXPECT_FALSE(answer.content);
        return answer.problems.empty() ? std::string()
                                       : answer.problems[0].what + "; " + answer.problems[0].remedy;
    };
    EXPECT_THAT(what({}), HasSubstr("probe@rate"));
    EXPECT_THAT(what(vary("probe@intervl", "1", "2")), HasSubstr("try 'probe@interval'"));
    EXPECT_THAT(what(vary("probe@interval", "9", "3")), HasSubstr("nothing between 9 and 3"));
    EXPECT_THAT(what(vary("probe@interval", "0", "3")), HasSubstr("the interval cannot be 0"));
    EXPECT_THAT(what(vary("probe@interval", "1 kW", "3")), HasSubstr("from"));
    EXPECT_THAT(what(vary("probe@interval,probe@rate", "1", "3")), HasSubstr("not of one kind"));
}
