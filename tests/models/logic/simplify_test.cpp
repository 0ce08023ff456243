// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/simplify.h"

#include <gtest/gtest.h>

#include <array>

using namespace cutwater::logic;

namespace {

const Limits kLimits;

struct Simplify : ::testing::Test {
    Formula f;
    Account account{kLimits};
    Budget budget{account};
    Literal a = f.addVariable(), b = f.addVariable(), c = f.addVariable();
    Literal conjunction(std::vector<Literal> inputs) { return f.addGate(Op::conjunction, inputs); }
    Literal disjunction(std::vector<Literal> inputs) { return f.addGate(Op::disjunction, inputs); }
    Simplified run(Literal top) { return simplify(f, top, budget); }
    std::size_t gates(const Simplified& s) {
        return s.formula.nodeCount() - 1 - s.formula.variableCount();
    }
};

TEST_F(Simplify, ConstantsDisappear) {
    EXPECT_EQ(run(conjunction({a, kFalse})).top, kFalse);
    EXPECT_EQ(run(disjunction({a, kTrue})).top, kTrue);
    const Simplified s = run(disjunction({a, conjunction({b, kFalse})}));
    EXPECT_EQ(s.formula.op(s.top.node()), Op::variable);
    EXPECT_EQ(s.variableOf, (std::vector<std::uint32_t>{0}));
}

TEST_F(Simplify, NestedGatesOfOneKindBecomeOne) {
    const Simplified s = run(disjunction({a, disjunction({b, disjunction({c, a})})}));
    EXPECT_EQ(gates(s), 1u);
    EXPECT_EQ(s.formula.inputs(s.top.node()).size(), 3u);
}

TEST_F(Simplify, NegationsArePushedDown) { // not (not a and not (b or c)) is a or b or c
    const Simplified s = run(~conjunction({~a, ~disjunction({b, c})}));
    EXPECT_EQ(gates(s), 1u);
    for (const Literal input : s.formula.inputs(s.top.node()))
        EXPECT_EQ(input.negated(), s.top.negated());
}

TEST_F(Simplify, EqualGatesBecomeOne) {
    const Literal x = conjunction({a, b}), y = conjunction({b, a});
    const Simplified s = run(f.addGate(Op::exactlyOne, std::array{x, c, y}));
    // x twice would make two, so x must be false and c alone true.
    EXPECT_EQ(s.formula.op(s.top.node()), Op::conjunction);
}

TEST_F(Simplify, VotesThatAreAndOrOr) {
    const std::array inputs{a, b, c};
    EXPECT_EQ(run(f.addGate(Op::atLeast, inputs, 0)).top, kTrue);
    EXPECT_EQ(run(f.addGate(Op::atLeast, inputs, 4)).top, kFalse);
    const Simplified any = run(f.addGate(Op::atLeast, inputs, 1));
    EXPECT_EQ(any.formula.op(any.top.node()), Op::disjunction);
    const Simplified all = run(f.addGate(Op::atLeast, inputs, 3));
    EXPECT_EQ(all.formula.op(all.top.node()), Op::conjunction);
    const Simplified known = run(f.addGate(Op::atLeast, std::array{a, b, c, kTrue, kFalse}, 2));
    EXPECT_EQ(known.formula.op(known.top.node()), Op::disjunction);
}

TEST_F(Simplify, ADeepChainOfOneKindIsMergedInLinearTime) {
    Literal gate = a;
    for (int i = 0; i < 200000; ++i)
        gate = f.addGate(Op::disjunction, std::array{gate, i % 2 ? b : f.addVariable()});
    const Simplified s = run(gate);
    EXPECT_EQ(gates(s), 1u);
}

// x or (y and (x or z)): the inner x can only matter where the outer one is false.
TEST_F(Simplify, RepeatedEventsAreReplacedBelowTheGateThatDecidesThem) {
    const Literal top = disjunction({a, conjunction({b, disjunction({a, c})})});
    const Simplified s = reduce(f, top, budget);
    EXPECT_EQ(gates(s), 2u);
    std::size_t inputs = 0;
    for (std::uint32_t node = 1; node < s.formula.nodeCount(); ++node)
        inputs += s.formula.inputs(node).size();
    EXPECT_EQ(inputs, 4u); // a or (b and c): each event once
}

// The shared gate is also used where nothing is known about a: it must stay as it is.
TEST_F(Simplify, SharedGatesKeepTheirEvents) {
    const Literal d = f.addVariable();
    const Literal shared = disjunction({a, c});
    const Literal top = disjunction({conjunction({a, b, shared}), conjunction({d, shared})});
    const Simplified s = reduce(f, top, budget);
    std::size_t uses = 0;
    for (std::uint32_t node = 1; node < s.formula.nodeCount(); ++node)
        for (const Literal input : s.formula.inputs(node))
            uses += s.formula.op(input.node()) == Op::variable &&
                    s.variableOf[s.formula.variable(input.node())] == 0;
    EXPECT_EQ(uses, 2u);
}

TEST_F(Simplify, AChainThatComesBackToItsEventsIsCut) {
    std::vector<Literal> events{a, b, c};
    for (int i = 0; i < 17; ++i)
        events.push_back(f.addVariable());
    Literal gate = events[0];
    for (int i = 0; i < 100000; ++i)
        gate =
            f.addGate(i % 2 ? Op::conjunction : Op::disjunction, std::array{gate, events[i % 20]});
    EXPECT_LE(gates(reduce(f, gate, budget)), 20u);
}

} // namespace
