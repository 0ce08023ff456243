// SPDX-License-Identifier: GPL-3.0-or-later
// Trimming changes no formula's meaning: held to the truth table of the formula before.
#include "models/logic/trim.h"

#include "tests/oracle/brute_force.h"
#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <array>
#include <gtest/gtest.h>

namespace cutwater::oracle {
namespace {

using logic::Formula;
using logic::Literal;

logic::Trimmed trimmedOf(const Formula& formula, Literal top) {
    const logic::Limits limits;
    logic::Account account(limits);
    logic::Budget budget(account);
    return logic::trim(formula, top, budget);
}

void expectSameMeaning(const Formula& formula, Literal top) {
    const logic::Trimmed trimmed = trimmedOf(formula, top);
    ASSERT_EQ(trimmed.formula.variableCount(), formula.variableCount());
    EXPECT_LE(trimmed.formula.inputCount(), formula.inputCount());
    const TruthTable before(formula, top), after(trimmed.formula, trimmed.top);
    for (std::uint32_t state = 0; state < before.states(); ++state)
        ASSERT_EQ(before[state], after[state]) << "in state " << state;
}

TEST(Trim, KeepsTheMeaningOfRandomTrees) {
    for (std::uint64_t seed = 1; seed <= 3000; ++seed) {
        SCOPED_TRACE(seed);
        TreeWish wish;
        wish.events = 3 + seed % 8;
        wish.gates = 4 + seed % 23;
        wish.negations = seed % 2 == 0;
        const RandomTree tree = makeTree(seed, wish);
        expectSameMeaning(tree.formula, tree.top);
        expectSameMeaning(tree.formula, ~tree.top);
    }
}

// Every gate is used once, so the walk goes all the way down with what it knows. Three gates of
// four have an event of their own, and all events come again and again.
TEST(Trim, KeepsTheMeaningOfDeepTreesWithFewEvents) {
    constexpr std::uint32_t kEvents = 7;
    std::size_t before = 0, after = 0;
    for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
        SCOPED_TRACE(seed);
        Random random(seed);
        Formula formula;
        std::vector<Literal> open; // not used yet
        for (std::uint32_t e = 0; e < kEvents; ++e)
            formula.addVariable();
        const auto literal = [&](Literal positive) {
            return seed % 2 && random.chance(0.2) ? ~positive : positive;
        };
        const auto event = [&] { return literal({1 + random.below(kEvents), false}); };
        for (int g = 0; g < 40; ++g) {
            std::vector<Literal> inputs;
            if (random.chance(0.75)) inputs.push_back(event());
            while (inputs.size() < 2 + random.below(2))
                if (!open.empty() && random.chance(0.7)) {
                    inputs.push_back(literal(open.back()));
                    open.pop_back();
                } else {
                    inputs.push_back(event());
                }
            const std::array ops{logic::Op::conjunction, logic::Op::disjunction,
                                 logic::Op::conjunction, logic::Op::disjunction,
                                 logic::Op::atLeast,     logic::Op::exactlyOne};
            open.push_back(formula.addGate(ops[random.below(6)], inputs, 2));
        }
        const Literal top = formula.addGate(logic::Op::disjunction, open);
        expectSameMeaning(formula, top);
        before += formula.inputCount();
        after += trimmedOf(formula, top).formula.inputCount();
    }
    EXPECT_LT(after * 2, before);
}

// x1 + x2 (x1 + x2 (...)): after the first two gates nothing is left, however deep it goes on.
TEST(Trim, EndsAChainWhereItComesBackToItsEvents) {
    Formula formula;
    const Literal a = formula.addVariable(), b = formula.addVariable();
    Literal below = a;
    for (int i = 0; i < 100000; ++i)
        below = formula.addGate(i % 2 ? logic::Op::disjunction : logic::Op::conjunction,
                                std::array{i % 2 ? a : b, below});
    const logic::Trimmed trimmed = trimmedOf(formula, below);
    EXPECT_LE(trimmed.formula.nodeCount(), 5u);
    const auto solution = solved(formula, below);
    const std::array q{0.25, 0.5};
    EXPECT_DOUBLE_EQ(solution->probability(q).occurs, 0.25); // a + b a = a
}

} // namespace
} // namespace cutwater::oracle
