// SPDX-License-Identifier: GPL-3.0-or-later
// Laws that must hold for every formula, whatever its values are.
#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <cmath>
#include <gmock/gmock.h>

namespace cutwater::oracle {
namespace {

using logic::Formula;
using logic::Literal;
using logic::Op;

TreeWish wish(std::uint64_t seed, bool negations) {
    Random random(seed + 5);
    TreeWish result;
    result.events = 5 + random.below(25);
    result.gates = result.events / 2 + random.below(result.events / 2);
    result.negations = negations;
    return result;
}

TEST(Laws, MoreProbableEventsMakeACoherentTopMoreProbable) {
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const RandomTree tree = makeTree(seed, wish(seed, false));
        SCOPED_TRACE(describe(tree));
        const auto solution = solved(tree.formula, tree.top);
        ASSERT_TRUE(solution);
        const double before = solution->probability(tree.q).occurs;
        for (std::size_t v = 0; v < tree.q.size(); ++v) {
            auto q = tree.q;
            q[v] = q[v] * 0.5 + 0.5;
            EXPECT_GE(solution->probability(q).occurs, before * (1 - 1e-14)) << "event " << v;
        }
    }
}

TEST(Laws, TheTopIsTheMixtureOfAnEventOccurringAndNot) {
    for (std::uint64_t seed = 100; seed < 160; ++seed) {
        const RandomTree tree = makeTree(seed, wish(seed, true));
        SCOPED_TRACE(describe(tree));
        const auto solution = solved(tree.formula, tree.top);
        ASSERT_TRUE(solution);
        const double whole = solution->probability(tree.q).occurs;
        for (std::size_t v = 0; v < tree.q.size(); ++v) {
            auto q = tree.q;
            q[v] = 1;
            const double with = solution->probability(q).occurs;
            q[v] = 0;
            const double without = solution->probability(q).occurs;
            EXPECT_TRUE(near(whole, tree.q[v] * with + (1 - tree.q[v]) * without, 1e-12))
                << "event " << v;
        }
    }
}

TEST(Laws, AnIndependentSubtreeMayStandForAnEvent) {
    for (std::uint64_t seed = 200; seed < 260; ++seed) {
        const bool negations = seed % 2 == 1;
        const RandomTree outer = makeTree(seed, wish(seed, negations));
        const RandomTree inner =
            makeTree(seed + 1000, TreeWish{.events = 6, .gates = 4, .negations = negations});
        SCOPED_TRACE(describe(outer) + "in the place of x0: " + describe(inner));
        Formula whole;
        std::vector<Literal> outerEvents, innerEvents;
        std::vector<double> q;
        for (double chance : outer.q) {
            outerEvents.push_back(whole.addVariable());
            q.push_back(chance);
        }
        for (double chance : inner.q) {
            innerEvents.push_back(whole.addVariable());
            q.push_back(chance);
        }
        outerEvents[0] = copyInto(whole, inner.formula, inner.top, innerEvents);
        const Literal top = copyInto(whole, outer.formula, outer.top, outerEvents);

        const auto both = solved(whole, top);
        const auto outside = solved(outer.formula, outer.top);
        const auto inside = solved(inner.formula, inner.top);
        ASSERT_TRUE(both && outside && inside);
        auto outerQ = outer.q;
        const auto chance = inside->probability(inner.q);
        outerQ[0] = chance.occurs;
        EXPECT_TRUE(near(both->probability(q).occurs, outside->probability(outerQ).occurs, 1e-11));
        if (negations) continue;
        // A set with x0 stands for one set per set of the subtree.
        logic::UInt128 sets = 0;
        auto listing = outside->list(outer.q, {});
        while (const auto set = listing.next()) {
            bool has = false;
            for (const auto& literal : set->literals)
                has = has || literal.variable == 0;
            sets += has ? inside->setCount().value : 1;
        }
        if (!inside->constant()) {
            EXPECT_TRUE(both->setCount().value == sets);
        }
    }
}

TEST(Laws, OrderOfTheInputsDoesNotMatter) {
    for (std::uint64_t seed = 300; seed < 340; ++seed) {
        const RandomTree tree = makeTree(seed, wish(seed, seed % 2 == 1));
        SCOPED_TRACE(describe(tree));
        // The same formula with all inputs and the variables in the opposite order.
        Formula turned;
        const auto n = tree.formula.variableCount();
        std::vector<Literal> events(n);
        std::vector<double> q(n);
        for (std::uint32_t v = 0; v < n; ++v) {
            events[n - 1 - v] = turned.addVariable();
            q[v] = tree.q[n - 1 - v];
        }
        std::vector<Literal> copies(tree.formula.nodeCount());
        for (std::uint32_t node = 0; node < tree.formula.nodeCount(); ++node) {
            if (tree.formula.op(node) == Op::constant) {
                copies[node] = logic::kFalse;
            } else if (tree.formula.op(node) == Op::variable) {
                copies[node] = events[tree.formula.variable(node)];
            } else {
                std::vector<Literal> inputs;
                for (Literal literal : tree.formula.inputs(node))
                    inputs.insert(inputs.begin(), literal.negated() ? ~copies[literal.node()]
                                                                    : copies[literal.node()]);
                const bool vote = tree.formula.op(node) == Op::atLeast;
                copies[node] = turned.addGate(tree.formula.op(node), inputs,
                                              vote ? std::int64_t{tree.formula.k(node)} : 0);
            }
        }
        const Literal top = tree.top.negated() ? ~copies[tree.top.node()] : copies[tree.top.node()];
        const auto one = solved(tree.formula, tree.top);
        const auto other = solved(turned, top);
        ASSERT_TRUE(one && other);
        EXPECT_TRUE(near(one->probability(tree.q).occurs, other->probability(q).occurs, 1e-12));
        EXPECT_EQ(one->countsByOrder(), other->countsByOrder());
        EXPECT_TRUE(near(one->rareEventSum(tree.q), other->rareEventSum(q), 1e-12));
    }
}

TEST(Edges, ConstantsAndSingleEvents) {
    Formula f;
    const Literal a = f.addVariable();
    const Literal always = f.addGate(Op::atLeast, std::vector<Literal>{a}, 0);
    const Literal never = f.addGate(Op::atLeast, std::vector<Literal>{a}, 2);
    const Literal emptyAll = f.addGate(Op::conjunction, {});
    const Literal emptyAny = f.addGate(Op::disjunction, {});
    const Literal tautology = f.addGate(Op::disjunction, std::vector<Literal>{a, ~a});
    const Literal twice = f.addGate(Op::exactlyOne, std::vector<Literal>{a, a});
    const std::vector<double> q{0.25};
    for (Literal top : {logic::kTrue, always, emptyAll, tautology, ~never, ~emptyAny, ~twice}) {
        const auto solution = solved(f, top);
        ASSERT_TRUE(solution);
        EXPECT_EQ(solution->constant(), true);
        EXPECT_TRUE(solution->coherent());
        EXPECT_EQ(solution->probability(q).occurs, 1);
        EXPECT_EQ(solution->probability(q).occursNot, 0);
        EXPECT_EQ(withoutOrder(drain(solution->list(q, {}))), (Sets{{}})); // one set, empty
        EXPECT_EQ(plain(solution->countsByOrder()), std::vector<std::uint64_t>{1});
        EXPECT_TRUE(solution->relevantVariables().empty());
    }
    for (Literal top : {logic::kFalse, never, emptyAny, twice, ~always, ~tautology}) {
        const auto solution = solved(f, top);
        ASSERT_TRUE(solution);
        EXPECT_EQ(solution->constant(), false);
        EXPECT_EQ(solution->probability(q).occurs, 0);
        EXPECT_EQ(solution->probability(q).occursNot, 1);
        EXPECT_TRUE(drain(solution->list(q, {})).empty());
        EXPECT_TRUE(solution->setCount().value == 0);
        EXPECT_EQ(solution->minCutUpperBound(q), 0);
    }
    const auto event = solved(f, a);
    ASSERT_TRUE(event);
    EXPECT_EQ(event->probability(q).occurs, 0.25);
    EXPECT_EQ(withoutOrder(drain(event->list(q, {}))), (Sets{{{0, false}}}));
    const auto negation = solved(f, ~a);
    ASSERT_TRUE(negation);
    EXPECT_FALSE(negation->coherent());
    EXPECT_EQ(negation->probability(q).occurs, 0.75);
    EXPECT_EQ(withoutOrder(drain(negation->list(q, {}))), (Sets{{{0, true}}}));
}

TEST(Edges, TinyProbabilitiesKeepTheirDigits) {
    Formula f;
    std::vector<Literal> events;
    for (int i = 0; i < 3; ++i)
        events.push_back(f.addVariable());
    const auto any = solved(f, f.addGate(Op::disjunction, events));
    const auto twoOf = solved(f, f.addGate(Op::atLeast, events, 2));
    ASSERT_TRUE(any && twoOf);
    const std::vector<double> rare(3, 1e-300);
    EXPECT_TRUE(near(any->probability(rare).occurs, 3e-300L, 1e-14));
    EXPECT_TRUE(near(any->minCutUpperBound(rare), 3e-300L, 1e-12));
    const std::vector<double> rarer(3, 1e-150);
    EXPECT_TRUE(near(twoOf->probability(rarer).occurs, 3e-300L, 1e-14));
    // And so does what is nearly certain: 1-q is 2^-53 exactly.
    const std::vector<double> nearlySure(3, 1 - 0x1p-53);
    EXPECT_TRUE(near(any->probability(nearlySure).occursNot, 0x1p-159L, 1e-14));
    EXPECT_TRUE(near(twoOf->probability(nearlySure).occursNot, 3 * 0x1p-106L, 1e-14));
}

TEST(Edges, ManyMoreSetsThanCouldBeListed) {
    // 30 groups of ten events, one of each group: 10^30 sets. With 40 groups there are too many to
    // count in 128 bits.
    for (const int groups : {30, 40}) {
        Formula f;
        std::vector<Literal> tops;
        std::vector<double> q;
        double best = 1;
        for (int g = 0; g < groups; ++g) {
            std::vector<Literal> events;
            for (int i = 0; i < 10; ++i) {
                events.push_back(f.addVariable());
                q.push_back(0.01 * (i + 1) + 0.0001 * g);
            }
            best *= q.back();
            tops.push_back(f.addGate(Op::disjunction, events));
        }
        const auto solution = solved(f, f.addGate(Op::conjunction, tops));
        ASSERT_TRUE(solution);
        const auto count = solution->setCount();
        EXPECT_EQ(count.saturated, groups == 40);
        if (groups == 30) {
            EXPECT_EQ(logic::toDecimal(count), "1" + std::string(30, '0'));
        } else {
            EXPECT_THAT(logic::toDecimal(count), ::testing::StartsWith("more than "));
        }
        for (auto sorting : {logic::Sorting::byOrder, logic::Sorting::byProbability}) {
            auto listing = solution->list(q, {.sorting = sorting});
            double last = 1;
            for (int i = 0; i < 100; ++i) {
                const auto set = listing.next();
                ASSERT_TRUE(set);
                if (i == 0) {
                    EXPECT_TRUE(near(set->probability, best, 1e-12));
                }
                EXPECT_LE(set->probability, last * (1 + 1e-12));
                last = set->probability;
            }
        }
    }
}

} // namespace
} // namespace cutwater::oracle
