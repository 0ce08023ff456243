// SPDX-License-Identifier: GPL-3.0-or-later
// The closed forms where they are hardest: near zero, at the seams of their series, and for ever.
// Values of sources are in tests/published.
#include "models/reliability/event_model.h"
#include "models/reliability/sequence.h"
#include "tests/oracle/solved.h"

#include <cmath>
#include <limits>

namespace cutwater::reliability {
namespace {

using oracle::near;

constexpr double kForEver = std::numeric_limits<double>::infinity();

TEST(Formulas, TinyRatesKeepTheirDigits) {
    EXPECT_TRUE(near(missionUnreliability(1e-300, 2), 2e-300L, 1e-15));
    EXPECT_TRUE(near(repairableUnavailability(1e-300, 8, kForEver), 8e-300L, 1e-15));
    EXPECT_TRUE(near(repairableUnavailability(1e-300, 1e9, 3), 3e-300L, 1e-8));
    EXPECT_TRUE(near(testedMeanUnavailability(1e-300, 8), 4e-300L, 1e-15));
    EXPECT_TRUE(near(weibullUnreliability(2, 1e150, 0, 1), 1e-300L, 1e-14));
    EXPECT_TRUE(near(priorityAnd(1e-150, 3e-150, 2), 6e-300L, 1e-14)); // a b t^2 / 2
    EXPECT_TRUE(near(standbyPair(1e-150, 0, 2), 2e-300L, 1e-14)); // (1 + dormancy) (rate t)^2 / 2
    EXPECT_TRUE(near(standbyPair(1e-150, 1, 2), 4e-300L, 1e-14));
    const TestedPart part{.rate = 1e-300, .interval = 8, .repair = 2};
    // 8 x 4e-300 undetected and 8e-300 x 2 h under repair, in 8 h.
    EXPECT_TRUE(near(testedCycleUnavailability(part), 6e-300L, 1e-14));
}

TEST(Formulas, NothingFailsAtRateZeroOrInNoTime) {
    EXPECT_EQ(missionUnreliability(0, kForEver), 0);
    EXPECT_EQ(missionUnreliability(1, 0), 0);
    EXPECT_EQ(repairableUnavailability(0, 8, kForEver), 0);
    EXPECT_EQ(repairableUnavailability(1e-3, 8, 0), 0);
    EXPECT_EQ(testedMeanUnavailability(0, 8760), 0);
    EXPECT_EQ(weibullUnreliability(2, 100, 50, 50), 0);
    EXPECT_EQ(weibullUnreliability(2, 100, 50, 20), 0);
    EXPECT_EQ(priorityAnd(0, 1, kForEver), 0);
    EXPECT_EQ(priorityAnd(1, 0, kForEver), 0);
    EXPECT_EQ(standbyPair(0, 0.5, kForEver), 0);
}

TEST(Formulas, AndForEverIsTheLimit) {
    EXPECT_EQ(missionUnreliability(1e-9, kForEver), 1);
    EXPECT_EQ(weibullUnreliability(0.5, 100, 0, kForEver), 1);
    EXPECT_EQ(testedMeanUnavailability(1, kForEver), 1);
    EXPECT_EQ(standbyPair(1e-9, 0, kForEver), 1);
    EXPECT_TRUE(near(repairableUnavailability(1e-3, 8, 1e9),
                     repairableUnavailability(1e-3, 8, kForEver), 1e-15));
}

TEST(Formulas, WeibullOfShapeOneIsTheMissionFormula) {
    for (const double time : {1e-9, 0.5, 100.0, 5000.0})
        EXPECT_TRUE(near(weibullUnreliability(1, 1000, 10, 10 + time),
                         missionUnreliability(1e-3, 10 + time - 10), 1e-12));
    // 63.2 % have failed at the characteristic life, whatever the shape.
    for (const double shape : {0.5, 1.0, 3.0})
        EXPECT_TRUE(near(weibullUnreliability(shape, 400, 100, 500), 1 - std::exp(-1.0L), 1e-15));
}

// The formula of the header in long double, which has enough digits above 0.01.
long double meanPlain(long double x) {
    return 1 - (1 - std::exp(-x)) / x;
}

TEST(Formulas, SeriesAndClosedFormMeetAtTheSeams) {
    for (const double x : {0.01, 0.1, 0.49999, 0.5, 0.50001, 2.0, 40.0})
        EXPECT_TRUE(near(testedMeanUnavailability(x / 100, 100), meanPlain(x / 100 * 100), 2e-14))
            << x;
    const auto order = [](long double a, long double b) {
        return (1 - std::exp(-b)) - b / (a + b) * (1 - std::exp(-(a + b)));
    };
    for (const double a : {0.05, 0.3, 0.5, 0.7, 3.0})
        for (const double b : {0.05, 0.3, 0.4999, 0.5, 0.5001, 3.0})
            EXPECT_TRUE(near(priorityAnd(a, b, 1), order(a, b), 3e-14)) << a << ", " << b;
    const auto standby = [](long double x, long double d) {
        return 1 - ((1 + d) * std::exp(-x) - std::exp(-(1 + d) * x)) / d;
    };
    for (const double x : {0.1, 0.9999, 1.0, 1.0001, 8.0})
        for (const double d : {0.01, 0.5, 1.0})
            EXPECT_TRUE(near(standbyPair(x, d, 1), standby(x, d), 2e-14)) << x << ", " << d;
}

TEST(Formulas, BothOrdersTogetherAreBothParts) {
    for (const double time : {1e-6, 0.3, 1.0, 5.0})
        EXPECT_TRUE(near(priorityAnd(0.7, 0.2, time) + priorityAnd(0.2, 0.7, time),
                         std::expm1(-0.7L * time) * std::expm1(-0.2L * time), 1e-14));
}

TEST(Formulas, WhatTheTestDoesNotFindStaysUntilTheOverhaul) {
    // The mean over a life of whole intervals, worked out interval by interval: the part is up at s
    // after test k if the found kind has not failed since the test and the other not since the
    // beginning.
    const double rate = 1e-5, interval = 720, coverage = 0.9;
    const int tests = 100;
    const long double found = rate * coverage, unfound = rate * (1 - coverage);
    long double up = 0;
    for (int k = 0; k < tests; ++k)
        up += std::exp(-unfound * k * interval) * -std::expm1(-(found + unfound) * interval) /
              (found + unfound);
    const long double exact = 1 - up / (tests * interval);
    const TestedPart part{
        .rate = rate, .interval = interval, .coverage = coverage, .lifetime = tests * interval};
    // The formula multiplies two means; what that leaves out is of the order of the product of both
    // kinds' chances in one interval.
    EXPECT_NEAR(testedCycleUnavailability(part), static_cast<double>(exact),
                static_cast<double>(found * interval * unfound * interval));
    EXPECT_GT(testedCycleUnavailability(part), 2 * testedMeanUnavailability(rate, interval));
    // Nothing is found: it is never better than the mean over the whole life.
    const TestedPart blind{.rate = rate, .interval = interval, .coverage = 0, .lifetime = 72'000};
    EXPECT_TRUE(
        near(testedCycleUnavailability(blind), testedMeanUnavailability(rate, 72'000), 1e-14));
}

TEST(Formulas, ACycleWithoutTestOrRepairTimeIsThePlainMean) {
    const TestedPart part{.rate = 1e-4, .interval = 8760};
    EXPECT_TRUE(near(testedCycleUnavailability(part), testedMeanUnavailability(1e-4, 8760), 1e-15));
}

} // namespace
} // namespace cutwater::reliability
