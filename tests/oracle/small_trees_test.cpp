// SPDX-License-Identifier: GPL-3.0-or-later
// 2,000 random trees of up to 14 events, half of them coherent by their making, held against all
// their states. 20 batches of 100, so that they can run side by side.
#include "tests/oracle/brute_force.h"
#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace cutwater::oracle {
namespace {

using logic::ListingWish;
using logic::Solution;
using logic::Sorting;

constexpr std::uint32_t kBatch = 100;

// Everything that the checks of one tree need.
struct Case {
    const RandomTree& tree;
    const TruthTable& table;
    const Sets& sets;
    const Solution& solution;
    std::span<const double> q;
};

void checkNature(const Case& c) {
    EXPECT_EQ(c.solution.coherent(), c.table.monotone());
    std::optional<bool> constant;
    if (c.table.always()) constant = true;
    if (c.table.never()) constant = false;
    EXPECT_EQ(c.solution.constant(), constant);

    std::vector<std::uint32_t> relevant;
    for (std::uint32_t v = 0; v < c.table.variables(); ++v) {
        for (std::uint32_t state = 0; state < c.table.states(); ++state) {
            if (c.table[state] != c.table[state ^ std::uint32_t{1} << v]) {
                relevant.push_back(v);
                break;
            }
        }
    }
    EXPECT_EQ(c.solution.relevantVariables(), relevant);
}

void checkCounts(const Case& c) {
    std::vector<std::uint64_t> byOrder(c.table.variables() + 1, 0);
    for (const auto& set : c.sets)
        ++byOrder[set.size()];
    std::vector<std::uint64_t> upToTwo(byOrder.begin(),
                                       byOrder.begin() + std::min<std::size_t>(3, byOrder.size()));
    const auto trim = [](std::vector<std::uint64_t>& counts) {
        while (!counts.empty() && counts.back() == 0)
            counts.pop_back();
    };
    trim(byOrder);
    trim(upToTwo);
    EXPECT_EQ(plain(c.solution.countsByOrder()), byOrder);
    EXPECT_EQ(plain(c.solution.countsByOrder(2)), upToTwo);
    EXPECT_FALSE(c.solution.setCount().saturated);
    EXPECT_EQ(static_cast<std::uint64_t>(c.solution.setCount().value), c.sets.size());
}

void checkFigures(const Case& c) {
    const Chances chances = probability(c.table, c.q);
    const auto pair = c.solution.probability(c.q);
    EXPECT_TRUE(near(pair.occurs, chances.occurs, 1e-12));
    EXPECT_TRUE(near(pair.occursNot, chances.occursNot, 1e-12));
    const ListedFigures listed = figures(c.sets, c.q);
    EXPECT_TRUE(near(c.solution.rareEventSum(c.q), listed.sum, 1e-12));
    EXPECT_TRUE(near(c.solution.minCutUpperBound(c.q), listed.bound, 1e-12));
    if (c.table.monotone()) {
        EXPECT_LE(static_cast<double>(chances.occurs),
                  c.solution.minCutUpperBound(c.q) * (1 + 1e-12));
    }
}

void checkOrder(const std::vector<logic::CutSet>& listed, Sorting sorting,
                std::span<const double> q) {
    for (std::size_t i = 0; i < listed.size(); ++i) {
        EXPECT_TRUE(std::is_sorted(listed[i].literals.begin(), listed[i].literals.end()));
        EXPECT_TRUE(near(listed[i].probability, product(listed[i].literals, q), 1e-12));
        if (i == 0) continue;
        const bool sameOrder = listed[i].literals.size() == listed[i - 1].literals.size();
        if (sorting == Sorting::byOrder) {
            EXPECT_GE(listed[i].literals.size(), listed[i - 1].literals.size()) << "place " << i;
        }
        if (sorting == Sorting::byProbability || sameOrder) {
            EXPECT_LE(listed[i].probability, listed[i - 1].probability * (1 + 1e-12))
                << "place " << i;
        }
    }
}

void checkListing(const Case& c, Sorting sorting) {
    SCOPED_TRACE(sorting == Sorting::byOrder ? "by order" : "by probability");
    const auto all = drain(c.solution.list(c.q, ListingWish{.sorting = sorting}));
    const Sets listed = withoutOrder(all);
    EXPECT_EQ(listed, c.sets) << "listed " << describe(listed) << "\nwanted " << describe(c.sets);
    checkOrder(all, sorting, c.q);

    // With cut-offs exactly those within both; the limit lies between two sets, not on one.
    std::vector<double> chances;
    for (const auto& set : c.sets)
        chances.push_back(product(set, c.q));
    std::sort(chances.begin(), chances.end());
    double limit = 0;
    for (std::size_t i = chances.size() / 3 + 1; i < chances.size(); ++i) {
        if (chances[i] > chances[i - 1] * (1 + 1e-9)) {
            limit = chances[i - 1] > 0 ? std::sqrt(chances[i - 1] * chances[i]) : chances[i] / 2;
            break;
        }
    }
    const std::uint32_t maxOrder = c.table.variables() / 2;
    Sets within;
    for (const auto& set : c.sets)
        if (set.size() <= maxOrder && product(set, c.q) >= limit) within.insert(set);
    const auto cut = drain(c.solution.list(
        c.q, ListingWish{.sorting = sorting, .maxOrder = maxOrder, .minProbability = limit}));
    EXPECT_EQ(withoutOrder(cut), within) << "orders to " << maxOrder << ", from " << limit;
    checkOrder(cut, sorting, c.q);
}

void checkPathSets(const Case& c) {
    const logic::DualFormula dual = logic::dual(c.tree.formula, c.tree.top);
    ASSERT_EQ(dual.formula.variableCount(), c.tree.formula.variableCount());
    const TruthTable wanted = c.table.dual();
    const auto solution = solved(dual.formula, dual.top);
    ASSERT_TRUE(solution);
    const Sets sets = wanted.monotone() ? minimalCutSets(wanted) : primeImplicants(wanted);
    EXPECT_EQ(withoutOrder(drain(solution->list(c.q, {}))), sets)
        << "path sets wanted: " << describe(sets);

    std::vector<double> working;
    for (double q : c.q)
        working.push_back(1 - q);
    const auto pair = solution->probability(working);
    const auto own = c.solution.probability(c.q);
    EXPECT_NEAR(pair.occurs, own.occursNot, 1e-12);
    EXPECT_NEAR(pair.occursNot, own.occurs, 1e-12);

    const logic::DualFormula back = logic::dual(dual.formula, dual.top);
    const auto again = solved(back.formula, back.top);
    ASSERT_TRUE(again);
    EXPECT_EQ(withoutOrder(drain(again->list(c.q, {}))), c.sets);
}

TreeWish wishFor(Random& random, bool negations) {
    TreeWish wish;
    wish.events = 1 + (random.below(14) | random.below(14)) % 14; // rather many than few
    wish.gates = 1 + random.below(wish.events + wish.events / 2);
    wish.negations = negations;
    wish.oddities = random.chance(0.25);
    wish.maxInputs = 2 + random.below(4);
    return wish;
}

struct Seen {
    std::uint32_t trees = 0, coherent = 0, constant = 0, manySets = 0;
};

void checkBatch(std::uint64_t batch, bool negations, Seen& seen) {
    for (std::uint64_t i = 0; i < kBatch && !::testing::Test::HasFailure(); ++i) {
        // Many formulas with negations are coherent in effect; every tenth may be, the others are
        // drawn again.
        std::uint64_t seed = 100 * (batch * kBatch + i) + (negations ? 1'000'000 : 0);
        RandomTree tree;
        Random random(0);
        do {
            random = Random(seed * 7919 + 17);
            tree = makeTree(seed++, wishFor(random, negations));
        } while (negations && i % 10 != 0 && TruthTable(tree.formula, tree.top).monotone());
        SCOPED_TRACE(describe(tree));
        // Some events that never or always occur, in a tree out of eight.
        if (random.chance(0.125))
            tree.q[random.below(static_cast<std::uint32_t>(tree.q.size()))] =
                random.chance(0.5) ? 0 : 1;
        const TruthTable table(tree.formula, tree.top);
        const Sets sets = table.monotone() ? minimalCutSets(table) : primeImplicants(table);
        const auto solution = solved(tree.formula, tree.top);
        ASSERT_TRUE(solution);
        const Case c{tree, table, sets, *solution, tree.q};
        checkNature(c);
        checkCounts(c);
        checkFigures(c);
        checkListing(c, Sorting::byOrder);
        checkListing(c, Sorting::byProbability);
        checkPathSets(c);
        ++seen.trees;
        seen.coherent += table.monotone();
        seen.constant += table.always() || table.never();
        seen.manySets += sets.size() > 5;
    }
}

class SmallTrees : public ::testing::TestWithParam<std::uint64_t> {};

TEST_P(SmallTrees, CoherentOnesMatchAllStates) {
    Seen seen;
    checkBatch(GetParam(), false, seen);
    // The trees must be worth the test.
    EXPECT_EQ(seen.coherent, kBatch);
    EXPECT_LT(seen.constant, kBatch / 10);
    EXPECT_GT(seen.manySets, kBatch / 8);
}

TEST_P(SmallTrees, OthersMatchAllStates) {
    Seen seen;
    checkBatch(GetParam(), true, seen);
    EXPECT_EQ(seen.trees, kBatch);
    EXPECT_LE(seen.coherent, kBatch / 10);
    EXPECT_GT(seen.manySets, kBatch / 3);
}

INSTANTIATE_TEST_SUITE_P(Batch, SmallTrees, ::testing::Range<std::uint64_t>(0, 10));

// The two ways to the minimal cut sets of the oracle itself must agree.
TEST(BruteForce, PrimeImplicantsOfAMonotoneFormulaAreItsMinimalCutSets) {
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        const RandomTree tree = makeTree(seed, TreeWish{.events = 9, .gates = 9});
        const TruthTable table(tree.formula, tree.top);
        EXPECT_EQ(primeImplicants(table), minimalCutSets(table)) << describe(tree);
    }
}

// Consensus (worked-examples 12.5): B and C together are in no gate.
TEST(BruteForce, FindsTheImplicantThatStandsInNoGate) {
    logic::Formula f;
    const auto a = f.addVariable(), b = f.addVariable(), c = f.addVariable();
    const std::vector<logic::Literal> left{a, b}, right{~a, c};
    const std::vector<logic::Literal> both{f.addGate(logic::Op::conjunction, left),
                                           f.addGate(logic::Op::conjunction, right)};
    const TruthTable table(f, f.addGate(logic::Op::disjunction, both));
    EXPECT_EQ(primeImplicants(table),
              (Sets{{{0, false}, {1, false}}, {{0, true}, {2, false}}, {{1, false}, {2, false}}}));
}

} // namespace
} // namespace cutwater::oracle
