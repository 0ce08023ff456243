// SPDX-License-Identifier: GPL-3.0-or-later
// Bounds against the exact answer, on trees where both can be had.
#include "models/logic/bounded.h"
#include "models/logic/family_algebra.h"
#include "models/logic/solution.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

using namespace cutwater::logic;

namespace {

struct Sample {
    Formula formula;
    Literal top;
    std::vector<double> q;
};

// Coherent, with sharing at every level.
Sample sample(unsigned seed, double most) {
    std::mt19937 random(seed);
    Sample s;
    std::vector<Literal> pool;
    for (int i = 0; i < 24; ++i) {
        pool.push_back(s.formula.addVariable());
        s.q.push_back(std::uniform_real_distribution(most / 100, most)(random));
    }
    for (int i = 0; i < 30; ++i) {
        const Op op = std::array{Op::conjunction, Op::disjunction, Op::atLeast}[random() % 3];
        std::vector<Literal> inputs;
        for (int k = 0; k < 3; ++k)
            inputs.push_back(pool[random() % pool.size()]);
        pool.push_back(s.formula.addGate(op, inputs, 2));
    }
    s.top = s.formula.addGate(Op::disjunction, std::span(pool).last(6));
    return s;
}

TEST(Bounds, HoldTheExactProbability) {
    int narrow = 0, cut = 0;
    for (unsigned seed = 0; seed < 200; ++seed) {
        const Sample s = sample(seed, seed % 2 ? 0.02 : 0.4);
        const double exact = solve(s.formula, s.top).solution->probability(s.q).occurs;
        for (const double cutOff : {1e-2, 1e-4}) {
            BoundsWish wish;
            wish.exactNodes = 0;
            wish.cases = 0;
            wish.firstCutOff = cutOff;
            wish.width = 1e300; // the first cut-off is good enough
            const auto outcome = boundTop(s.formula, s.top, s.q, {}, wish);
            ASSERT_TRUE(outcome.bounds) << seed;
            EXPECT_LE(outcome.bounds->lower, exact * (1 + 1e-12)) << seed;
            EXPECT_GE(outcome.bounds->upper, exact * (1 - 1e-12)) << seed;
            cut += outcome.bounds->dropped > 0;
        }
        BoundsWish wish;
        wish.exactNodes = 0;
        wish.cases = 0;
        const auto outcome = boundTop(s.formula, s.top, s.q, {}, wish);
        narrow += outcome.bounds->upper - outcome.bounds->lower <= 0.01 * outcome.bounds->lower;
        EXPECT_LE(outcome.bounds->lower, exact * (1 + 1e-12)) << seed;
        EXPECT_GE(outcome.bounds->upper, exact * (1 - 1e-12)) << seed;
    }
    EXPECT_EQ(narrow, 200);
    EXPECT_GT(cut, 100); // something was really left out
}

// With no room for the kept sets' diagram, the lower bound has fewer sets and the upper one is the
// product bound.
TEST(Bounds, HoldWhereTheUnionDoesNotFit) {
    for (unsigned seed = 0; seed < 100; ++seed) {
        const Sample s = sample(seed, 0.2);
        const double exact = solve(s.formula, s.top).solution->probability(s.q).occurs;
        BoundsWish wish;
        wish.exactNodes = 0;
        wish.cases = 0;
        wish.unionNodes = 8;
        wish.firstCutOff = 1e-6;
        wish.width = 1e300;
        const auto outcome = boundTop(s.formula, s.top, s.q, {}, wish);
        ASSERT_TRUE(outcome.bounds) << seed;
        EXPECT_LE(outcome.bounds->lower, exact * (1 + 1e-12)) << seed;
        EXPECT_GE(outcome.bounds->upper, exact * (1 - 1e-12)) << seed;
    }
}

TEST(Bounds, SayWhenATreeIsNotCoherentAndDoesNotFit) {
    Formula f;
    const Literal a = f.addVariable(), b = f.addVariable(), c = f.addVariable();
    const Literal top =
        f.addGate(Op::disjunction, std::array{f.addGate(Op::conjunction, std::array{a, b}),
                                              f.addGate(Op::conjunction, std::array{~a, c})});
    BoundsWish wish;
    const std::vector<double> q{0.1, 0.2, 0.3};
    EXPECT_NEAR(boundTop(f, top, q, {}, wish).bounds->lower, 0.29, 1e-12);
    wish.exactNodes = 0;
    EXPECT_FALSE(boundTop(f, top, q, {}, wish).bounds);
}

TEST(Bounds, StopWhenAsked) {
    std::stop_source source;
    source.request_stop();
    Limits limits;
    limits.stop = source.get_token();
    const Sample s = sample(1, 0.1);
    EXPECT_EQ(boundTop(s.formula, s.top, s.q, limits).stop, Stop::cancelled);
}

// --- families against sets of sets

using Sets = std::set<std::set<std::uint32_t>>;

Sets minimal(const Sets& sets) {
    Sets result;
    for (const auto& set : sets) {
        const bool contains = std::any_of(sets.begin(), sets.end(), [&](const auto& other) {
            return other != set &&
                   std::includes(set.begin(), set.end(), other.begin(), other.end());
        });
        if (!contains) result.insert(set);
    }
    return result;
}

Sets listed(const Zdd& zdd, Family family) {
    if (family == kNoSets) return {};
    if (family == kEmptySet) return {{}};
    Sets result = listed(zdd, zdd.node(family).without);
    for (std::set<std::uint32_t> set : listed(zdd, zdd.node(family).with)) {
        set.insert(zdd.node(family).element);
        result.insert(set);
    }
    return result;
}

Family made(Zdd& zdd, FamilyAlgebra& algebra, const Sets& sets) {
    Family result = kNoSets;
    for (const auto& set : sets) {
        Family one = kEmptySet;
        for (auto element = set.rbegin(); element != set.rend(); ++element)
            one = zdd.make(*element, one, kNoSets);
        result = algebra.sum(result, one);
    }
    return result;
}

TEST(FamilyAlgebra, AgreesWithSetsOfSets) {
    std::mt19937 random(3);
    const Limits limits;
    for (int round = 0; round < 300; ++round) {
        Account account(limits);
        Budget budget(account);
        Zdd zdd(budget);
        FamilyAlgebra algebra(zdd, budget);
        const auto some = [&] {
            Sets sets;
            for (unsigned i = random() % 6; i > 0; --i) {
                std::set<std::uint32_t> set;
                for (unsigned k = random() % 4; k > 0; --k)
                    set.insert(static_cast<std::uint32_t>(random() % 7));
                sets.insert(set);
            }
            return minimal(sets);
        };
        const Sets a = some(), b = some();
        const Family x = made(zdd, algebra, a), y = made(zdd, algebra, b);
        ASSERT_EQ(listed(zdd, x), a);
        Sets both = a;
        both.insert(b.begin(), b.end());
        EXPECT_EQ(listed(zdd, algebra.sum(x, y)), minimal(both));
        Sets unions, left;
        for (const auto& s : a) {
            for (const auto& t : b) {
                std::set<std::uint32_t> joined = s;
                joined.insert(t.begin(), t.end());
                unions.insert(joined);
            }
            const bool contains = std::any_of(b.begin(), b.end(), [&](const auto& t) {
                return std::includes(s.begin(), s.end(), t.begin(), t.end());
            });
            if (!contains) left.insert(s);
        }
        EXPECT_EQ(listed(zdd, algebra.product(x, y)), minimal(unions));
        EXPECT_EQ(listed(zdd, algebra.withoutSupersets(x, y)), left);
    }
}

} // namespace
