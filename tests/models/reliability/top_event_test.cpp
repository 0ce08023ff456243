// SPDX-License-Identifier: GPL-3.0-or-later
// Top events over time: properties. Values of sources are in tests/published, histories drawn by
// chance in tests/oracle.
#include "models/reliability/top_event.h"

#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <cmath>
#include <numeric>
#include <random>

namespace cutwater::reliability {
namespace {

using oracle::near;
using Kind = EventProfile::Kind;

// Parts of all kinds that are never mended, so that w is dQ/dt.
std::vector<EventProfile> neverMended(std::size_t count, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> share(0.2, 1);
    std::vector<EventProfile> parts(count);
    for (std::size_t i = 0; i < count; ++i) {
        parts[i].kind = i % 3 == 0 ? Kind::constant : i % 3 == 1 ? Kind::failing : Kind::weibull;
        parts[i].probability = share(random) / 4;
        parts[i].rate = share(random) / 100;
        parts[i].shape = 1 + share(random);
        parts[i].scale = 100 * share(random);
    }
    return parts;
}

std::optional<TopCourse> randomCourse(std::uint64_t seed) {
    const oracle::RandomTree tree =
        oracle::makeTree(seed, {.events = 9, .gates = 7, .oddities = false});
    const auto solution = oracle::solved(tree.formula, tree.top);
    if (!solution || solution->constant()) return {};
    return TopCourse(*solution, neverMended(9, seed));
}

TEST(TopCourse, FrequencyIsTheSlopeOfWhatIsNeverMended) {
    int checked = 0;
    for (std::uint64_t seed = 700; seed < 740; ++seed) {
        const auto course = randomCourse(seed);
        if (!course) continue;
        for (const double t : {10.0, 40.0}) {
            const double h = 1e-3;
            const double slope =
                (course->at(t + h).unavailability - course->at(t - h).unavailability) / (2 * h);
            EXPECT_NEAR(course->at(t).frequency, slope, 1e-6 * slope + 1e-12) << seed;
            ++checked;
        }
    }
    EXPECT_GT(checked, 40);
}

TEST(TopCourse, ThenTheExpectedNumberIsTheGrowthOfQ) {
    for (std::uint64_t seed = 700; seed < 720; ++seed) {
        const auto course = randomCourse(seed);
        if (!course) continue;
        PeriodWish wish;
        wish.end = 80;
        const auto figures = overPeriod(*course, wish);
        ASSERT_TRUE(figures);
        EXPECT_NEAR(figures->expectedNumber, figures->atEnd - figures->atStart, 1e-9) << seed;
        ASSERT_TRUE(figures->unreliabilityExact);
        EXPECT_NEAR(*figures->unreliabilityExact, course->at(80).unavailability, 1e-12);
        const double shares =
            std::accumulate(figures->completedBy.begin(), figures->completedBy.end(), 0.0);
        EXPECT_NEAR(shares, figures->expectedNumber, 1e-12);
        EXPECT_LE(figures->unreliabilityLow, *figures->unreliabilityExact + 1e-12);
        EXPECT_GE(figures->unreliabilityHigh, *figures->unreliabilityExact - 1e-9);
    }
}

TopCourse single(const EventProfile& part) {
    logic::Formula formula;
    const logic::Literal event = formula.addVariable();
    return {*oracle::solved(formula, event), {part}};
}

TopCourse both(const EventProfile& a, const EventProfile& b) {
    logic::Formula formula;
    const std::vector<logic::Literal> events{formula.addVariable(), formula.addVariable()};
    return {*oracle::solved(formula, formula.addGate(logic::Op::conjunction, events)), {a, b}};
}

EventProfile tested(double rate, double interval, double firstTest) {
    EventProfile part;
    part.kind = Kind::tested;
    part.rate = rate;
    part.interval = interval;
    part.firstTest = firstTest;
    return part;
}

TEST(Period, NamesTheWorstMoment) {
    PeriodWish wish;
    wish.end = 1000;
    const auto saw = overPeriod(single(tested(1e-3, 300, 200)), wish);
    // The first interval is shorter; of the equal teeth after it the first one is named.
    EXPECT_NEAR(saw->worst.time, 500, 1e-6);
    EXPECT_EQ(saw->worst.side, Side::before);
    EXPECT_NEAR(saw->worst.unavailability, -std::expm1(-0.3), 1e-12);

    EventProfile outage = tested(1e-3, 300, 300);
    outage.testDuration = 2;
    const auto taken = overPeriod(single(outage), wish);
    EXPECT_NEAR(taken->worst.time, 300, 1e-6);
    EXPECT_EQ(taken->worst.unavailability, 1);
}

TEST(Period, FindsAHumpBetweenTwoTests) {
    // A is repaired after its test, B grows: the product has its highest point in between.
    EventProfile a = tested(5e-3, 400, 100), b;
    a.repair = 60;
    b.kind = Kind::failing;
    b.rate = 1e-3;
    const TopCourse course = both(a, b);
    PeriodWish wish;
    wish.end = 250;
    const auto figures = overPeriod(course, wish);
    double best = 0;
    for (int i = 0; i <= 250'000; ++i) // a plain search
        best = std::max(best, course.at(i * 1e-3, Side::before).unavailability);
    EXPECT_NEAR(figures->worst.unavailability, best, 1e-9 * best);
}

TEST(Period, CurveKeepsEveryPeak) {
    PeriodWish wish;
    wish.end = 100'000;
    wish.buckets = 20; // a thousand teeth
    const auto figures = overPeriod(single(tested(1e-4, 100, 100)), wish);
    ASSERT_LE(figures->curve.size(), 40u);
    double highest = 0, before = -1;
    for (const CurvePoint& point : figures->curve) {
        EXPECT_GE(point.time, before);
        before = point.time;
        highest = std::max(highest, point.unavailability);
    }
    EXPECT_NEAR(highest, -std::expm1(-0.01), 1e-12);
    EXPECT_EQ(figures->expectedByTime.front(), (std::pair<double, double>(0, 0)));
    EXPECT_EQ(figures->expectedByTime.back().first, 100'000);
    EXPECT_EQ(figures->expectedByTime.back().second, figures->expectedNumber);
    EXPECT_LT(figures->expectedByTime.size(), 1000u);
}

TEST(Period, StaggeringBeatsTestingTogether) { // lambda tau / 2, lambda^2 tau^2 / 3 and 5/24 of it
    constexpr double rate = 1e-6, interval = 1000, load = rate * interval;
    PeriodWish wish;
    wish.end = 100 * interval;
    const double one =
        overPeriod(single(tested(rate, interval, interval)), wish)->meanUnavailability;
    EXPECT_NEAR(one, load / 2, load * load);
    const auto part = tested(rate, interval, interval);
    const double together = overPeriod(both(part, part), wish)->meanUnavailability;
    EXPECT_NEAR(together, load * load / 3, 0.002 * together);
    // The product of the means is 3/4 of it: the trap of quantifying a tree with means.
    EXPECT_NEAR(one * one / together, 0.75, 0.002);
    const double inTurn =
        overPeriod(both(part, tested(rate, interval, interval / 2)), wish)->meanUnavailability;
    EXPECT_NEAR(inTurn, 5 * load * load / 24, 0.01 * inTurn); // but for the first half interval
}

TEST(Period, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    PeriodWish wish;
    wish.stop = source.get_token();
    EXPECT_FALSE(overPeriod(single(tested(1e-3, 100, 100)), wish));
}

TEST(Period, CountsSharedTestDaysOnce) {
    const auto part = tested(1e-3, 100, 100);
    EXPECT_EQ(both(part, part).breakpointCount(1e6), single(part).breakpointCount(1e6));
    EXPECT_EQ(both(part, part).breakpoints(1000).size(), 9u);
}

} // namespace
} // namespace cutwater::reliability
