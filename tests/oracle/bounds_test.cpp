// SPDX-License-Identifier: GPL-3.0-or-later
// Bounds by cases against all states, on thousands of small `or`s of functions that share events:
// with as many cases as they need, with few, and without room for pairs.
#include "models/logic/bounded.h"
#include "models/logic/pair_bounds.h"

#include "tests/oracle/brute_force.h"
#include "tests/oracle/random_tree.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace cutwater::oracle {
namespace {

using logic::Bounds;
using logic::BoundsMethod;
using logic::BoundsWish;
using logic::Interval;
using logic::Literal;
using logic::Op;

constexpr double kRounding = 1e-12;
constexpr std::uint32_t kEvents = 12;

// Between 1e-6 and 1e-2, or up to nearly 1.
double chance(Random& random, bool rare) {
    return rare ? std::pow(10.0, -6 + 4 * random.unit()) : 0.02 + 0.9 * random.unit();
}

std::vector<Literal> some(Random& random, const std::vector<Literal>& from, std::uint32_t count) {
    std::vector<Literal> chosen;
    for (std::uint32_t i = 0; i < count; ++i)
        chosen.push_back(from[random.below(static_cast<std::uint32_t>(from.size()))]);
    return chosen;
}

// Functions as plants have them: all of some trains, or most of them; what they stand on is shared.
RandomTree unionOfFunctions(std::uint64_t seed) {
    RandomTree tree;
    tree.seed = seed;
    Random random(seed);
    std::vector<Literal> events;
    for (std::uint32_t i = 0; i < kEvents; ++i) {
        events.push_back(tree.formula.addVariable());
        tree.q.push_back(chance(random, seed % 3 == 0));
    }
    std::vector<Literal> trains;
    for (std::uint32_t i = 0; i < 8; ++i)
        trains.push_back(
            tree.formula.addGate(Op::disjunction, some(random, events, 2 + random.below(3))));
    std::vector<Literal> functions;
    for (std::uint32_t i = 3 + random.below(6); i > 0; --i) {
        const std::vector<Literal> needed = some(random, trains, 2 + random.below(3));
        functions.push_back(random.chance(0.3) ? tree.formula.addGate(Op::atLeast, needed, 2)
                                               : tree.formula.addGate(Op::conjunction, needed));
    }
    tree.top = tree.formula.addGate(Op::disjunction, functions);
    return tree;
}

// By cases only: nothing is solved before, and cut-offs end at once.
BoundsWish byCases(std::size_t cases, double width) {
    BoundsWish wish;
    wish.exactNodes = 0;
    wish.cases = cases;
    wish.width = width;
    wish.firstCutOff = 0; // below the last one
    return wish;
}

class UnionOfFunctions : public testing::TestWithParam<std::uint64_t> {};

TEST_P(UnionOfFunctions, IsWithinItsBounds) {
    int wide = 0, closed = 0;
    for (std::uint64_t seed = GetParam(); seed < GetParam() + 200; ++seed) {
        const RandomTree tree = unionOfFunctions(seed);
        const auto exact =
            static_cast<double>(probability(TruthTable(tree.formula, tree.top), tree.q).occurs);
        for (const std::uint64_t pairNodes : {std::uint64_t{1}, std::uint64_t{1} << 24}) {
            double lower = 0, upper = 1;
            for (std::size_t cases = 2; cases <= 1024; cases *= 2) {
                BoundsWish wish = byCases(cases, 0);
                wish.pairNodes = pairNodes;
                const auto outcome = boundTop(tree.formula, tree.top, tree.q, {}, wish);
                if (!outcome.bounds) break; // a module of it is no `or`: another test's business
                const Bounds& bounds = *outcome.bounds;
                ASSERT_LE(bounds.lower, exact * (1 + kRounding)) << describe(tree);
                ASSERT_GE(bounds.upper, exact * (1 - kRounding)) << describe(tree);
                EXPECT_GE(bounds.lower, lower * (1 - kRounding)) << describe(tree);
                EXPECT_LE(bounds.upper, upper * (1 + kRounding)) << describe(tree);
                lower = bounds.lower;
                upper = bounds.upper;
                wide += upper - lower > 1e-3 * lower;
                if (cases == 1024) {
                    ++closed;
                    EXPECT_NEAR(lower, exact, kRounding * exact) << describe(tree);
                    EXPECT_NEAR(upper, exact, kRounding * exact) << describe(tree);
                }
            }
        }
    }
    EXPECT_GT(wide, 100); // there were intervals that could have missed
    EXPECT_GT(closed, 50);
}

INSTANTIATE_TEST_SUITE_P(Batches, UnionOfFunctions, testing::Range<std::uint64_t>(0, 3000, 200));

// Modules that are bounded themselves: the leaves of the top are then no numbers but intervals.
TEST(BoundsByCases, HoldOverModulesThatAreBounded) {
    int intervals = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        Random random(seed);
        RandomTree tree;
        tree.seed = seed;
        std::vector<Literal> modules;
        for (std::uint64_t m = 0; m < 2; ++m) {
            const RandomTree part = unionOfFunctions(1000 * seed + m);
            std::vector<Literal> events;
            for (std::uint32_t v = 0; v < 7; ++v) { // 14 events in all: the first seven again
                events.push_back(tree.formula.addVariable());
                tree.q.push_back(chance(random, seed % 3 == 0));
            }
            std::vector<Literal> places;
            for (std::uint32_t v = 0; v < kEvents; ++v)
                places.push_back(events[v % events.size()]);
            modules.push_back(copyInto(tree.formula, part.formula, part.top, places));
        }
        tree.top = tree.formula.addGate(Op::conjunction, modules);
        const auto exact =
            static_cast<double>(probability(TruthTable(tree.formula, tree.top), tree.q).occurs);
        BoundsWish wish = byCases(4, 0.5);
        wish.firstCutOff = 1e-2; // the `and` itself
        const auto outcome = boundTop(tree.formula, tree.top, tree.q, {}, wish);
        ASSERT_TRUE(outcome.bounds) << describe(tree);
        EXPECT_LE(outcome.bounds->lower, exact * (1 + kRounding)) << describe(tree);
        EXPECT_GE(outcome.bounds->upper, exact * (1 - kRounding)) << describe(tree);
        intervals += outcome.bounds->upper > outcome.bounds->lower * 1.001;
    }
    EXPECT_GT(intervals, 50);
}

// --- the bounds of one case, from numbers that come from truth tables

struct Events {
    std::vector<std::vector<bool>> of; // member, state
    std::vector<std::uint32_t> leaves; // of each member, one bit for each
    std::vector<double> weight;        // of each state

    template <typename Holds>
    double sum(Holds holds) const {
        double total = 0;
        for (std::size_t state = 0; state < weight.size(); ++state)
            if (holds(state)) total += weight[state];
        return total;
    }
};

// Each member is an `or` of sets of up to four of ten leaves that lie close together.
Events randomEvents(Random& random) {
    constexpr std::uint32_t kLeaves = 10;
    const bool rare = random.chance(0.3);
    Events events;
    events.weight.assign(std::size_t{1} << kLeaves, 1);
    for (std::uint32_t leaf = 0; leaf < kLeaves; ++leaf) {
        const double q = chance(random, rare);
        for (std::size_t state = 0; state < events.weight.size(); ++state)
            events.weight[state] *= state >> leaf & 1u ? q : 1 - q;
    }
    for (std::uint32_t member = 2 + random.below(6); member > 0; --member) {
        const std::uint32_t first = random.below(kLeaves), reach = 2 + random.below(5);
        std::vector<bool> states(events.weight.size(), false);
        std::uint32_t all = 0;
        for (std::uint32_t sets = 1 + random.below(3); sets > 0; --sets) {
            std::uint32_t set = 0;
            for (std::uint32_t i = 1 + random.below(4); i > 0; --i)
                set |= 1u << (first + random.below(reach)) % kLeaves;
            all |= set;
            for (std::size_t state = 0; state < states.size(); ++state)
                if ((state & set) == set) states[state] = true;
        }
        events.of.push_back(std::move(states));
        events.leaves.push_back(all);
    }
    return events;
}

TEST(PairBounds, HoldTheUnion) {
    Random random(7);
    int wide = 0;
    for (int round = 0; round < 6000; ++round) {
        const Events events = randomEvents(random);
        const std::size_t count = events.of.size();
        for (const bool pairsAreKnown : {true, false}) {
            logic::Members members;
            members.clear(count);
            for (std::size_t i = 0; i < count; ++i)
                members.set(i, events.sum([&](std::size_t s) { return events.of[i][s]; }));
            for (std::size_t i = 0; i < count; ++i)
                for (std::size_t j = 0; j < i; ++j) {
                    if ((events.leaves[i] & events.leaves[j]) == 0) {
                        members.setIndependent(i, j);
                        continue;
                    }
                    const double both = events.sum(
                        [&](std::size_t s) { return events.of[i][s] && events.of[j][s]; });
                    const double a = members.single(i), b = members.single(j);
                    members.setDependent(i, j,
                                         pairsAreKnown ? Interval{both, both}
                                                       : Interval{a * b, std::min(a, b)});
                }
            const double exact = events.sum([&](std::size_t s) {
                return std::any_of(events.of.begin(), events.of.end(),
                                   [&](const std::vector<bool>& member) { return member[s]; });
            });
            const Interval found = boundUnion(members);
            ASSERT_LE(found.lower, exact * (1 + kRounding)) << round;
            ASSERT_GE(found.upper, exact * (1 - kRounding)) << round;
            wide += found.upper - found.lower > 1e-3 * exact;
            if (count == 2 && pairsAreKnown) { // p + r - both, from either side
                EXPECT_NEAR(found.lower, exact, 1e-9 * exact) << round;
                EXPECT_NEAR(found.upper, exact, 1e-9 * exact) << round;
            }
        }
    }
    EXPECT_GT(wide, 1000);
}

TEST(PairBounds, AreExactWhereNothingIsShared) {
    logic::Members members;
    members.clear(3);
    for (std::size_t i = 0; i < 3; ++i)
        members.set(i, 0.1 * static_cast<double>(i + 1));
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < i; ++j)
            members.setIndependent(i, j);
    const Interval found = boundUnion(members);
    EXPECT_NEAR(found.lower, 1 - 0.9 * 0.8 * 0.7, 1e-15);
    EXPECT_NEAR(found.upper, 1 - 0.9 * 0.8 * 0.7, 1e-15);
}

} // namespace
} // namespace cutwater::oracle
