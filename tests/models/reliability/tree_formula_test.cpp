// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/tree_formula.h"
#include "tests/oracle/solved.h"

#include <bit>

namespace cutwater::reliability {
namespace {

using namespace project;

struct Tree : Project {
    Tree& add(const std::string& id, EventKind kind = EventKind::basic, bool state = false) {
        Event event;
        event.id = id;
        event.kind = kind;
        event.state = state;
        events.push_back(event);
        return *this;
    }
    Tree& add(const std::string& id, GateKind kind, const std::vector<std::string>& inputs,
              std::optional<int> k = {}, const std::string& condition = {}) {
        Gate gate;
        gate.id = id;
        gate.kind = kind;
        gate.k = k;
        gate.condition.id = condition;
        for (const auto& input : inputs)
            gate.inputs.push_back({input, {}});
        gates.push_back(gate);
        return *this;
    }
    TreeFormula formula(const std::string& node, const std::map<Id, bool>& forced = {}) const {
        return toFormula(*this, Index(*this), node, forced);
    }
    // Ids of the events of the formula's variables, in order.
    std::vector<std::string> variables(const TreeFormula& formula) const {
        std::vector<std::string> ids;
        for (std::size_t position : formula.eventOfVariable)
            ids.push_back(events[position].id);
        return ids;
    }
};

using Ids = std::vector<std::string>;

// Whether the top is true in a state given by a bit per variable.
bool top(const TreeFormula& formula, std::uint32_t state) {
    return oracle::TruthTable(formula.formula, formula.top)[state];
}

TEST(TreeFormula, NumbersEventsAsTheyAreMetFromLeftToRight) {
    Tree tree;
    tree.add("A").add("B").add("C").add("D");
    tree.add("TOP", GateKind::orGate, {"G1", "A", "G2"});
    tree.add("G1", GateKind::andGate, {"D", "C"});
    tree.add("G2", GateKind::andGate, {"C", "B"});
    const auto formula = tree.formula("TOP");
    EXPECT_EQ(tree.variables(formula), (Ids{"D", "C", "A", "B"}));
    EXPECT_FALSE(formula.hasPriorityAnd);
    EXPECT_TRUE(top(formula, 0b0011));  // D C
    EXPECT_TRUE(top(formula, 0b0100));  // A
    EXPECT_TRUE(top(formula, 0b1010));  // C B
    EXPECT_FALSE(top(formula, 0b1001)); // D B
}

TEST(TreeFormula, SharedGatesAreMadeOnce) {
    Tree tree;
    tree.add("A").add("B").add("C");
    tree.add("TOP", GateKind::andGate, {"L", "R"});
    tree.add("L", GateKind::orGate, {"S", "A"});
    tree.add("R", GateKind::orGate, {"S", "C"});
    tree.add("S", GateKind::andGate, {"A", "B"});
    const auto formula = tree.formula("TOP");
    EXPECT_EQ(formula.formula.nodeCount(), 1u + 3 + 4); // the constant, the events, the gates
    EXPECT_EQ(tree.variables(formula), (Ids{"A", "B", "C"}));
}

TEST(TreeFormula, SharingThatDoublesAtEveryStepStaysSmall) {
    Tree tree;
    tree.add("A").add("B");
    const int levels = 2000; // 2^2000 paths
    for (int i = 0; i < levels; ++i) {
        const std::string below = i + 1 == levels ? "A" : "G" + std::to_string(i + 1);
        tree.add("G" + std::to_string(i), i % 2 ? GateKind::andGate : GateKind::orGate,
                 {below, below, "B"});
    }
    EXPECT_EQ(tree.formula("G0").formula.nodeCount(), 1u + 2 + levels);
}

TEST(TreeFormula, EveryKindOfGate) {
    Tree tree;
    tree.add("A").add("B").add("C");
    tree.add("or", GateKind::orGate, {"A", "B", "C"});
    tree.add("and", GateKind::andGate, {"A", "B", "C"});
    tree.add("vote", GateKind::vote, {"A", "B", "C"}, 2);
    tree.add("one", GateKind::exactlyOne, {"A", "B", "C"});
    tree.add("not", GateKind::notGate, {"or"});
    tree.add("order", GateKind::priorityAnd, {"A", "B", "C"});
    tree.add("inhibit", GateKind::inhibit, {"A", "B"}, {}, "C");
    for (std::uint32_t state = 0; state < 8; ++state) {
        const int count = std::popcount(state);
        EXPECT_EQ(top(tree.formula("or"), state), count > 0);
        EXPECT_EQ(top(tree.formula("and"), state), count == 3);
        EXPECT_EQ(top(tree.formula("vote"), state), count >= 2);
        EXPECT_EQ(top(tree.formula("one"), state), count == 1);
        EXPECT_EQ(top(tree.formula("not"), state), count == 0);
        EXPECT_EQ(top(tree.formula("order"), state), count == 3);
        EXPECT_EQ(top(tree.formula("inhibit"), state), count == 3);
    }
    EXPECT_TRUE(tree.formula("order").hasPriorityAnd);
    EXPECT_FALSE(tree.formula("inhibit").hasPriorityAnd);
    // Only what is below the asked node counts.
    tree.add("above", GateKind::orGate, {"and", "order"});
    EXPECT_TRUE(tree.formula("above").hasPriorityAnd);
    EXPECT_FALSE(tree.formula("and").hasPriorityAnd);
}

TEST(TreeFormula, ConditionsOfAnInhibitGateComeAfterItsInputs) {
    Tree tree;
    tree.add("C", EventKind::conditioning).add("A");
    tree.add("TOP", GateKind::inhibit, {"A"}, {}, "C");
    EXPECT_EQ(tree.variables(tree.formula("TOP")), (Ids{"A", "C"}));
}

TEST(TreeFormula, HouseAndForcedEventsAreConstants) {
    Tree tree;
    tree.add("A").add("H", EventKind::house, true).add("B", EventKind::undeveloped);
    tree.add("TOP", GateKind::andGate, {"A", "H", "B"});
    const auto plain = tree.formula("TOP");
    EXPECT_EQ(tree.variables(plain), (Ids{"A", "B"}));
    EXPECT_TRUE(top(plain, 0b11));
    const auto off = tree.formula("TOP", {{"H", false}});
    EXPECT_FALSE(top(off, 0b11));
    const auto jumper = tree.formula("TOP", {{"A", true}});
    EXPECT_EQ(tree.variables(jumper), (Ids{"B"}));
    EXPECT_TRUE(top(jumper, 0b1));
    EXPECT_FALSE(top(jumper, 0b0));
}

TEST(TreeFormula, TheNodeMayBeAnEvent) {
    Tree tree;
    tree.add("A").add("H", EventKind::house, true);
    const auto event = tree.formula("A");
    EXPECT_EQ(tree.variables(event), (Ids{"A"}));
    EXPECT_TRUE(top(event, 1));
    EXPECT_FALSE(top(event, 0));
    const auto house = tree.formula("H");
    EXPECT_EQ(house.top, logic::kTrue);
    EXPECT_TRUE(tree.variables(house).empty());
}

TEST(TreeFormula, AChainOfAMillionGates) {
    Tree tree;
    tree.add("A").add("B");
    const int length = 1'000'000;
    tree.gates.reserve(length);
    for (int i = 0; i < length; ++i)
        tree.add("G" + std::to_string(i), i % 2 ? GateKind::andGate : GateKind::orGate,
                 {i + 1 == length ? "A" : "G" + std::to_string(i + 1), "B"});
    const auto formula = tree.formula("G0");
    EXPECT_EQ(formula.formula.nodeCount(), 1u + 2 + length);
    EXPECT_EQ(tree.variables(formula), (Ids{"A", "B"}));
}

} // namespace
} // namespace cutwater::reliability
