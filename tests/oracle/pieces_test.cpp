// SPDX-License-Identifier: GPL-3.0-or-later
// Large formulas are cut into pieces that are prepared each by itself: held to the same formulas
// put together from answers to their pieces.
#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <array>
#include <gtest/gtest.h>

namespace cutwater::oracle {
namespace {

using logic::Formula;
using logic::Literal;

// A random tree with a random tree in the place of every event. Some machines are built alike, and
// some are constant.
struct Assembly {
    RandomTree outer;
    std::vector<RandomTree> machines; // one for each variable of `outer`
    Formula formula;
    Literal top;
    std::vector<double> q;
    std::vector<std::size_t> firstOf; // variable of each machine
    std::vector<std::optional<bool>> constant;
};

Assembly assemble(std::uint64_t seed, bool negations) {
    Random random(seed);
    Assembly result;
    result.outer = makeTree(seed, {.events = 10, .gates = 10, .negations = negations});
    std::vector<Literal> tops;
    for (std::size_t i = 0; i < result.outer.q.size(); ++i) {
        const std::uint64_t kind = seed * 100 + random.below(4); // of four makes, some twice
        result.machines.push_back(
            makeTree(kind, {.events = 25, .gates = 40, .negations = negations}));
        RandomTree& machine = result.machines.back();
        std::vector<Literal> events;
        result.firstOf.push_back(result.q.size());
        for (double& q : machine.q) {
            q = 0.01 + 0.5 * random.unit();
            result.q.push_back(q);
            events.push_back(result.formula.addVariable());
        }
        tops.push_back(copyInto(result.formula, machine.formula, machine.top, events));
        result.constant.push_back({});
        if (!random.chance(0.15)) continue;
        // This machine always or never fails, which shows only when it is looked into.
        const bool always = random.chance(0.5);
        result.constant.back() = always;
        tops.back() =
            result.formula.addGate(always ? logic::Op::disjunction : logic::Op::conjunction,
                                   std::array{tops.back(), events[0], ~events[0]});
    }
    result.top = copyInto(result.formula, result.outer.formula, result.outer.top, tops);
    return result;
}

logic::Solution solvedIn(const Assembly& whole, std::uint32_t leastPiece, unsigned threads = 1) {
    logic::Limits limits;
    limits.leastPiece = leastPiece;
    limits.threads = threads;
    auto outcome = logic::solve(whole.formula, whole.top, limits);
    EXPECT_TRUE(outcome.solution);
    return *outcome.solution;
}

TEST(Pieces, ProbabilityAndImportanceAreThoseOfThePartsPutTogether) {
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const bool negations = seed % 2 == 1;
        const Assembly whole = assemble(seed, negations);
        SCOPED_TRACE("seed " + std::to_string(seed));
        std::vector<double> outerQ;
        std::vector<std::vector<double>> inside;
        for (std::size_t m = 0; m < whole.machines.size(); ++m) {
            const RandomTree& machine = whole.machines[m];
            const auto solution = solved(machine.formula, machine.top);
            outerQ.push_back(solution->probability(machine.q).occurs);
            inside.push_back(solution->birnbaum(machine.q));
            if (!whole.constant[m]) continue;
            outerQ.back() = *whole.constant[m] ? 1 : 0;
            inside.back().assign(machine.q.size(), 0.0);
        }
        const TruthTable table(whole.outer.formula, whole.outer.top);
        const auto outside = solved(whole.outer.formula, whole.outer.top)->birnbaum(outerQ);
        for (const std::uint32_t leastPiece : {2u, 48u, 1000000u}) {
            const logic::Solution solution = solvedIn(whole, leastPiece);
            const Chances wanted = probability(table, outerQ);
            const auto got = solution.probability(whole.q);
            EXPECT_TRUE(near(got.occurs, wanted.occurs, 1e-11)) << leastPiece;
            EXPECT_TRUE(near(got.occursNot, wanted.occursNot, 1e-11)) << leastPiece;
            const auto birnbaum = solution.birnbaum(whole.q);
            for (std::size_t m = 0; m < whole.machines.size(); ++m)
                for (std::size_t v = 0; v < inside[m].size(); ++v)
                    EXPECT_NEAR(birnbaum[whole.firstOf[m] + v], outside[m] * inside[m][v], 1e-12);
        }
    }
}

// However it is cut, a tree has the same sets.
TEST(Pieces, TheSetsDoNotDependOnTheCuts) {
    for (std::uint64_t seed = 100; seed < 140; ++seed) {
        const bool negations = seed % 2 == 1;
        const Assembly whole = assemble(seed, negations);
        SCOPED_TRACE("seed " + std::to_string(seed));
        const logic::Solution uncut = solvedIn(whole, 1000000);
        for (const std::uint32_t leastPiece : {2u, 48u}) {
            const logic::Solution cut = solvedIn(whole, leastPiece);
            EXPECT_EQ(cut.constant(), uncut.constant());
            EXPECT_EQ(cut.coherent(), uncut.coherent());
            EXPECT_EQ(cut.relevantVariables(), uncut.relevantVariables());
            EXPECT_EQ(plain(cut.countsByOrder(6u)), plain(uncut.countsByOrder(6u)));
            EXPECT_TRUE(near(cut.rareEventSum(whole.q), uncut.rareEventSum(whole.q), 1e-11));
            auto mine = cut.list(whole.q, {}), theirs = uncut.list(whole.q, {});
            for (int i = 0; i < 200; ++i) {
                const auto a = mine.next(), b = theirs.next();
                ASSERT_EQ(a.has_value(), b.has_value());
                if (!a) break;
                EXPECT_TRUE(near(a->probability, b->probability, 1e-11));
            }
        }
    }
}

TEST(Pieces, TheSameToTheBitOnAnyNumberOfThreads) {
    for (std::uint64_t seed = 200; seed < 210; ++seed) {
        const Assembly whole = assemble(seed, seed % 2 == 1);
        const auto one = solvedIn(whole, 2).probability(whole.q);
        for (const unsigned threads : {2u, 8u}) {
            const auto more = solvedIn(whole, 2, threads).probability(whole.q);
            EXPECT_EQ(one.occurs, more.occurs);
            EXPECT_EQ(one.occursNot, more.occursNot);
        }
    }
}

} // namespace
} // namespace cutwater::oracle
