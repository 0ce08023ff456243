// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/recall.h"
#include "models/logic/solution.h"

#include <gtest/gtest.h>

#include <random>

using namespace cutwater::logic;

namespace {

// Twenty modules of one structure under a vote; `odd` of them have another structure.
struct Sample {
    Formula formula;
    Literal top;
};
Sample sample(unsigned odd) {
    Sample s;
    std::vector<Literal> machines;
    for (unsigned m = 0; m < 20; ++m) {
        std::vector<Literal> v;
        for (int i = 0; i < 6; ++i)
            v.push_back(s.formula.addVariable());
        const Literal left =
            s.formula.addGate(Op::atLeast, std::array{v[0], v[1], v[2], v[3]}, m < odd ? 3 : 2);
        const Literal right = s.formula.addGate(Op::conjunction, std::array{v[2], v[4], v[5]});
        machines.push_back(s.formula.addGate(Op::disjunction, std::array{left, right}));
    }
    s.top = s.formula.addGate(Op::atLeast, machines, 3);
    return s;
}

std::vector<double> someProbabilities(std::size_t count) {
    std::mt19937 random(3);
    std::vector<double> q(count);
    for (double& p : q)
        p = std::uniform_real_distribution(0.001, 0.2)(random);
    return q;
}

TEST(Recall, AnswersAreTheSameWithAndWithout) {
    const auto recall = std::make_shared<Recall>();
    for (const unsigned odd : {0u, 1u, 7u, 0u}) {
        const Sample s = sample(odd);
        Limits limits;
        limits.recall = recall;
        const auto remembered = solve(s.formula, s.top, limits), fresh = solve(s.formula, s.top);
        const auto q = someProbabilities(s.formula.variableCount());
        EXPECT_EQ(remembered.solution->probability(q).occurs,
                  fresh.solution->probability(q).occurs);
        EXPECT_EQ(remembered.solution->setCount(), fresh.solution->setCount());
        EXPECT_EQ(remembered.solution->countsByOrder(), fresh.solution->countsByOrder());
    }
    EXPECT_GT(recall->bytes(), 0u);
}

TEST(Recall, DropsWhatIsNotUsedWhenItIsFull) {
    const auto recall = std::make_shared<Recall>(1);
    for (const unsigned odd : {0u, 1u, 7u, 0u}) {
        Limits limits;
        limits.recall = recall;
        ASSERT_TRUE(solve(sample(odd).formula, sample(odd).top, limits).solution);
    }
    EXPECT_EQ(recall->bytes(), 0u);
}

TEST(Threads, AnswersAreTheSameToTheBit) {
    const Sample s = sample(9);
    const auto q = someProbabilities(s.formula.variableCount());
    const auto one = solve(s.formula, s.top);
    for (const unsigned threads : {2u, 8u}) {
        Limits limits;
        limits.threads = threads;
        const auto many = solve(s.formula, s.top, limits);
        EXPECT_EQ(many.solution->probability(q).occurs, one.solution->probability(q).occurs);
        EXPECT_EQ(many.solution->minCutUpperBound(q), one.solution->minCutUpperBound(q));
        EXPECT_EQ(many.solution->countsByOrder(), one.solution->countsByOrder());
    }
}

} // namespace
