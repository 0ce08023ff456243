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

TEST(Importance, SumsOfSetsByListingThem) { // coherent trees and others
    int checked = 0;
    for (std::uint64_t seed = 560; seed < 620; ++seed) {
        const oracle::RandomTree tree =
            oracle::makeTree(seed, {.events = 9, .gates = 7, .oddities = seed % 2 == 0});
        const auto solution = oracle::solved(tree.formula, tree.top);
        if (!solution || solution->constant()) continue;
        std::vector<long double> with(tree.q.size(), 0.0L);
        long double all = 0;
        auto listing = solution->list(tree.q, {});
        while (const auto set = listing.next()) {
            all += set->probability;
            for (const auto& literal : set->literals)
                with[literal.variable] += set->probability;
        }
        const auto sums = solution->setSumsWith(tree.q);
        ASSERT_EQ(sums.size(), tree.q.size());
        for (std::size_t v = 0; v < sums.size(); ++v)
            EXPECT_TRUE(near(sums[v], with[v], 1e-11)) << oracle::describe(tree) << v;
        const auto got = importance(*solution, tree.q, {.unionNodes = 0});
        ASSERT_TRUE(got);
        for (const auto& entry : *got)
            EXPECT_TRUE(near(entry.setShare, with[entry.variable] / all, 1e-11));
        ++checked;
    }
    EXPECT_GT(checked, 30);
}

TEST(Importance, DifferentialSharesAddUpAndAreTheChangeItself) {
    const oracle::RandomTree tree =
        oracle::makeTree(501, {.events = 9, .gates = 7, .oddities = false});
    const auto solution = oracle::solved(tree.formula, tree.top);
    ASSERT_TRUE(solution);
    const auto got = importance(*solution, tree.q);
    ASSERT_TRUE(got && got->size() > 2);
    double sum = 0;
    for (const auto& entry : *got)
        sum += entry.differential;
    EXPECT_NEAR(sum, 1, 1e-12);
    const auto changeOf = [&](std::optional<std::uint32_t> only) { // all by 1e-6 of itself, or one
        auto up = tree.q, down = tree.q;
        for (std::size_t v = 0; v < up.size(); ++v)
            if (!only || *only == v) {
                up[v] *= 1 + 1e-6;
                down[v] *= 1 - 1e-6;
            }
        return solution->probability(up).occurs - solution->probability(down).occurs;
    };
    for (const auto& entry : *got)
        EXPECT_NEAR(entry.differential, changeOf(entry.variable) / changeOf({}), 1e-7);
}

TEST(Importance, OfGroupsByConditioning) {
    for (std::uint64_t seed = 500; seed < 540; ++seed) {
        const oracle::RandomTree tree =
            oracle::makeTree(seed, {.events = 9, .gates = 7, .oddities = false});
        const oracle::TruthTable table(tree.formula, tree.top);
        const auto solution = oracle::solved(tree.formula, tree.top);
        ASSERT_TRUE(solution);
        if (solution->constant()) continue;
        const std::vector<EventGroup> groups{
            {{0, 3, 5}, {0, 3, 5}}, {{1}, {1}}, {{2, 4}, {2, 4, 6, 7, 8}}};
        const auto got = groupImportance(*solution, tree.q, groups);
        ASSERT_TRUE(got && got->size() == groups.size());
        const long double top = oracle::probability(table, tree.q).occurs;
        double differential = 0;
        for (std::size_t g = 0; g < groups.size(); ++g) {
            auto with = tree.q, without = tree.q;
            for (const auto v : groups[g].certain)
                with[v] = 1;
            for (const auto v : groups[g].impossible)
                without[v] = 0;
            const long double high = oracle::probability(table, with).occurs;
            const long double low = oracle::probability(table, without).occurs;
            const auto& entry = (*got)[g];
            EXPECT_TRUE(near(entry.riskAchievement, high / top, 1e-11));
            EXPECT_NEAR(entry.birnbaum, static_cast<double>(high - low), 1e-12);
            EXPECT_NEAR(entry.reduction, static_cast<double>(1 - low / top), 1e-12);
            if (low == 0)
                EXPECT_TRUE(std::isinf(entry.riskReduction));
            else
                EXPECT_TRUE(near(entry.riskReduction, top / low, 1e-11));
            differential += entry.differential;
        }
        EXPECT_NEAR(differential, 1, 1e-12); // every event is in one group
    }
}

TEST(Importance, ForTheFrequencyOfAnInitiatorAndItsProtection) {
    // I . (A + B): w = f (a + b - a b) + nothing else, since an initiator is never there.
    logic::Formula formula;
    const auto i = formula.addVariable(), a = formula.addVariable(), b = formula.addVariable();
    const auto lost = formula.addGate(logic::Op::disjunction, std::vector{a, b});
    const auto solution =
        oracle::solved(formula, formula.addGate(logic::Op::conjunction, std::vector{i, lost}));
    ASSERT_TRUE(solution);
    const std::vector<double> q{0, 0.01, 0.03}, w{2e-4, 1e-5, 4e-5};
    const auto got = frequencyImportance(*solution, q, w);
    ASSERT_TRUE(got);
    const double lostChance = 0.01 + 0.03 - 0.01 * 0.03;
    EXPECT_TRUE(near(got->frequency, 2e-4L * lostChance, 1e-13));
    ASSERT_EQ(got->events.size(), 3u);
    EXPECT_NEAR(got->events[0].completes, 1, 1e-13);
    EXPECT_NEAR(got->events[0].reduction, 1, 1e-13);
    EXPECT_EQ(got->events[1].completes, 0);
    EXPECT_NEAR(got->events[1].reduction, 1 - 0.03 / lostChance, 1e-12);
    EXPECT_NEAR(got->events[1].riskAchievement, 1 / lostChance, 1e-11);
}

TEST(Importance, OfMoreEventsThanCouldBeAskedOneByOne) { // each one is needed: Q0 is 0 for all
    logic::Formula formula;
    std::vector<logic::Literal> inputs;
    for (int i = 0; i < 12'000; ++i)
        inputs.push_back(formula.addVariable());
    const auto solution = oracle::solved(formula, formula.addGate(logic::Op::conjunction, inputs));
    ASSERT_TRUE(solution);
    const auto got =
        importance(*solution, std::vector<double>(inputs.size(), 0.999), {.unionNodes = 0});
    ASSERT_TRUE(got);
    EXPECT_NEAR(got->front().criticality, 1, 1e-9);
    EXPECT_GT(got->back().riskReduction, 1e9);
    EXPECT_NEAR(got->back().riskAchievement, 1 / 0.999, 1e-9);
}

TEST(Importance, UnionOfMoreSetsThanCouldBeListed) {
    // 10 of 20: 184,756 sets. One of them with a given part is there where the part is, and 9 more.
    logic::Formula formula;
    std::vector<logic::Literal> parts;
    for (int i = 0; i < 20; ++i)
        parts.push_back(formula.addVariable());
    const auto vote = oracle::solved(formula, formula.addGate(logic::Op::atLeast, parts, 10));
    ASSERT_TRUE(vote);
    const double q = 0.3;
    const auto atLeast = [q](int k, int n) {
        double sum = 0;
        for (int i = k; i <= n; ++i)
            sum += std::exp(std::lgamma(n + 1.0) - std::lgamma(i + 1.0) - std::lgamma(n - i + 1.0) +
                            i * std::log(q) + (n - i) * std::log1p(-q));
        return sum;
    };
    const auto got = importance(*vote, std::vector<double>(20, q));
    ASSERT_TRUE(got && got->size() == 20);
    for (const auto& entry : *got) {
        ASSERT_TRUE(entry.fussellVesely);
        EXPECT_TRUE(near(*entry.fussellVesely, q * atLeast(9, 19) / atLeast(10, 20), 1e-11));
    }
}

TEST(Importance, UnionThroughModulesOf1e90Sets) {
    // All of 30 groups, each an or of 1,000: module in module, 1000^30 sets. Each set needs one of
    // every group: with one given event the union is that event and every other group.
    logic::Formula formula;
    std::vector<logic::Literal> groups;
    for (int g = 0; g < 30; ++g) {
        std::vector<logic::Literal> events;
        for (int i = 0; i < 1000; ++i)
            events.push_back(formula.addVariable());
        groups.push_back(formula.addGate(logic::Op::disjunction, events));
    }
    const auto solution = oracle::solved(formula, formula.addGate(logic::Op::conjunction, groups));
    ASSERT_TRUE(solution);
    const auto got = importance(*solution, std::vector<double>(30'000, 1e-4));
    ASSERT_TRUE(got && got->size() == 30'000);
    const double group = -std::expm1(1000 * std::log1p(-1e-4));
    for (const auto& entry : *got) {
        ASSERT_TRUE(entry.fussellVesely);
        ASSERT_TRUE(near(*entry.fussellVesely, 1e-4 / group, 1e-11));
    }
}

TEST(Importance, LeavesFussellVeselyOutWhereTheUnionsDoNotFit) {
    const oracle::RandomTree tree = oracle::makeTree(1, {.events = 9, .gates = 7});
    const auto solution = oracle::solved(tree.formula, tree.top);
    ASSERT_TRUE(solution);
    for (const std::uint64_t nodes : {0, 2}) {
        ImportanceWish wish;
        wish.unionNodes = nodes;
        const auto got = importance(*solution, tree.q, wish);
        ASSERT_TRUE(got);
        ASSERT_FALSE(got->empty());
        for (const auto& entry : *got)
            EXPECT_FALSE(entry.fussellVesely);
    }
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
