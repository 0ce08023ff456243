// SPDX-License-Identifier: GPL-3.0-or-later
// Unavailability, frequency and expected number against a million lives drawn by chance. The bound
// is 4.5 standard errors of the count (about one false alarm in 150,000 comparisons); the seeds are
// fixed, so a failure stays one.
#include "models/reliability/top_event.h"
#include "tests/oracle/solved.h"
#include "tests/oracle/up_down.h"

#include <cmath>

namespace cutwater::oracle {
namespace {

using logic::Literal;
using logic::Op;
using reliability::EventProfile;

constexpr double kErrors = 4.5;

EventProfile profileOf(const Part& part) {
    EventProfile profile;
    profile.rate = part.rate;
    profile.repair = part.repair;
    profile.interval = part.interval;
    profile.firstTest = part.firstTest;
    profile.testDuration = part.testDuration;
    profile.coverage = part.coverage;
    profile.shape = part.shape;
    profile.scale = part.scale;
    profile.renewal = part.renewal;
    using To = EventProfile::Kind;
    switch (part.kind) {
    case Part::Kind::failing: profile.kind = To::failing; break;
    case Part::Kind::repairable: profile.kind = To::repairable; break;
    case Part::Kind::tested: profile.kind = To::tested; break;
    case Part::Kind::weibull: profile.kind = To::weibull; break;
    case Part::Kind::initiating: profile.kind = To::initiating; break;
    }
    return profile;
}

struct Compared {
    reliability::PeriodFigures figures;
    Lives lives;
};

void expectNear(double computed, const Counted& counted, const char* what) {
    EXPECT_NEAR(computed, counted.mean, kErrors * counted.error) << what;
    // A comparison that could not fail would prove nothing.
    EXPECT_LT(counted.error, 0.007 * counted.mean) << what;
}

Compared compare(const std::vector<Part>& parts,
                 const std::function<Literal(logic::Formula&, const std::vector<Literal>&)>& gate,
                 const std::function<bool(const std::vector<char>&)>& top, double end,
                 std::size_t histories, std::uint64_t seed) {
    logic::Formula formula;
    std::vector<Literal> inputs;
    std::vector<EventProfile> profiles;
    for (const Part& part : parts) {
        inputs.push_back(formula.addVariable());
        profiles.push_back(profileOf(part));
    }
    const Literal whole = gate(formula, inputs);
    const auto solution = solved(formula, whole);
    const reliability::TopCourse course(*solution, profiles,
                                        reliability::Crossings::of(formula, whole));
    reliability::PeriodWish wish;
    wish.end = end;
    return {*reliability::overPeriod(course, wish), liveThrough(parts, top, end, histories, seed)};
}

Part repairable(double rate, double repair, double renewal = 0) {
    Part part;
    part.kind = Part::Kind::repairable;
    part.rate = rate;
    part.repair = repair;
    part.renewal = renewal;
    return part;
}

Part tested(double rate, double interval, double firstTest) {
    Part part;
    part.kind = Part::Kind::tested;
    part.rate = rate;
    part.interval = interval;
    part.firstTest = firstTest;
    return part;
}

void expectWithinBounds(const Compared& compared) {
    const Counted& once = compared.lives.atLeastOnce;
    EXPECT_LE(compared.figures.unreliabilityLow, once.mean + kErrors * once.error);
    EXPECT_GE(compared.figures.unreliabilityHigh, once.mean - kErrors * once.error);
}

TEST(LivesByChance, TwoOfThreeRepairedParts) { // a million histories of 200 h
    const std::vector<Part> parts{repairable(0.01, 10), repairable(0.02, 5), repairable(0.015, 8)};
    const auto compared = compare(
        parts, [](auto& f, const auto& in) { return f.addGate(Op::atLeast, in, 2); },
        [](const auto& s) { return s[0] + s[1] + s[2] >= 2; }, 200, 1'000'000, 1);
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    expectNear(compared.figures.meanUnavailability, compared.lives.share, "mean unavailability");
    expectNear(compared.figures.atEnd, compared.lives.atEnd, "unavailability at the end");
    expectWithinBounds(compared);
}

TEST(LivesByChance, PairTestedInTurn) { // test outages, repair, failures that no test finds
    Part a = tested(2e-3, 100, 100), b = tested(3e-3, 100, 50);
    for (Part* part : {&a, &b}) {
        part->testDuration = 4;
        part->repair = 15;
        part->coverage = 0.8;
        part->renewal = 450;
    }
    const auto compared = compare(
        {a, b}, [](auto& f, const auto& in) { return f.addGate(Op::conjunction, in); },
        [](const auto& s) { return s[0] && s[1]; }, 1000, 1'000'000, 2);
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    expectNear(compared.figures.meanUnavailability, compared.lives.share, "mean unavailability");
    expectNear(compared.figures.atEnd, compared.lives.atEnd, "unavailability at the end");
}

TEST(LivesByChance, OneTestedPartThatIsOftenFoundFailed) { // what one test finds outlasts the next
    Part part = tested(0.01, 60, 20);
    part.testDuration = 2;
    part.repair = 40;
    const auto compared = compare(
        {part}, [](auto&, const auto& in) { return in[0]; },
        [](const auto& s) { return s[0] != 0; }, 310, 1'000'000, 3);
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    expectNear(compared.figures.meanUnavailability, compared.lives.share, "mean unavailability");
    expectNear(compared.figures.atEnd, compared.lives.atEnd, "unavailability at the end");
}

TEST(LivesByChance, InitiatorThatMeetsFailedProtection) {
    Part initiator;
    initiator.kind = Part::Kind::initiating;
    initiator.rate = 0.02;
    const std::vector<Part> parts{initiator, tested(1e-3, 200, 200), repairable(5e-3, 20)};
    const auto compared = compare(
        parts,
        [](auto& f, const auto& in) {
            const Literal lost = f.addGate(Op::disjunction, std::vector{in[1], in[2]});
            return f.addGate(Op::conjunction, std::vector{in[0], lost});
        },
        [](const auto& s) { return s[0] && (s[1] || s[2]); }, 500, 1'000'000, 4);
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    EXPECT_EQ(compared.figures.meanUnavailability, 0);
    expectWithinBounds(compared);
}

TEST(LivesByChance, AgeingPartsAndMissionsThatBeginAnew) {
    Part wears, early, mission;
    wears.kind = early.kind = Part::Kind::weibull;
    wears.shape = 2.5;
    wears.scale = 300;
    early.shape = 0.6; // its rate is infinite when it is new
    early.scale = 400;
    early.renewal = 120;
    mission.rate = 4e-3;
    mission.renewal = 50;
    const auto compared = compare(
        {wears, early, mission},
        [](auto& f, const auto& in) {
            const Literal both = f.addGate(Op::conjunction, std::vector{in[1], in[2]});
            return f.addGate(Op::disjunction, std::vector{in[0], both});
        },
        [](const auto& s) { return s[0] || (s[1] && s[2]); }, 200, 1'000'000, 5);
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    expectNear(compared.figures.meanUnavailability, compared.lives.share, "mean unavailability");
    expectWithinBounds(compared);
}

TEST(LivesByChance, NothingRecovers) { // then the chance of "at least once" is exact
    Part a, b;
    a.rate = 3e-3;
    b.kind = Part::Kind::weibull;
    b.shape = 1.7;
    b.scale = 250;
    const auto compared = compare(
        {a, b}, [](auto& f, const auto& in) { return f.addGate(Op::conjunction, in); },
        [](const auto& s) { return s[0] && s[1]; }, 150, 1'000'000, 6);
    ASSERT_TRUE(compared.figures.unreliabilityExact);
    expectNear(*compared.figures.unreliabilityExact, compared.lives.atLeastOnce, "at least once");
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
}

TEST(LivesByChance, OneEventAlone) { // "at least once" is exact in spite of tests and repairs
    Part part = tested(0.004, 60, 20);
    part.repair = 30;
    part.coverage = 0.7;
    part.renewal = 130;
    const auto compared = compare(
        {part}, [](auto&, const auto& in) { return in[0]; },
        [](const auto& s) { return s[0] != 0; }, 310, 1'000'000, 11);
    ASSERT_TRUE(compared.figures.unreliabilityExact);
    expectNear(*compared.figures.unreliabilityExact, compared.lives.atLeastOnce, "at least once");
}

TEST(LivesByChance, APartThatComesBackCanBringTheTopAbout) { // A and not B
    const std::vector<Part> parts{repairable(0.01, 20), repairable(0.02, 15)};
    const auto compared = compare(
        parts,
        [](auto& f, const auto& in) {
            return f.addGate(Op::conjunction, std::vector{in[0], ~in[1]});
        },
        [](const auto& s) { return s[0] && !s[1]; }, 200, 1'000'000, 7);
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    expectNear(compared.figures.meanUnavailability, compared.lives.share, "mean unavailability");
}

TEST(LivesByChance, EventsThatHelpAndHinder) { // exactly one of two
    const std::vector<Part> parts{repairable(0.01, 20), repairable(0.02, 15)};
    const auto compared = compare(
        parts, [](auto& f, const auto& in) { return f.addGate(Op::exactlyOne, in); },
        [](const auto& s) { return (s[0] != 0) != (s[1] != 0); }, 200, 1'000'000, 8);
    expectNear(compared.figures.meanUnavailability, compared.lives.share, "mean unavailability");
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    EXPECT_TRUE(compared.figures.exactNumber);
    expectWithinBounds(compared);
}

// Tests that take away what hinders: A and not B, or exactly one of B and C, B and C tested
// together, with a new mission of A now and then at the same hour.
TEST(LivesByChance, TestsThatTakeAwayWhatHinders) {
    Part a, b = tested(6e-3, 60, 60), c = tested(9e-3, 60, 60);
    a.rate = 0.004;
    a.renewal = 120;
    const auto compared = compare(
        {a, b, c},
        [](auto& f, const auto& in) {
            const Literal only = f.addGate(Op::conjunction, std::vector{in[0], ~in[1]});
            const Literal one = f.addGate(Op::exactlyOne, std::vector{in[1], in[2]});
            return f.addGate(Op::disjunction, std::vector{only, one});
        },
        [](const auto& s) { return (s[0] && !s[1]) || (s[1] != 0) != (s[2] != 0); }, 310, 1'000'000,
        9);
    EXPECT_GT(compared.figures.expectedAtJumps, 0.05);
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    expectNear(compared.figures.meanUnavailability, compared.lives.share, "mean unavailability");
    EXPECT_TRUE(compared.figures.exactNumber);
    expectWithinBounds(compared);
}

// Tests that take time, and repairs after them, in a tree that one of the parts hinders.
TEST(LivesByChance, OutagesAndRepairsOfWhatHinders) {
    Part a = repairable(0.02, 12), b = tested(8e-3, 80, 50);
    b.testDuration = 3;
    b.repair = 25;
    const auto compared = compare(
        {a, b},
        [](auto& f, const auto& in) {
            return f.addGate(Op::conjunction, std::vector{in[0], ~in[1]});
        },
        [](const auto& s) { return s[0] && !s[1]; }, 330, 1'000'000, 10);
    EXPECT_GT(compared.figures.expectedAtJumps, 0.01);
    expectNear(compared.figures.expectedNumber, compared.lives.number, "expected number");
    expectNear(compared.figures.meanUnavailability, compared.lives.share, "mean unavailability");
}

} // namespace
} // namespace cutwater::oracle
