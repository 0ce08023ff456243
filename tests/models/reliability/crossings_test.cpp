// SPDX-License-Identifier: GPL-3.0-or-later
// What an event helps and hinders in random trees with negations, and what goes at one moment:
// against all states.
#include "models/reliability/crossings.h"
#include "tests/oracle/brute_force.h"
#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

namespace cutwater::reliability {
namespace {

using oracle::near;

oracle::RandomTree treeOf(std::uint64_t seed) {
    return oracle::makeTree(seed, {.events = 7, .gates = 8, .negations = true, .oddities = false});
}

long double chanceOf(std::uint32_t state, std::span<const double> q) {
    long double chance = 1;
    for (std::size_t v = 0; v < q.size(); ++v)
        chance *= state >> v & 1u ? static_cast<long double>(q[v]) : 1.0L - q[v];
    return chance;
}

TEST(Crossings, HelpByDefinition) {
    int both = 0;
    for (std::uint64_t seed = 700; seed < 780; ++seed) {
        const oracle::RandomTree tree = treeOf(seed);
        SCOPED_TRACE(oracle::describe(tree));
        const oracle::TruthTable table(tree.formula, tree.top);
        const auto solution = oracle::solved(tree.formula, tree.top);
        const auto crossings = Crossings::of(tree.formula, tree.top);
        ASSERT_TRUE(solution && crossings);
        const std::vector<double> birnbaum = solution->birnbaum(tree.q);
        for (std::uint32_t v = 0; v < tree.q.size(); ++v) {
            long double helps = 0, hinders = 0;
            for (std::uint32_t state = 0; state < table.states(); ++state) {
                if (state >> v & 1u) continue;
                const bool without = table[state], with = table[state | 1u << v];
                const long double chance = chanceOf(state, tree.q) / (1.0L - tree.q[v]);
                if (with && !without) helps += chance;
                if (without && !with) hinders += chance;
            }
            const double got = crossings->helps(v, tree.q, birnbaum[v]);
            EXPECT_NEAR(got, static_cast<double>(helps), 1e-12) << v;
            EXPECT_NEAR(got - birnbaum[v], static_cast<double>(hinders), 1e-12) << v;
            both += helps > 0 && hinders > 0;
        }
    }
    EXPECT_GT(both, 20);
}

TEST(Crossings, EventsThatGoAtOneMomentByAllStates) {
    int happened = 0;
    for (std::uint64_t seed = 800; seed < 840; ++seed) {
        const oracle::RandomTree tree = treeOf(seed);
        SCOPED_TRACE(oracle::describe(tree));
        const oracle::TruthTable table(tree.formula, tree.top);
        const auto crossings = Crossings::of(tree.formula, tree.top);
        ASSERT_TRUE(crossings);
        // Three events may go: one for certain, one as often as not, one now and then; one comes.
        std::vector<double> after = tree.q;
        const std::vector<double> stays{0, 0.5, 0.9};
        for (std::uint32_t v = 0; v < 3; ++v)
            after[v] *= stays[v];
        after[4] = 1;
        long double wanted = 0;
        for (std::uint32_t state = 0; state < table.states(); ++state)
            for (std::uint32_t gone = 0; gone < 8; ++gone) {
                long double chance = chanceOf(state, tree.q);
                for (std::uint32_t v = 0; v < 3; ++v)
                    chance *= gone >> v & 1u ? 1.0L - stays[v] : static_cast<long double>(stays[v]);
                if (!table[state] && table[state & ~gone]) wanted += chance;
            }
        JumpBook jumps(*crossings, {});
        for (int again = 0; again < 2; ++again) {
            const auto got = jumps.atJump(tree.q, after);
            ASSERT_TRUE(got);
            EXPECT_NEAR(*got, static_cast<double>(wanted), 1e-13);
        }
        happened += wanted > 0;
    }
    EXPECT_GT(happened, 10);
}

TEST(Crossings, CoherentTreesAreNotBroughtAboutByWhatGoes) {
    const oracle::RandomTree tree =
        oracle::makeTree(3, {.events = 7, .gates = 8, .oddities = false});
    const auto crossings = Crossings::of(tree.formula, tree.top);
    ASSERT_TRUE(crossings);
    JumpBook jumps(*crossings, {});
    EXPECT_EQ(jumps.atJump(tree.q, std::vector<double>(tree.q.size(), 0.0)), 0.0);
}

} // namespace
} // namespace cutwater::reliability
