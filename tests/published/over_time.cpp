// SPDX-License-Identifier: GPL-3.0-or-later
// Failure intensity and frequency. Formulas: W. E. Vesely (1970) and IEC 61025, from memory; all
// numbers derived. Rates per hour: l1 1e-3, m1 0.1, l2 2e-3, m2 0.05, both new at t = 0.
#include "models/reliability/top_event.h"
#include "tests/oracle/solved.h"
#include "tests/published/small_tree.h"

#include <cmath>

namespace cutwater::published {
namespace {

using namespace reliability;
using oracle::near;
using Kind = EventProfile::Kind;

EventProfile repairable(double rate, double repairRate, bool steady = false) {
    EventProfile part;
    part.kind = Kind::repairable;
    part.rate = rate;
    part.repair = 1 / repairRate;
    part.steady = steady;
    return part;
}

EventProfile failing(double rate) {
    EventProfile part;
    part.kind = Kind::failing;
    part.rate = rate;
    return part;
}

EventProfile tested(double rate, double interval, double firstTest) {
    EventProfile part;
    part.kind = Kind::tested;
    part.rate = rate;
    part.interval = interval;
    part.firstTest = firstTest;
    return part;
}

// At least `failed` of the parts have failed.
TopCourse voted(int failed, const std::vector<EventProfile>& parts) {
    SmallTree tree;
    std::vector<logic::Literal> inputs;
    for (std::size_t i = 0; i < parts.size(); ++i)
        inputs.push_back(tree.event("P" + std::to_string(i), 0.1));
    tree.solve(tree.atLeast(failed, inputs));
    return {tree.solution(), parts};
}

TopCourse pair(int failed, bool steady) {
    return voted(failed, {repairable(1e-3, 0.1, steady), repairable(2e-3, 0.05, steady)});
}

PeriodFigures over(const TopCourse& course, double end) {
    PeriodWish wish;
    wish.end = end;
    return *overPeriod(course, wish);
}

TEST(OverTime, SteadyParts) { // 6.1, 6.2
    const EventMoment one = repairable(1e-3, 0.1, true).at(0);
    const EventMoment two = repairable(2e-3, 0.05, true).at(0);
    EXPECT_NEAR(one.unavailability, 0.00990099009901, 1e-12);
    EXPECT_NEAR(two.unavailability, 0.0384615384615, 1e-12);
    EXPECT_NEAR(one.frequency, 9.90099009901e-4, 1e-12);
    EXPECT_NEAR(two.frequency, 1.92307692308e-3, 1e-12);
}

TEST(OverTime, SteadyAndOr) { // 6.3, 6.4
    const TopMoment both = pair(2, true).at(0);
    EXPECT_TRUE(near(both.unavailability, 3.80807311500e-4L, 1e-9));
    EXPECT_TRUE(near(both.frequency, 5.71210967251e-5L, 1e-9));
    EXPECT_TRUE(near(both.conditional, 5.71428571e-5L, 1e-9));
    EXPECT_TRUE(near(both.unavailability / both.frequency, 1 / 0.15L, 1e-9)); // mean down time
    const TopMoment any = pair(1, true).at(0);
    EXPECT_TRUE(near(any.unavailability, 0.0479817212490L, 1e-9));
    EXPECT_TRUE(near(any.frequency, 0.00285605483625L, 1e-9));
}

TEST(OverTime, AfterTenHours) { // 6.5, 6.6, 6.7
    EXPECT_NEAR(repairable(1e-3, 0.1).at(10).unavailability, 0.00629486158840, 1e-11);
    EXPECT_NEAR(repairable(2e-3, 0.05).at(10).unavailability, 0.0155953635396, 1e-11);
    const TopMoment both = pair(2, false).at(10);
    EXPECT_TRUE(near(both.unavailability, 9.81706549e-5L, 2e-9)); // as many digits as are printed
    EXPECT_TRUE(near(both.frequency, 2.78905747517e-5L, 1e-9));
    const TopMoment any = pair(1, false).at(10);
    EXPECT_TRUE(near(any.unavailability, 0.0217920544731L, 1e-9));
    EXPECT_TRUE(near(any.frequency, 0.00293462383658L, 1e-9));
}

TEST(OverTime, ExpectedNumberInTenHours) { // 6.8, stepped
    EXPECT_TRUE(near(over(pair(2, false), 10).expectedNumber, 1.5689e-4L, 1e-4));
}

TEST(OverTime, TwoOfThreeSteady) { // 6.9
    const EventProfile part = repairable(1e-3, 0.1, true);
    const TopMoment top = voted(2, {part, part, part}).at(0);
    EXPECT_TRUE(near(top.unavailability, 2.92147634526e-4L, 1e-9));
    EXPECT_TRUE(near(top.frequency, 5.82354088757e-5L, 1e-9));
    EXPECT_TRUE(near(1 / top.frequency, 17171.683333L, 1e-9));
    EXPECT_TRUE(near(top.unavailability / top.frequency, 5.01666667L, 1e-9));
}

TEST(OverTime, NotRepaired) { // 6.10
    const TopCourse both = voted(2, {failing(1e-3), failing(1e-3)});
    const PeriodFigures figures = over(both, 100);
    ASSERT_TRUE(figures.unreliabilityExact);
    EXPECT_TRUE(near(*figures.unreliabilityExact, 0.00905591700606L, 1e-9));
    EXPECT_TRUE(near(figures.expectedNumber, 0.00905591700606L, 1e-9)); // it happens once at most
    EXPECT_TRUE(near(both.at(100).frequency, 1.72213329916e-4L, 1e-9));
}

TEST(OverTime, MeanLife) { // 6.11: the integral of 1 - Q, all but exp(-60) of it
    const double end = 60 / 1e-3;
    const auto life = [end](int failed, std::size_t parts) {
        const auto course = voted(failed, std::vector<EventProfile>(parts, failing(1e-3)));
        return end * (1 - over(course, end).meanUnavailability);
    };
    EXPECT_NEAR(life(2, 2), 1500, 1e-5);       // 1oo2 works, 3/(2l)
    EXPECT_NEAR(life(2, 3), 2500.0 / 3, 1e-5); // 2oo3 works, 5/(6l)
}

TEST(OverTime, InitiatorAndProtection) { // 6.12: 0.1 a year, 1e-5/h tested yearly
    EventProfile initiator;
    initiator.kind = Kind::initiating;
    initiator.rate = 0.1 / 8760;
    const TopCourse top = voted(2, {initiator, tested(1e-5, 8760, 8760)});
    const PeriodFigures figures = over(top, 8760);
    EXPECT_TRUE(near(figures.expectedNumber, 0.00425485656L, 1e-9));
    EXPECT_LT(figures.expectedNumber, 0.00438); // the usual lambda tau / 2
    // An initiator is over at once: there is no state to be found in.
    EXPECT_EQ(figures.meanUnavailability, 0);
    // All of it is completed by the initiator, with the protection down already.
    EXPECT_TRUE(near(figures.completedBy[0], figures.expectedNumber, 1e-15));
}

TEST(OverTime, MeansOfTestedParts) { // 5.6 to 5.9
    EXPECT_NEAR(over(voted(1, {tested(1e-6, 8760, 8760)}), 8760).meanUnavailability, 0.00436723836,
                1e-9);
    EXPECT_NEAR(over(voted(1, {tested(1e-5, 8760, 8760)}), 8760).meanUnavailability,
                0.0425485655782, 1e-9);
    EXPECT_NEAR(over(voted(1, {tested(1e-4, 8760, 8760)}), 5 * 8760).meanUnavailability,
                0.333841742, 1e-9);
    EXPECT_NEAR(over(voted(1, {tested(5e-6, 4380, 4380)}), 8760).meanUnavailability, 0.0108705007,
                1e-9);
}

TEST(OverTime, TestAndRepairTakeTime) { // 5.10, 5.11: 1e-5/h, every 720 h, test 1.5 h, repair 19 h
    EventProfile part = tested(1e-5, 720, 720);
    part.testDuration = 1.5;
    part.repair = 19;
    // Whole cycles after the first test, when what the tests find has settled.
    const TopCourse top = voted(1, {part});
    const double later = over(top, 201 * 720).meanUnavailability * 201 * 720;
    const double sooner = over(top, 101 * 720).meanUnavailability * 101 * 720;
    const double mean = (later - sooner) / (100 * 720);
    // Neither figure is this one: 5.10 adds three terms and 5.11 lets test and repair put off the
    // next test; here the tests keep to the calendar and nothing fails during a test.
    EXPECT_NEAR(mean, 0.00587333, 0.00587333 * 0.005);
    EXPECT_NEAR(mean, 0.00585072983, 0.00585072983 * 0.001);
}

TEST(OverTime, VotedPartsTestedTogether) { // averages over a test interval, 1e-5/h, 8760 h
    const auto mean = [](int failed, std::size_t parts) {
        return over(voted(failed, std::vector<EventProfile>(parts, tested(1e-5, 8760, 8760))), 8760)
            .meanUnavailability;
    };
    EXPECT_TRUE(near(mean(2, 2), 0.00239652526L, 1e-7));
    EXPECT_TRUE(near(mean(3, 3), 1.5141734963e-4L, 1e-7));
    EXPECT_TRUE(near(mean(2, 3), 0.00688674108L, 1e-7));
    EXPECT_TRUE(near(mean(1, 2), 0.0827006059L, 1e-7));
}

TEST(OverTime, StaggeredByHalf) {
    const TopCourse top = voted(2, {tested(1e-5, 8760, 8760), tested(1e-5, 8760, 4380)});
    const double mean = (1.5 * over(top, 1.5 * 8760).meanUnavailability -
                         0.5 * over(top, 0.5 * 8760).meanUnavailability);
    EXPECT_TRUE(near(mean, 0.00151733613L, 1e-7));
}

} // namespace
} // namespace cutwater::published
