// SPDX-License-Identifier: GPL-3.0-or-later
// Events over time by their definitions: the differential equations stepped, the limits, the jumps.
#include "models/reliability/profile.h"

#include "models/reliability/event_model.h"
#include "models/reliability/integrate.h"
#include "tests/oracle/solved.h"

#include <array>
#include <cmath>

namespace cutwater::reliability {
namespace {

using oracle::near;
using Kind = EventProfile::Kind;

EventProfile tested(double rate, double interval, double firstTest) {
    EventProfile part;
    part.kind = Kind::tested;
    part.rate = rate;
    part.interval = interval;
    part.firstTest = firstTest;
    return part;
}

double meanOf(const EventProfile& part, double begin, double end) {
    std::vector<double> cuts{begin};
    for (const double time : part.breakpoints(end))
        if (time > begin) cuts.push_back(time);
    cuts.push_back(end);
    const auto integral = integrate(cuts, 1, [&](double t, std::span<double> values) {
        values[0] = part.at(t).unavailability;
    });
    return integral.values[0] / (end - begin);
}

// Works, failed unseen, under repair: the three states stepped through tests (Runge-Kutta), without
// any closed form. Answers q at `time`.
double stepped(const EventProfile& part, double time) {
    using State = std::array<double, 3>;
    State s{1, 0, 0};
    const auto slope = [&part](const State& x) {
        return State{-part.rate * x[0] + x[2] / part.repair, part.rate * x[0], -x[2] / part.repair};
    };
    const auto advance = [&](double length) {
        const int steps = std::max(1, static_cast<int>(std::ceil(length / 0.05)));
        const double h = length / steps;
        for (int i = 0; i < steps; ++i) {
            const auto plus = [&s](const State& k, double by) {
                return State{s[0] + by * k[0], s[1] + by * k[1], s[2] + by * k[2]};
            };
            const State a = slope(s), b = slope(plus(a, h / 2)), c = slope(plus(b, h / 2)),
                        d = slope(plus(c, h));
            for (std::size_t j = 0; j < 3; ++j)
                s[j] += h / 6 * (a[j] + 2 * b[j] + 2 * c[j] + d[j]);
        }
    };
    double t = 0;
    for (double test = part.firstTest; test + part.testDuration <= time; test += part.interval) {
        advance(test - t);
        s = {s[0], 0, s[1] + s[2]}; // found; nothing changes during the test
        t = test + part.testDuration;
    }
    advance(time - t);
    return s[1] + s[2];
}

TEST(EventProfile, TestedWithRepairAgreesWithSteppingItsStates) {
    EventProfile part = tested(4e-3, 90, 30);
    part.testDuration = 3;
    part.repair = 25;
    for (const double time : {10.0, 29.0, 34.0, 60.0, 119.9, 124.0, 200.0, 700.0})
        EXPECT_NEAR(part.at(time).unavailability, stepped(part, time), 1e-9) << time;
    part.repair = 250; // repair mean = mean time to failure: the closed form's denominator is 0
    for (const double time : {34.0, 124.0, 700.0})
        EXPECT_NEAR(part.at(time).unavailability, stepped(part, time), 1e-9) << time;
}

TEST(EventProfile, ATestIsAJump) {
    EventProfile part = tested(1e-3, 100, 40);
    EXPECT_TRUE(
        near(part.at(40, Side::before).unavailability, missionUnreliability(1e-3, 40), 1e-14));
    EXPECT_EQ(part.at(40, Side::after).unavailability, 0);
    // 0.1 + 0.2 is not 0.3: the 1234th test is found all the same.
    const double test = 40 + 1234 * 100.0;
    EXPECT_NEAR(part.at(test, Side::before).unavailability, missionUnreliability(1e-3, 100), 1e-12);
    EXPECT_NEAR(part.at(test, Side::after).unavailability, 0, 1e-12);
    part.testDuration = 2;
    EXPECT_EQ(part.at(40, Side::after).unavailability, 1);
    EXPECT_EQ(part.at(42, Side::before).unavailability, 1);
    EXPECT_EQ(part.at(42, Side::after).unavailability, 0);
    EXPECT_EQ(part.at(41).frequency, 0); // it cannot fail while it is out of service
    EXPECT_LT(part.sinceTest(41, Side::after), 0);
    EXPECT_NEAR(part.sinceTest(52, Side::after), 10, 1e-9);
}

TEST(EventProfile, MeansAreThoseOfTheFormulas) {
    EXPECT_TRUE(
        near(meanOf(tested(1e-4, 500, 500), 0, 5000), testedMeanUnavailability(1e-4, 500), 1e-12));
    // What tests do not find, over one whole life, in series with what they find.
    EventProfile part = tested(1e-5, 500, 500);
    part.coverage = 0.9;
    part.renewal = 5000;
    const double cycle = testedMeanUnavailability(0.9e-5, 500);
    const double hidden = testedMeanUnavailability(0.1e-5, 5000);
    // The two rise together within each interval, by which the mean of their product is larger.
    const double together = 0.9e-5 * 500 * 0.1e-5 * 500 / 12;
    EXPECT_NEAR(meanOf(part, 0, 5000), cycle + hidden - cycle * hidden - together, 2e-9);
}

TEST(EventProfile, TheFrequencyIsTheSlopeOfWhatIsNeverMended) { // finite differences
    EventProfile failing, weibull;
    failing.kind = Kind::failing;
    failing.rate = 2e-3;
    weibull.kind = Kind::weibull;
    weibull.shape = 2.3;
    weibull.scale = 400;
    weibull.location = 50;
    for (const EventProfile& part : {failing, weibull})
        for (const double t : {60.0, 200.0, 900.0}) {
            const double h = 1e-3;
            const double slope =
                (part.at(t + h).unavailability - part.at(t - h).unavailability) / (2 * h);
            EXPECT_NEAR(part.at(t).frequency, slope, 1e-6 * slope) << t;
        }
    EXPECT_EQ(weibull.at(49).unavailability, 0);
    EXPECT_EQ(weibull.at(49).frequency, 0);
}

TEST(EventProfile, BalanceOfFailuresAndRestorations) { // dq/dt = w - v
    EventProfile part;
    part.kind = Kind::repairable;
    part.rate = 3e-3;
    part.repair = 20;
    EventProfile inTests = tested(3e-3, 100, 100);
    inTests.repair = 20;
    for (const EventProfile& one : {part, inTests})
        for (const double t : {5.0, 130.0, 180.0}) {
            const double h = 1e-3;
            const double slope =
                (one.at(t + h).unavailability - one.at(t - h).unavailability) / (2 * h);
            EXPECT_NEAR(one.at(t).frequency - one.at(t).restoration, slope, 1e-9) << t;
        }
}

TEST(EventProfile, Unreliability) {
    EventProfile part;
    part.kind = Kind::weibull;
    part.shape = 1;
    part.scale = 100;
    part.renewal = 30;
    // With shape 1 it does not age: renewing makes no difference to the first failure.
    EXPECT_TRUE(near(part.unreliability(75), -std::expm1(-0.75L), 1e-13));
    part.shape = 2; // three whole missions and 10 h
    const double survives = std::exp(-3 * 0.09 - 0.01);
    EXPECT_NEAR(part.unreliability(100), 1 - survives, 1e-13);
    EXPECT_TRUE(near(tested(1e-3, 100, 100).unreliability(500), -std::expm1(-0.5L), 1e-14));
    EventProfile constant;
    constant.probability = 0.25;
    EXPECT_EQ(constant.unreliability(1e6), 0.25);
}

TEST(EventProfile, SmallNumbersKeepTheirDigits) {
    EventProfile part = tested(1e-15, 100, 100);
    part.repair = 10;
    EXPECT_TRUE(near(part.at(50).unavailability, 5e-14L, 1e-12));
    EXPECT_NEAR(part.at(150).unavailability, 5e-14 + 1e-13 * std::exp(-5.0), 1e-19);
}

TEST(EventProfile, BreakpointsAreTheJumpsInOrder) {
    EventProfile part = tested(1e-3, 100, 40);
    part.testDuration = 5;
    EXPECT_EQ(part.breakpoints(260), (std::vector<double>{40, 45, 140, 145, 240, 245}));
    EXPECT_GE(part.breakpointCount(260), 6);
    EXPECT_EQ(part.breakpoints(40), std::vector<double>{}); // (0, end), both ends left out
    EXPECT_FALSE(part.neverRecovers());
}

} // namespace
} // namespace cutwater::reliability
