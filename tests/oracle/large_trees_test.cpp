// SPDX-License-Identifier: GPL-3.0-or-later
// 2,000 random trees of 15 to 60 events against BuDDy: 1,200 coherent ones and 800 others.
#include "tests/oracle/random_tree.h"
#include "tests/oracle/reference_diagram.h"
#include "tests/oracle/solved.h"

namespace cutwater::oracle {
namespace {

using Counts = std::vector<std::uint64_t>;

Counts narrow(const std::vector<logic::UInt128>& counts) {
    Counts numbers;
    for (auto count : counts) {
        EXPECT_LT(count, logic::UInt128{1} << 64);
        numbers.push_back(static_cast<std::uint64_t>(count));
    }
    while (!numbers.empty() && numbers.back() == 0)
        numbers.pop_back();
    return numbers;
}

struct Seen {
    int compared = 0, tooLarge = 0, manySets = 0, monotone = 0;
};

void compare(const RandomTree& tree, Seen& seen) {
    SCOPED_TRACE(describe(tree));
    const auto wanted = refer(tree.formula, tree.top, tree.q);
    if (!wanted) {
        ++seen.tooLarge;
        return;
    }
    const auto solution = solved(tree.formula, tree.top);
    ASSERT_TRUE(solution);
    EXPECT_EQ(solution->coherent(), wanted->monotone);
    EXPECT_EQ(solution->constant(), wanted->constant);
    const auto pair = solution->probability(tree.q);
    EXPECT_TRUE(near(pair.occurs, wanted->occurs, 1e-12));
    EXPECT_TRUE(near(pair.occursNot, wanted->occursNot, 1e-12));
    const Counts counts = narrow(wanted->countsByOrder);
    EXPECT_EQ(plain(solution->countsByOrder()), counts);
    std::uint64_t total = 0;
    for (std::uint64_t count : counts)
        total += count;
    EXPECT_EQ(static_cast<std::uint64_t>(solution->setCount().value), total);
    EXPECT_TRUE(near(solution->rareEventSum(tree.q), wanted->sum, 1e-12));
    if (wanted->bound) {
        EXPECT_TRUE(near(solution->minCutUpperBound(tree.q), *wanted->bound, 1e-12));
    }
    ++seen.compared;
    seen.manySets += total > 50;
    seen.monotone += wanted->monotone;
}

Seen compareMany(std::uint64_t firstSeed, int trees, bool negations, std::uint32_t maxEvents) {
    Seen seen;
    for (int i = 0; i < trees && !::testing::Test::HasFailure(); ++i) {
        const std::uint64_t seed = firstSeed + static_cast<std::uint64_t>(i);
        Random random(seed * 104'729 + 1);
        TreeWish wish;
        wish.events = 15 + random.below(maxEvents - 14);
        wish.gates = wish.events / 3 + random.below(wish.events);
        wish.negations = negations;
        wish.oddities = random.chance(0.25);
        wish.maxInputs = 3 + random.below(3);
        compare(makeTree(seed, wish), seen);
    }
    ::testing::Test::RecordProperty("compared", seen.compared);
    ::testing::Test::RecordProperty("too large for the reference", seen.tooLarge);
    ::testing::Test::RecordProperty("more than 50 sets", seen.manySets);
    ::testing::Test::RecordProperty("monotone", seen.monotone);
    return seen;
}

class LargeTrees : public ::testing::TestWithParam<std::uint64_t> {};

TEST_P(LargeTrees, CoherentOnesMatchBuddy) {
    const Seen seen = compareMany(2'000'000 + 1000 * GetParam(), 60, false, 60);
    EXPECT_EQ(seen.monotone, seen.compared);
    EXPECT_GE(seen.compared, 55);
    EXPECT_GE(seen.manySets, 8);
}

TEST_P(LargeTrees, OthersMatchBuddy) {
    const Seen seen = compareMany(3'000'000 + 1000 * GetParam(), 40, true, 60);
    EXPECT_LT(seen.monotone, seen.compared / 2);
    EXPECT_GE(seen.compared, 32);
    EXPECT_GE(seen.manySets, 3);
}

INSTANTIATE_TEST_SUITE_P(Batch, LargeTrees, ::testing::Range<std::uint64_t>(0, 20));

} // namespace
} // namespace cutwater::oracle
