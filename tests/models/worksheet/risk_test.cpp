// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/risk_placement.h"
#include "models/worksheet/scales.h"
#include "tests/models/worksheet/boilers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace cutwater::worksheet {

using namespace project;
using ::testing::HasSubstr;

namespace {

const RiskItem* find(const RiskPicture& picture, const char* id) {
    for (const RiskItem& item : picture.items)
        if (item.id == id) return &item;
    return nullptr;
}

} // namespace

// Borders lie half a decade from the level, that is at sqrt(10) times its value.
TEST(RiskMatrix, AFrequencyGoesToTheNearestLevel) {
    const RiskMatrix imo = imoMatrix();
    const double border = std::sqrt(10.0);
    EXPECT_EQ(indexOf(imo.frequencies, 1e-3)->index, 3);
    EXPECT_EQ(indexOf(imo.frequencies, 1e-3 * border * 0.999)->index, 3);
    EXPECT_EQ(indexOf(imo.frequencies, 1e-3 * border * 1.001)->index, 4);
    EXPECT_FALSE(indexOf(imo.frequencies, 25)->beyond);
    EXPECT_EQ(indexOf(imo.frequencies, 1000)->index, 7);
    EXPECT_TRUE(indexOf(imo.frequencies, 1000)->beyond);
    EXPECT_EQ(indexOf(imo.frequencies, 1e-9)->index, 1);
    EXPECT_TRUE(indexOf(imo.frequencies, 1e-9)->beyond);
    EXPECT_FALSE(indexOf(imo.frequencies, 0));
    EXPECT_FALSE(indexOf(imo.frequencies, std::nan("")));
    EXPECT_FALSE(indexOf({}, 1));
}

TEST(RiskMatrix, WordsOfSeverityAreFoundWhateverTheirCapitals) {
    const RiskMatrix imo = imoMatrix();
    EXPECT_EQ(severityIndex(imo, "severe"), 3);
    EXPECT_EQ(severityIndex(imo, " CATASTROPHIC "), 4);
    EXPECT_EQ(severityIndex(imo, "2"), 2);
    EXPECT_FALSE(severityIndex(imo, "grave"));
    EXPECT_FALSE(severityIndex(imo, ""));
}

TEST(RiskMatrix, TheProjectsOwnReplacesIt) {
    Project p = test::boilers();
    p.worksheet.matrix.frequencies = {{2, "often", "", 1.0, {}, {}}, {1, "rare", "", 0.01, {}, {}}};
    p.worksheet.matrix.severities = {{5, "minor", "", {}, {}, {}}};
    p.worksheet.matrix.bands = {{7, "high", "", {}, {}}};
    const Index index(p);
    const RiskPicture picture = placeRisks(p, index, {});
    EXPECT_EQ(picture.matrix.frequencies.front().index, 1);
    const RiskItem* fouled = find(picture, "electrodes.fouled"); // 2.19 a year
    ASSERT_NE(fouled, nullptr);
    EXPECT_EQ(fouled->riskIndex, 7);
    EXPECT_EQ(fouled->band, "high");
    EXPECT_FALSE(find(picture, "pump-a.stops")->riskIndex); // "significant" is not in it
}

TEST(RiskMatrix, PlacesModesAndTops) {
    Project p = test::boilers();
    const Index index(p);
    const RiskPicture picture = placeRisks(p, index, {});
    // pump-a.stops: 0.0876 a year, FI 5; significant, SI 2.
    EXPECT_EQ(find(picture, "pump-a.stops")->riskIndex, 7);
    EXPECT_THAT(find(picture, "diode-a.open")->how, HasSubstr("no failure model"));
    const RiskItem* top = find(picture, "T1");
    ASSERT_TRUE(top && top->perYear);
    // By hand: panel.dead 1e-6 x 8760 x (1 - 0.01) for the constant event in the or; the pumps add
    // 2 x 1e-5 x 8760 x (one of them down), about 1e-5 x 8760 x (1e-4 + 5e-3).
    const double expected = 8760 * 0.99 * (1e-6 + 1e-5 * (1e-4 + 0.00498));
    EXPECT_NEAR(*top->perYear, expected, 0.01 * expected);
    EXPECT_EQ(picture.at(top->frequencyIndex->index, 3).front()->id, "T1");
}

// What is asked about at each start happens as often as it is probable, times the starts.
// Two events of Q = 0.1 below an "and", beta 0.2, by hand: alone 0.08, common 0.02;
// P = 0.02 + (1 - 0.02) 0.08^2.
TEST(TopFigures, CountCommonCausesWhereTheyAreAskedFor) {
    Project p;
    for (const char* id : {"a", "b"}) {
        Event event;
        event.id = id;
        event.model.kind = ModelKind::probability;
        event.model.set(Role::probability, test::number(0.1));
        p.events.push_back(event);
    }
    Gate both;
    both.id = "both";
    both.kind = GateKind::andGate;
    both.inputs = {{"a", {}}, {"b", {}}};
    p.gates = {both};
    TopEvent top;
    top.id = "T";
    top.node.id = "both";
    top.asked = test::number(10, Unit::perYear);
    p.tops = {top};
    CommonCauseGroup group;
    group.id = "pair";
    group.factors = {test::number(0.2)};
    group.members = {{"a", {}}, {"b", {}}};
    p.commonCauses = {group};
    TopLimits limits;
    const TopFigures apart = topFiguresOf(p, Index(p), p.tops[0], limits);
    EXPECT_NEAR(*apart.probability, 0.01, 1e-15);
    EXPECT_TRUE(apart.groups.empty());
    limits.commonCauses = true;
    const TopFigures together = topFiguresOf(p, Index(p), p.tops[0], limits);
    EXPECT_NEAR(*together.probability, 0.02 + 0.98 * 0.0064, 1e-15);
    EXPECT_NEAR(*together.perYear, 10 * (0.02 + 0.98 * 0.0064), 1e-14);
    EXPECT_EQ(together.groups, std::vector<std::size_t>{0});
    RiskWish wish;
    wish.limits = limits;
    EXPECT_EQ(placeRisks(p, Index(p), wish).groups, std::set<std::size_t>{0});
}

// Two parts that are repaired at once, rate r and repair time h each, beta b: in the long run the
// frequency of both down is that of the common cause, b r, plus that of the two alone,
// 2 (1-b)^2 r^2 h to first order.
TEST(TopFigures, TheFrequencyOfACommonCauseIsItsShareOfTheRate) {
    Project p = test::boilers();
    for (const char* id : {"pump-a.stops", "pump-b.stops"}) {
        FailureModel& model = test::mode(p, id).model;
        model = {};
        model.kind = ModelKind::repairable;
        model.clock = Clock::calendarHour;
        model.set(Role::rate, test::number(1e-5, Unit::perHour));
        model.set(Role::repair, test::number(10, Unit::hours));
    }
    p.tops[0].node.id = "pumps";
    CommonCauseGroup group;
    group.id = "pumps-ccf";
    group.factors = {test::number(0.1)};
    group.members = {{"pump-a.stops", {}}, {"pump-b.stops", {}}};
    p.commonCauses = {group};
    TopLimits limits;
    limits.commonCauses = true;
    const double expected = 8760 * (0.1 * 1e-5 + 2 * 0.81 * 1e-10 * 10);
    EXPECT_NEAR(*topFiguresOf(p, Index(p), p.tops[0], limits).perYear, expected, 0.001 * expected);
    EXPECT_LT(*topFiguresOf(p, Index(p), p.tops[0], {}).perYear, 0.01 * expected);
}

TEST(RiskMatrix, ATopThatIsAskedAboutCountsItsQuestions) {
    Project p = test::boilers();
    const TopFigures before = topFiguresOf(p, Index(p), p.tops[0], {});
    p.tops[0].asked = test::number(100, Unit::perYear);
    const TopFigures after = topFiguresOf(p, Index(p), p.tops[0], {});
    ASSERT_TRUE(before.probability && after.perYear);
    EXPECT_EQ(before.probability, after.probability);
    EXPECT_NEAR(*after.perYear, 100 * *after.probability, 1e-12);
    p.events[3].model = {};
    EXPECT_FALSE(topFiguresOf(p, Index(p), p.tops[0], {}).perYear);
    EXPECT_FALSE(topFiguresOf(p, Index(p), p.tops[0], {}).how.empty());
}

TEST(Scales, OwnOnesReplaceTheStandardOnes) {
    Project p;
    EXPECT_EQ(scalesOf(p).severity.size(), 10u);
    EXPECT_FALSE(scalesOf(p).ownSeverity);
    p.worksheet.severityScale = {{7, "b", "", {}, {}, {}}, {2, "a", "", {}, {}, {}}};
    const Scales own = scalesOf(p);
    EXPECT_TRUE(own.ownSeverity);
    EXPECT_EQ(own.severity.front().word, "a");
    EXPECT_EQ(stepOf(own.severity, 6)->word, "a");
    EXPECT_EQ(stepOf(own.severity, 10)->word, "b");
    EXPECT_EQ(stepOf(own.severity, 1), nullptr);
}

TEST(Scales, AFrequencyHasTheRatingOfTheLimitAboveIt) {
    const Scales standard = scalesOf({});
    EXPECT_EQ(occurrenceRating(standard.occurrence, 1e-6), 1);
    EXPECT_EQ(occurrenceRating(standard.occurrence, 1.0), 7);
    EXPECT_EQ(occurrenceRating(standard.occurrence, 1.01), 8);
    EXPECT_EQ(occurrenceRating(standard.occurrence, 1000), 10);
    EXPECT_FALSE(occurrenceRating(standard.severity, 1));
}

} // namespace cutwater::worksheet
