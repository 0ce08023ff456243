// SPDX-License-Identifier: GPL-3.0-or-later
// Importance measures of random trees by their definitions, over all states. Values of sources are
// in tests/published.
#include "models/reliability/importance.h"
#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <cmath>

namespace cutwater::reliability {
namespace {

using oracle::near;

TEST(Importance, OfRandomTreesByDefinition) {
    for (std::uint64_t seed = 500; seed < 560; ++seed) {
        const oracle::RandomTree tree =
            oracle::makeTree(seed, {.events = 9, .gates = 7, .oddities = false});
        SCOPED_TRACE(oracle::describe(tree));
        const oracle::TruthTable table(tree.formula, tree.top);
        const auto sets = oracle::minimalCutSets(table);
        const auto solution = oracle::solved(tree.formula, tree.top);
        ASSERT_TRUE(solution);
        const auto got = importance(*solution, tree.q);
        ASSERT_TRUE(got);
        ASSERT_EQ(got->size(), solution->relevantVariables().size());
        const long double top = oracle::probability(table, tree.q).occurs;
        for (const auto& entry : *got) {
            SCOPED_TRACE(entry.variable);
            auto q = tree.q;
            q[entry.variable] = 1;
            const long double with = oracle::probability(table, q).occurs;
            q[entry.variable] = 0;
            const long double without = oracle::probability(table, q).occurs;
            // The union of the sets with the event, state by state.
            long double unionChance = 0;
            for (std::uint32_t state = 0; state < table.states(); ++state) {
                bool occurs = false;
                for (const auto& set : sets) {
                    bool has = false, all = true;
                    for (const auto& literal : set) {
                        has = has || literal.variable == entry.variable;
                        all = all && (state >> literal.variable & 1u);
                    }
                    occurs = occurs || (has && all);
                }
                long double chance = occurs ? 1 : 0;
                for (std::uint32_t v = 0; v < table.variables() && occurs; ++v)
                    chance *= state >> v & 1u ? tree.q[v] : 1.0L - tree.q[v];
                unionChance += chance;
            }
            const double slack = static_cast<double>(1e-12L * with); // of the subtraction
            EXPECT_NEAR(entry.birnbaum, static_cast<double>(with - without), slack);
            EXPECT_NEAR(entry.criticality,
                        static_cast<double>((with - without) * tree.q[entry.variable] / top),
                        1e-11);
            ASSERT_TRUE(entry.fussellVesely);
            EXPECT_TRUE(near(*entry.fussellVesely, unionChance / top, 1e-11));
            EXPECT_TRUE(near(entry.riskAchievement, with / top, 1e-11));
            EXPECT_TRUE(near(entry.riskReduction, top / without, 1e-11));
        }
    }
}

TEST(Importance, LeavesFussellVeselyOutAboveTheWishedSets) {
    const oracle::RandomTree tree = oracle::makeTree(1, {.events = 9, .gates = 7});
    const auto solution = oracle::solved(tree.formula, tree.top);
    ASSERT_TRUE(solution);
    ImportanceWish wish;
    wish.maxSets = 0;
    const auto got = importance(*solution, tree.q, wish);
    ASSERT_TRUE(got);
    ASSERT_FALSE(got->empty());
    for (const auto& entry : *got)
        EXPECT_FALSE(entry.fussellVesely);
}

TEST(Importance, StopsWhenAsked) {
    const oracle::RandomTree tree = oracle::makeTree(1, {.events = 9, .gates = 7});
    const auto solution = oracle::solved(tree.formula, tree.top);
    ASSERT_TRUE(solution);
    std::stop_source source;
    source.request_stop();
    ImportanceWish wish;
    wish.limits.stop = source.get_token();
    EXPECT_FALSE(importance(*solution, tree.q, wish));
}

} // namespace
} // namespace cutwater::reliability
