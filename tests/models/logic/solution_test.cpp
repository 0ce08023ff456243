// SPDX-License-Identifier: GPL-3.0-or-later
// Plain facts about small solutions; tests/oracle holds the engine against independent methods.
#include "models/logic/solution.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace cutwater::logic;
using ::testing::ElementsAre;

namespace {

std::vector<std::vector<SetLiteral>> allSets(const Solution& solution, std::vector<double> q,
                                             ListingWish wish = {}) {
    std::vector<std::vector<SetLiteral>> sets;
    Listing listing = solution.list(q, wish);
    while (const auto set = listing.next())
        sets.push_back(set->literals);
    return sets;
}

TEST(Solution, AndOrWithARepeatedEvent) {
    Formula f;
    const Literal a = f.addVariable(), b = f.addVariable(), c = f.addVariable();
    const Literal ab = f.addGate(Op::conjunction, std::array{a, b}),
                  ac = f.addGate(Op::conjunction, std::array{a, c});
    const Literal top = f.addGate(Op::disjunction, std::array{ab, ac});
    const auto outcome = solve(f, top);
    ASSERT_TRUE(outcome.solution);
    const Solution& s = *outcome.solution;
    EXPECT_TRUE(s.coherent());
    const std::vector<double> q{0.1, 0.2, 0.3};
    EXPECT_DOUBLE_EQ(s.probability(q).occurs, 0.1 * (1 - 0.8 * 0.7));
    EXPECT_THAT(allSets(s, q), ElementsAre(ElementsAre(SetLiteral{0}, SetLiteral{2}),
                                           ElementsAre(SetLiteral{0}, SetLiteral{1})));
    EXPECT_EQ(s.setCount(), (Count{2, false}));
}

TEST(Solution, ConsensusIsFound) { // if A then B else C: {B, C} stands in no gate
    Formula f;
    const Literal a = f.addVariable(), b = f.addVariable(), c = f.addVariable();
    const Literal ab = f.addGate(Op::conjunction, std::array{a, b}),
                  nac = f.addGate(Op::conjunction, std::array{~a, c});
    const auto outcome = solve(f, f.addGate(Op::disjunction, std::array{ab, nac}));
    ASSERT_TRUE(outcome.solution);
    EXPECT_FALSE(outcome.solution->coherent());
    EXPECT_EQ(outcome.solution->setCount(), (Count{3, false}));
    EXPECT_NEAR(outcome.solution->probability(std::vector{0.1, 0.2, 0.3}).occurs, 0.29, 1e-15);
}

TEST(Solution, TinyProbabilitiesKeepTheirDigits) {
    Formula f;
    std::vector<Literal> inputs;
    for (int i = 0; i < 10; ++i)
        inputs.push_back(f.addVariable());
    const auto outcome = solve(f, f.addGate(Op::conjunction, inputs));
    ASSERT_TRUE(outcome.solution);
    const ProbabilityPair p = outcome.solution->probability(std::vector<double>(10, 1e-30));
    EXPECT_NEAR(p.occurs / 1e-300, 1.0, 1e-12);
    const auto other = solve(f, ~f.addGate(Op::conjunction, inputs));
    EXPECT_NEAR(other.solution->probability(std::vector<double>(10, 1e-30)).occursNot / 1e-300, 1.0,
                1e-12);
}

TEST(Solution, VoteCountsAreBinomial) {
    for (const auto& [k, n, count] : {std::tuple{2, 3, 3u}, {5, 10, 252u}, {20, 40, 0u}}) {
        Formula f;
        std::vector<Literal> inputs;
        for (int i = 0; i < n; ++i)
            inputs.push_back(f.addVariable());
        const auto outcome = solve(f, f.addGate(Op::atLeast, inputs, k));
        ASSERT_TRUE(outcome.solution);
        const auto expected =
            std::round(std::exp(std::lgamma(n + 1) - std::lgamma(k + 1) - std::lgamma(n - k + 1)));
        EXPECT_NEAR(toDouble(outcome.solution->setCount()), expected, expected * 1e-9);
        if (count != 0) {
            EXPECT_EQ(outcome.solution->setCount(), (Count{count, false}));
        }
        const auto orders = outcome.solution->countsByOrder();
        ASSERT_EQ(orders.size(), std::size_t(k) + 1);
        EXPECT_EQ(orders.back(), outcome.solution->setCount());
    }
}

TEST(Solution, ConstantsAreNamed) {
    Formula f;
    const Literal a = f.addVariable();
    const auto always = solve(f, f.addGate(Op::disjunction, std::array{a, ~a}));
    EXPECT_EQ(always.solution->constant(), true);
    EXPECT_EQ(allSets(*always.solution, {0.5}).size(), 1u);
    const auto never = solve(f, kFalse);
    EXPECT_EQ(never.solution->constant(), false);
    EXPECT_EQ(never.solution->setCount(), Count{});
}

// (a or not a') hidden below: a module that is a constant must not leave its sets behind.
TEST(Solution, ConstantModuleInsideATree) {
    Formula f;
    const Literal a = f.addVariable(), b = f.addVariable(), c = f.addVariable(),
                  d = f.addVariable();
    const Literal x = f.addGate(Op::exactlyOne, std::array{a, b});
    const Literal same =
        f.addGate(Op::disjunction, std::array{f.addGate(Op::conjunction, std::array{a, b}),
                                              f.addGate(Op::conjunction, std::array{~a, ~b})});
    const Literal always = f.addGate(Op::disjunction, std::array{x, same});
    const Literal top = f.addGate(Op::disjunction,
                                  std::array{f.addGate(Op::conjunction, std::array{always, c}), d});
    const auto outcome = solve(f, top);
    EXPECT_THAT(outcome.solution->relevantVariables(), ElementsAre(2u, 3u));
    EXPECT_EQ(outcome.solution->setCount(), (Count{2, false}));
}

TEST(Solution, ChainOf100000GatesIsSolved) {
    Formula f;
    Literal gate = f.addVariable();
    for (int i = 0; i < 100000; ++i) {
        const Literal event = f.addVariable();
        gate = f.addGate(i % 2 ? Op::conjunction : Op::disjunction, std::array{gate, event});
    }
    const auto outcome = solve(f, gate);
    ASSERT_TRUE(outcome.solution);
    EXPECT_GT(outcome.solution->probability(std::vector<double>(100001, 0.5)).occurs, 0.3);
    EXPECT_EQ(outcome.solution->setCount().value, 50001u);
}

TEST(Solution, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    Formula f;
    const Literal a = f.addVariable();
    EXPECT_EQ(solve(f, a, {.stop = source.get_token()}).stop, Stop::cancelled);
}

TEST(Solution, StopsWhenMemoryIsUsedUp) {
    Formula f;
    const Literal a = f.addVariable(), b = f.addVariable();
    const auto outcome =
        solve(f, f.addGate(Op::conjunction, std::array{a, b}), {.memoryBytes = 100});
    EXPECT_EQ(outcome.stop, Stop::memory);
    EXPECT_FALSE(outcome.solution);
}

TEST(Solution, CutOffsLeaveOutWhatTheySay) {
    Formula f;
    std::vector<Literal> v;
    for (int i = 0; i < 6; ++i)
        v.push_back(f.addVariable());
    const Literal two = f.addGate(Op::conjunction, std::array{v[1], v[2]});
    const Literal three = f.addGate(Op::conjunction, std::array{v[3], v[4], v[5]});
    const auto outcome = solve(f, f.addGate(Op::disjunction, std::array{v[0], two, three}));
    const std::vector<double> q{1e-4, 0.1, 0.1, 0.5, 0.5, 0.5};
    EXPECT_EQ(allSets(*outcome.solution, q, {.maxOrder = 2}).size(), 2u);
    EXPECT_EQ(allSets(*outcome.solution, q, {.minProbability = 0.02}).size(), 1u);
    const auto byProbability = allSets(*outcome.solution, q, {.sorting = Sorting::byProbability});
    ASSERT_EQ(byProbability.size(), 3u);
    EXPECT_EQ(byProbability[0].size(), 3u);
    EXPECT_EQ(byProbability[2].size(), 1u);
    EXPECT_NEAR(outcome.solution->rareEventSum(q), 1e-4 + 0.01 + 0.125, 1e-15);
    EXPECT_NEAR(outcome.solution->minCutUpperBound(q), 1 - (1 - 1e-4) * (1 - 0.01) * (1 - 0.125),
                1e-15);
}

// Against Q(1) - Q(0) by conditioning, on a tree with modules, a vote, negation and an exclusive
// or.
TEST(Solution, BirnbaumIsTheDifferenceOfTheTwoConditionedProbabilities) {
    Formula f;
    std::vector<Literal> v;
    for (int i = 0; i < 12; ++i)
        v.push_back(f.addVariable());
    const Literal vote = f.addGate(Op::atLeast, std::array{v[0], v[1], v[2], v[3]}, 2);
    const Literal exclusive = f.addGate(Op::exactlyOne, std::array{v[4], v[5], v[0]});
    const Literal pair = f.addGate(Op::conjunction, std::array{v[6], v[7]});
    const Literal mixed = f.addGate(Op::conjunction, std::array{exclusive, ~pair, v[8]});
    const Literal top =
        f.addGate(Op::disjunction,
                  std::array{f.addGate(Op::conjunction, std::array{vote, v[9]}), mixed, v[10]});
    for (const Literal literal : {top, ~top}) {
        const auto outcome = solve(f, literal);
        std::vector<double> q;
        for (int i = 0; i < 12; ++i)
            q.push_back(0.03 + 0.07 * i);
        const std::vector<double> birnbaum = outcome.solution->birnbaum(q);
        ASSERT_EQ(birnbaum.size(), 12u);
        for (std::size_t i = 0; i < q.size(); ++i) {
            std::vector<double> one = q, zero = q;
            one[i] = 1;
            zero[i] = 0;
            const double expected = outcome.solution->probability(one).occurs -
                                    outcome.solution->probability(zero).occurs;
            EXPECT_NEAR(birnbaum[i], expected, 1e-14) << i;
        }
        EXPECT_EQ(birnbaum[11], 0);
    }
}

} // namespace
