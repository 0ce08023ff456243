// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/builder.h"
#include "models/logic/extract.h"
#include "models/logic/pull.h"
#include "models/logic/race.h"
#include "models/logic/sifting.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

using namespace cutwater::logic;

namespace {

const Limits kLimits;

bool valueOf(const std::vector<BddNode>& nodes, Edge edge, const std::vector<bool>& levels) {
    while (!Bdd::isConstant(edge)) {
        const BddNode& node = nodes[edge >> 1];
        edge = (levels[node.level] ? node.high : node.low) ^ (edge & 1u);
    }
    return edge == kAlways;
}

// x1 y1 + x2 y2 + ... is small when each x stands beside its y and exponential when all x come
// first.
TEST(Sifting, FindsTheGoodOrderOfTheTextbookExample) {
    Account account(kLimits);
    Budget budget(account);
    Bdd bdd(budget);
    constexpr std::uint32_t kPairs = 10;
    Edge f = kNever;
    for (std::uint32_t i = 0; i < kPairs; ++i)
        f = bdd.disjunction(f, bdd.conjunction(bdd.variable(i), bdd.variable(kPairs + i)));
    Forest forest = extract(bdd, {f}, 2 * kPairs, budget);
    EXPECT_GT(forest.nodes.size(), 1000u);
    sift(forest, {}, budget);
    EXPECT_EQ(forest.nodes.size(), 2 * kPairs + 1);
}

TEST(Sifting, KeepsTheFunctions) {
    std::mt19937 random(7);
    for (int round = 0; round < 60; ++round) {
        Account account(kLimits);
        Budget budget(account);
        Bdd bdd(budget);
        constexpr std::uint32_t kLevels = 7;
        std::vector<Edge> pool;
        for (std::uint32_t level = 0; level < kLevels; ++level)
            pool.push_back(bdd.variable(level));
        for (int i = 0; i < 25; ++i) {
            const auto pick = [&] { return pool[random() % pool.size()] ^ (random() & 1u); };
            pool.push_back(bdd.ifThenElse(pick(), pick(), pick()));
        }
        const Forest before = extract(bdd, {pool[20], pool[28] ^ 1u, pool[31]}, kLevels, budget);
        Forest after = before;
        const std::vector<std::uint32_t> was = sift(after, {}, budget);
        EXPECT_LE(after.nodes.size(), before.nodes.size());
        for (std::size_t i = 1; i < after.nodes.size(); ++i) {
            EXPECT_EQ(after.nodes[i].low & 1u, 0u);
            EXPECT_LT(after.nodes[i].high >> 1, i);
            EXPECT_LT(after.nodes[i].low >> 1, i);
        }
        for (unsigned state = 0; state < 1u << kLevels; ++state) {
            std::vector<bool> oldLevels(kLevels), newLevels(kLevels);
            for (std::uint32_t level = 0; level < kLevels; ++level)
                oldLevels[level] = state >> level & 1u;
            for (std::uint32_t level = 0; level < kLevels; ++level)
                newLevels[level] = oldLevels[was[level]];
            for (std::size_t root = 0; root < 3; ++root)
                ASSERT_EQ(valueOf(before.nodes, before.roots[root], oldLevels),
                          valueOf(after.nodes, after.roots[root], newLevels));
        }
    }
}

// A few nodes at a time.
Built builtInSteps(const Program& program, const std::vector<std::uint32_t>& order, Bdd& table,
                   Budget& budget, const BuilderWish& wish) {
    Builder builder(program, order, table, budget, wish);
    std::uint64_t allowed = 0;
    std::size_t inputs = 0, done = 0;
    for (GateView gate(program, 0); !gate.atEnd(); gate.advance())
        inputs += gate.count();
    while (!builder.advance(allowed)) {
        ++allowed;
        EXPECT_GE(builder.stepsDone(), done);
        done = builder.stepsDone();
    }
    EXPECT_EQ(builder.stepsDone(), inputs);
    return builder.take();
}

// Collecting and sifting after every gate, and stopping at every node, must not change what is
// built.
TEST(Builder, CollectingSiftingAndStoppingChangeNothingButTheOrder) {
    std::mt19937 random(11);
    for (int round = 0; round < 60; ++round) {
        constexpr std::uint32_t kLeaves = 8;
        Program program;
        program.leaves = kLeaves;
        std::uint32_t gates = 0;
        for (; gates < 9; ++gates) {
            const Op op = std::array{Op::conjunction, Op::disjunction, Op::atLeast,
                                     Op::exactlyOne}[random() % 4];
            program.code.insert(program.code.end(),
                                {static_cast<std::uint32_t>(op), op == Op::atLeast ? 2u : 0u, 3});
            for (int i = 0; i < 3; ++i) {
                const std::uint32_t pick = static_cast<std::uint32_t>(random() % (kLeaves + gates));
                program.code.push_back((pick < kLeaves ? pick << 2 : (pick - kLeaves) << 2 | 2u) |
                                       (random() & 1u));
            }
        }
        std::vector<std::uint32_t> order(kLeaves);
        std::iota(order.begin(), order.end(), 0);
        Account account(kLimits);
        Budget budget(account);
        Bdd plainTable(budget), busyTable(budget), slowTable(budget), lazyTable(budget);
        const Built plain = *build(program, order, plainTable, budget);
        const Built slow = builtInSteps(program, order, slowTable, budget, {});
        EXPECT_EQ(slow.diagram.nodes.size(), plain.diagram.nodes.size());
        const Built lazy = builtInSteps(program, order, lazyTable, budget, {.collectAbove = 2});
        const Built busy =
            *build(program, order, busyTable, budget, {.collectAbove = 2, .siftAbove = 2});
        for (unsigned state = 0; state < 1u << kLeaves; ++state) {
            const auto valueIn = [&](const Built& built) {
                std::vector<bool> levels(kLeaves);
                for (std::uint32_t level = 0; level < kLeaves; ++level)
                    levels[level] = state >> built.leafAt[level] & 1u;
                return valueOf(built.diagram.nodes, built.diagram.root, levels);
            };
            for (const Built* other : {&busy, &slow, &lazy})
                ASSERT_EQ(valueIn(*other), valueIn(plain));
        }
    }
}

// Probability of the built diagram where leaf i has probability p[i].
double probabilityOf(const Built& built, const std::vector<double>& p) {
    std::vector<double> value(built.diagram.nodes.size(), 0.0);
    const auto at = [&](Edge edge) { return edge & 1u ? 1 - value[edge >> 1] : value[edge >> 1]; };
    for (std::size_t i = 1; i < built.diagram.nodes.size(); ++i) {
        const BddNode& node = built.diagram.nodes[i];
        const double own = p[built.leafAt[node.level]];
        value[i] = own * at(node.high) + (1 - own) * at(node.low);
    }
    return at(built.diagram.root);
}

// (a + b)(c + d), counted by hand. In the order a b c d one gate is open after a and after b (there
// the top, which knows one of its two), two after c, and nothing is left to remember after d: roots
// of 2^1, 2^1, 2^2, 2^0. With a c b d two are open after c and after b.
TEST(Width, IsCountedByHandOnTwoPairs) {
    Program program;
    program.leaves = 4;
    const auto any = static_cast<std::uint32_t>(Op::disjunction),
               all = static_cast<std::uint32_t>(Op::conjunction);
    program.code = {any,    0,      2,   0 << 2, 1 << 2, any,        0,         2,
                    2 << 2, 3 << 2, all, 0,      2,      0 << 2 | 2, 1 << 2 | 2};
    WidthEstimate width(program);
    EXPECT_DOUBLE_EQ(width({0, 1, 2, 3}), 2 * std::sqrt(2.0) + 2 + 1);
    EXPECT_DOUBLE_EQ(width({0, 2, 1, 3}), std::sqrt(2.0) + 2 + 2 + 1);
}

// x1 y1 + x2 y2 + ...: every order that keeps the pairs together remembers one bit for the top and
// one within a pair, whatever the number of pairs; with all x first it is a bit for each.
TEST(Width, TellsTheGoodOrderOfTheTextbookExampleFromTheBadOne) {
    for (const std::uint32_t pairs : {8u, 200u}) {
        Program program;
        program.leaves = 2 * pairs;
        for (std::uint32_t i = 0; i < pairs; ++i)
            program.code.insert(program.code.end(), {static_cast<std::uint32_t>(Op::conjunction), 0,
                                                     2, i << 2, (pairs + i) << 2});
        program.code.insert(program.code.end(),
                            {static_cast<std::uint32_t>(Op::disjunction), 0, pairs});
        Order together;
        for (std::uint32_t i = 0; i < pairs; ++i) {
            program.code.push_back(i << 2 | 2u);
            together.insert(together.end(), {i, pairs + i});
        }
        Account account(kLimits);
        Budget budget(account);
        WidthEstimate width(program);
        EXPECT_LE(width(together), 2.0 * 2 * pairs);
        EXPECT_GE(width(ownLeavesFirst(program)) * 1.0001, 2 * std::exp2(pairs * 0.5));
        EXPECT_LE(bestPulled(program, 3, width, budget).guess, width(together) * 1.0001);
    }
}

// Whoever wins the race, the function is the same.
TEST(Race, TheWinnerComputesTheSameFunction) {
    std::mt19937 random(5);
    for (int round = 0; round < 12; ++round) {
        constexpr std::uint32_t kLeaves = 40;
        Program program;
        program.leaves = kLeaves;
        std::uint32_t gates = 0;
        for (; gates < 70; ++gates) { // two leaves and, later, two of the latest gates each
            const Op op = random() % 2 ? Op::conjunction : Op::disjunction;
            program.code.insert(program.code.end(), {static_cast<std::uint32_t>(op), 0, 4});
            for (int i = 0; i < 4; ++i) {
                const bool gate = i < 2 && gates > 0;
                const std::uint32_t back =
                    static_cast<std::uint32_t>(random() % std::min(std::max(gates, 1u), 6u));
                program.code.push_back(gate ? (gates - 1 - back) << 2 | 2u
                                            : static_cast<std::uint32_t>(random() % kLeaves) << 2);
            }
        }
        std::vector<double> p(kLeaves);
        for (double& each : p)
            each = std::uniform_real_distribution(0.1, 0.6)(random);
        Account account(kLimits);
        Budget budget(account);
        Bdd table(budget), other(budget);
        const Built plain = *build(program, ownLeavesFirst(program), table, budget);
        const Built raced = *buildByRace(program, other, budget);
        EXPECT_NEAR(probabilityOf(raced, p), probabilityOf(plain, p), 1e-12);
        WidthEstimate width(program);
        for (const Order& order :
             {gatesFirst(program), byLevel(program), mostWaysFirst(program),
              pulledTogether(program, gatesFirst(program), width, budget).order,
              bestPulled(program, 4, width, budget).order}) {
            Order sorted = order;
            std::sort(sorted.begin(), sorted.end());
            EXPECT_EQ(sorted, ownLeavesFirst(program)); // each leaf once
        }
    }
}

// Pairs whose events are numbered far apart: exponential in that order, linear in the one that the
// gates suggest.
TEST(Race, LeavesABadOrderBehind) {
    constexpr std::uint32_t kPairs = 16;
    Program program;
    program.leaves = 2 * kPairs;
    for (std::uint32_t i = 0; i < kPairs; ++i)
        program.code.insert(program.code.end(), {static_cast<std::uint32_t>(Op::conjunction), 0, 2,
                                                 i << 2, (kPairs + i) << 2});
    program.code.insert(program.code.end(),
                        {static_cast<std::uint32_t>(Op::disjunction), 0, kPairs});
    for (std::uint32_t i = 0; i < kPairs; ++i)
        program.code.push_back(i << 2 | 2u);
    Account account(kLimits);
    Budget budget(account);
    Bdd table(budget), other(budget);
    const Built plain = *build(program, ownLeavesFirst(program), table, budget);
    const Built raced = *buildByRace(program, other, budget);
    EXPECT_GT(plain.diagram.nodes.size(), 60000u);
    EXPECT_EQ(raced.diagram.nodes.size(), 2 * kPairs + 1);
    const std::vector<double> p(2 * kPairs, 0.3);
    EXPECT_NEAR(probabilityOf(raced, p), 1 - std::pow(1 - 0.09, kPairs), 1e-12);
    Bdd fresh(budget);
    EXPECT_FALSE(build(program, ownLeavesFirst(program), fresh, budget, {}, 1000));
}

} // namespace
