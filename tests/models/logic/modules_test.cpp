// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/modules.h"
#include "models/logic/regroup.h"

#include <gtest/gtest.h>

#include <array>

using namespace cutwater::logic;

namespace {

// Room for everything.
struct Room {
    const Limits limits{};
    Account account{limits};
    Budget budget{account};
};

TEST(Modules, SharedEventsBreakModules) {
    Formula f;
    const Literal a = f.addVariable(), b = f.addVariable(), c = f.addVariable(),
                  d = f.addVariable(), e = f.addVariable();
    const Literal g1 = f.addGate(Op::conjunction, std::array{a, b});
    const Literal g2 = f.addGate(Op::conjunction, std::array{b, c}); // shares b with g1
    const Literal pair = f.addGate(Op::disjunction, std::array{g1, g2});
    const Literal alone = f.addGate(Op::conjunction, std::array{d, e});
    const Literal top = f.addGate(Op::disjunction, std::array{pair, alone});
    Room room;
    const auto isModule = findModules(f, top, room.budget);
    EXPECT_FALSE(isModule[g1.node()]);
    EXPECT_FALSE(isModule[g2.node()]);
    EXPECT_TRUE(isModule[pair.node()]);
    EXPECT_TRUE(isModule[alone.node()]);
    EXPECT_TRUE(isModule[top.node()]);
    EXPECT_FALSE(isModule[a.node()]);
}

TEST(Modules, ASharedGateWithPrivateEventsIsAModule) {
    Formula f;
    const Literal a = f.addVariable(), b = f.addVariable(), c = f.addVariable(),
                  d = f.addVariable();
    const Literal shared = f.addGate(Op::conjunction, std::array{a, b});
    const Literal left = f.addGate(Op::conjunction, std::array{shared, c});
    const Literal right = f.addGate(Op::conjunction, std::array{shared, d});
    const Literal top = f.addGate(Op::disjunction, std::array{left, right});
    Room room;
    const auto isModule = findModules(f, top, room.budget);
    EXPECT_TRUE(isModule[shared.node()]);
    EXPECT_FALSE(isModule[left.node()]);
    EXPECT_FALSE(isModule[right.node()]);
    EXPECT_TRUE(isModule[top.node()]);
}

// Machines that were merged into the `or` above them come apart again, and only where they share
// nothing.
TEST(Modules, AnOrOfMachinesIsSplitIntoMachines) {
    Formula f;
    std::vector<Literal> inputs;
    for (int machine = 0; machine < 5; ++machine) {
        const Literal a = f.addVariable(), b = f.addVariable(), c = f.addVariable();
        inputs.push_back(f.addGate(Op::conjunction, std::array{a, b}));
        inputs.push_back(f.addGate(Op::conjunction, std::array{b, c}));
    }
    const Literal top = f.addGate(Op::disjunction, inputs);
    Room room;
    const auto split = groupModules(f, top, findModules(f, top, room.budget), room.budget);
    ASSERT_TRUE(split);
    const auto parts = split->formula.inputs(split->top.node());
    ASSERT_EQ(parts.size(), 5u);
    EXPECT_EQ(split->isModule, findModules(split->formula, split->top, room.budget));
    for (const Literal part : parts) {
        EXPECT_TRUE(split->isModule[part.node()]);
        EXPECT_EQ(split->formula.op(part.node()), Op::disjunction);
        EXPECT_EQ(split->formula.inputs(part.node()).size(), 2u);
    }
}

// Two trains, each with three events of its own and a common supply: the events of a train become
// one module, the supply stays outside.
TEST(Modules, WhatOneGateOwnsBecomesAModule) {
    Formula f;
    const Literal supply = f.addVariable();
    std::vector<Literal> trains;
    for (int train = 0; train < 2; ++train) {
        std::vector<Literal> inputs{f.addVariable(), supply, f.addVariable(), f.addVariable()};
        trains.push_back(f.addGate(Op::disjunction, inputs));
    }
    const Literal top = f.addGate(Op::conjunction, trains);
    Room room;
    const auto grouped = groupModules(f, top, findModules(f, top, room.budget), room.budget);
    ASSERT_TRUE(grouped);
    EXPECT_EQ(grouped->isModule, findModules(grouped->formula, grouped->top, room.budget));
    for (const Literal train : grouped->formula.inputs(grouped->top.node())) {
        const auto inputs = grouped->formula.inputs(train.node());
        ASSERT_EQ(inputs.size(), 2u);
        EXPECT_EQ(grouped->formula.op(inputs[0].node()), Op::variable);
        EXPECT_EQ(grouped->formula.inputs(inputs[1].node()).size(), 3u);
    }
}

TEST(Modules, NothingToGroupChangesNothing) {
    Formula f;
    const Literal a = f.addVariable(), b = f.addVariable();
    const Literal top = f.addGate(Op::conjunction, std::array{a, b});
    Room room;
    EXPECT_FALSE(groupModules(f, top, findModules(f, top, room.budget), room.budget));
}

} // namespace
