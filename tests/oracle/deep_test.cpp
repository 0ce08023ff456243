// SPDX-License-Identifier: GPL-3.0-or-later
// Chains of 100,000 gates: depth must cost memory only, never call stack.
#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <cmath>

namespace cutwater::oracle {
namespace {

using logic::Formula;
using logic::Literal;
using logic::Op;

constexpr std::uint32_t kLength = 100'000;

struct Chain {
    Formula formula;
    Literal top;
    std::vector<double> q;
};

// g(0) = x(0), g(i) = g(i-1) and/or x(i mod events), alternating.
Chain alternating(std::uint32_t events) {
    Chain chain;
    std::vector<Literal> variables;
    for (std::uint32_t v = 0; v < events; ++v) {
        variables.push_back(chain.formula.addVariable());
        chain.q.push_back(v % 2 == 1 ? 1e-6 * (1 + v % 7) : 0.9 + 0.01 * (v % 5));
    }
    Literal last = variables[0];
    for (std::uint32_t i = 1; i < kLength; ++i) {
        const std::vector<Literal> inputs{last, variables[i % events]};
        last = chain.formula.addGate(i % 2 == 1 ? Op::disjunction : Op::conjunction, inputs);
    }
    chain.top = last;
    return chain;
}

TEST(Deep, AChainOfDifferentEventsInAnAlternatingChain) {
    const Chain chain = alternating(kLength);
    const auto solution = solved(chain.formula, chain.top);
    ASSERT_TRUE(solution);
    EXPECT_TRUE(solution->coherent());
    // Each gate sees a new event, so its value follows from the one below.
    long double occurs = chain.q[0], occursNot = 1 - occurs;
    std::uint64_t sets = 1;
    for (std::uint32_t i = 1; i < kLength; ++i) {
        const long double q = chain.q[i];
        if (i % 2 == 1) {
            occurs += occursNot * q;
            occursNot *= 1 - q;
            ++sets; // the new event alone is a set of its gate
        } else {
            occursNot += occurs * (1 - q);
            occurs *= q;
        }
    }
    const auto pair = solution->probability(chain.q);
    EXPECT_TRUE(near(pair.occurs, occurs, 1e-11));
    EXPECT_TRUE(near(pair.occursNot, occursNot, 1e-11));
    EXPECT_TRUE(solution->setCount().value == sets);
    const auto few = drain(solution->list(chain.q, {.maxOrder = 3}));
    ASSERT_EQ(few.size(), 3u); // the three or-gates nearest to the top
    EXPECT_EQ(few[0].literals, (Set{{kLength - 1, false}}));
}

TEST(Deep, AChainOfOneKindOfGate) {
    for (const Op op : {Op::disjunction, Op::conjunction}) {
        Formula f;
        Literal last = f.addVariable();
        for (std::uint32_t i = 1; i < kLength; ++i) {
            const std::vector<Literal> inputs{last, f.addVariable()};
            last = f.addGate(op, inputs);
        }
        const auto solution = solved(f, last);
        ASSERT_TRUE(solution);
        const std::vector<double> q(kLength, op == Op::disjunction ? 1e-9 : 0.99999);
        const long double one = op == Op::disjunction ? 1 - 1e-9L : 0.99999L;
        EXPECT_TRUE(near(op == Op::disjunction ? solution->probability(q).occursNot
                                               : solution->probability(q).occurs,
                         std::pow(one, static_cast<long double>(kLength)), 1e-10));
        EXPECT_TRUE(solution->setCount().value == (op == Op::disjunction ? kLength : 1u));
    }
}

TEST(Deep, AChainThatComesBackToItsEvents) {
    // With an even number of events each always meets the same kind of gate. Whoever comes to an
    // event the second time on the way down has passed it before, so that it changes nothing any
    // more: the chain is as good as its last `events` gates on top of a constant that passes.
    for (const std::uint32_t events : {20u, 1000u}) {
        const Chain chain = alternating(events);
        const auto solution = solved(chain.formula, chain.top);
        ASSERT_TRUE(solution);
        // x(0) meets and-gates only; whoever comes down to the end has passed it, so it is true.
        long double occurs = 1, occursNot = 0;
        for (std::uint32_t i = kLength - events; i < kLength; ++i) {
            const long double q = chain.q[i % events];
            if (i % 2 == 1) {
                occurs += occursNot * q;
                occursNot *= 1 - q;
            } else {
                occursNot += occurs * (1 - q);
                occurs *= q;
            }
        }
        const auto pair = solution->probability(chain.q);
        EXPECT_TRUE(near(pair.occurs, occurs, 1e-11)) << events << " events";
        EXPECT_TRUE(near(pair.occursNot, occursNot, 1e-11)) << events << " events";
    }
}

TEST(Deep, TheDualOfAChain) {
    const Chain chain = alternating(kLength);
    const auto dual = logic::dual(chain.formula, chain.top);
    const auto solution = solved(dual.formula, dual.top);
    const auto straight = solved(chain.formula, chain.top);
    ASSERT_TRUE(solution && straight);
    std::vector<double> working;
    for (double q : chain.q)
        working.push_back(1 - q);
    EXPECT_TRUE(near(solution->probability(working).occurs,
                     straight->probability(chain.q).occursNot, 1e-9));
}

TEST(Deep, AChainOfExclusiveOrs) {
    // Not coherent and full of repeats: x(i mod 10) over and over. Odd parity of those that come an
    // odd number of times.
    Formula f;
    std::vector<Literal> events;
    for (int v = 0; v < 10; ++v)
        events.push_back(f.addVariable());
    Literal last = events[0];
    for (std::uint32_t i = 1; i < kLength + 3; ++i)
        last = f.addGate(Op::exactlyOne, std::vector<Literal>{last, events[i % 10]});
    const auto solution = solved(f, last);
    ASSERT_TRUE(solution);
    // 100,003 gates' worth of events: x0, x1 and x2 come 10,001 times, the others 10,000 times.
    EXPECT_EQ(solution->relevantVariables(), (std::vector<std::uint32_t>{0, 1, 2}));
    EXPECT_TRUE(solution->setCount().value == 4);
    const std::vector<double> q{0.1, 0.2, 0.3, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5};
    EXPECT_TRUE(near(solution->probability(q).occurs, 0.404L, 1e-12)); // worked-examples 12.3
}

} // namespace
} // namespace cutwater::oracle
