// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/crossings.h"

#include <algorithm>

namespace cutwater::reliability {

namespace {

using logic::Formula;
using logic::Literal;
using logic::Op;

constexpr std::size_t kMostMixed = 200; // events that both help and hinder
constexpr std::size_t kMostJumps = 100; // different sets of events that go at one moment

// A probability that differs by less has not jumped: rounding.
bool falls(double before, double after) {
    return before - after > 1e-9 * before;
}

// The formula again, inside `into`, with other literals in the place of its variables.
Literal copy(const Formula& from, Literal top, std::span<const Literal> variables, Formula& into) {
    std::vector<Literal> made(from.nodeCount(), logic::kFalse);
    std::vector<Literal> inputs;
    const auto mapped = [&](Literal literal) {
        return literal.negated() ? ~made[literal.node()] : made[literal.node()];
    };
    for (std::uint32_t node = 1; node < from.nodeCount(); ++node) {
        if (from.op(node) == Op::variable) {
            made[node] = variables[from.variable(node)];
            continue;
        }
        inputs.clear();
        for (const Literal input : from.inputs(node))
            inputs.push_back(mapped(input));
        made[node] =
            into.addGate(from.op(node), inputs, from.op(node) == Op::atLeast ? from.k(node) : 0);
    }
    return mapped(top);
}

// Whether each node is used as it is (bit 0) and negated (bit 1) below the top.
std::vector<std::uint8_t> usesOf(const Formula& formula, Literal top) {
    std::vector<std::uint8_t> uses(formula.nodeCount(), 0);
    uses[top.node()] = top.negated() ? 2 : 1;
    const auto turned = [](std::uint8_t use) {
        return static_cast<std::uint8_t>((use & 1) << 1 | use >> 1);
    };
    for (std::uint32_t node = formula.nodeCount(); node-- > 1;) {
        if (uses[node] == 0 || formula.op(node) == Op::variable) continue;
        const std::uint8_t use = formula.op(node) == Op::exactlyOne ? 3 : uses[node];
        for (const Literal input : formula.inputs(node))
            uses[input.node()] |= input.negated() ? turned(use) : use;
    }
    return uses;
}

std::vector<Literal> newVariables(Formula& formula, std::uint32_t count) {
    std::vector<Literal> variables;
    for (std::uint32_t i = 0; i < count; ++i)
        variables.push_back(formula.addVariable());
    return variables;
}

std::optional<logic::Solution> solveOnly(const Formula& formula, Literal top,
                                         logic::Limits limits) {
    limits.sets = false;
    limits.progress = {};
    return logic::solve(formula, top, limits).solution;
}

} // namespace

std::optional<Crossings> Crossings::of(const Formula& formula, Literal top,
                                       const logic::Limits& limits) {
    Crossings result;
    result.m_formula = std::make_shared<const Formula>(formula);
    result.m_top = top;
    result.m_parts.assign(formula.variableCount(), Part::none);
    const std::vector<std::uint8_t> uses = usesOf(formula, top);
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node)
        if (formula.op(node) == Op::variable)
            result.m_parts[formula.variable(node)] = static_cast<Part>(uses[node]);
    if (static_cast<std::size_t>(
            std::count(result.m_parts.begin(), result.m_parts.end(), Part::both)) > kMostMixed)
        return {};
    for (std::uint32_t variable = 0; variable < formula.variableCount(); ++variable) {
        if (result.m_parts[variable] != Part::both) continue;
        Formula twice;
        std::vector<Literal> variables = newVariables(twice, formula.variableCount());
        variables[variable] = logic::kTrue;
        const Literal with = copy(formula, top, variables, twice);
        variables[variable] = logic::kFalse;
        const Literal without = copy(formula, top, variables, twice);
        auto solution =
            solveOnly(twice, twice.addGate(Op::conjunction, std::vector{with, ~without}), limits);
        if (!solution) return {};
        result.m_helps.emplace(variable, std::move(*solution));
    }
    return result;
}

double Crossings::helps(std::uint32_t variable, std::span<const double> q, double birnbaum) const {
    switch (m_parts[variable]) {
    case Part::none:
    case Part::hinders: return 0;
    case Part::helps: return birnbaum;
    case Part::both: break;
    }
    return m_helps.at(variable).probability(q).occurs;
}

std::optional<double> JumpBook::atJump(std::span<const double> before,
                                       std::span<const double> after) {
    std::vector<std::uint32_t> gone;
    bool hinders = false; // an event goes that can have hindered
    for (std::uint32_t variable = 0; variable < before.size(); ++variable) {
        if (!falls(before[variable], after[variable])) continue;
        gone.push_back(variable);
        const auto part = m_crossings.m_parts[variable];
        hinders = hinders || part == Crossings::Part::hinders || part == Crossings::Part::both;
    }
    if (!hinders) return 0.0;
    const auto known = m_solved.find(gone);
    if (known == m_solved.end()) {
        if (m_solved.size() >= kMostJumps) return {};
        const Formula& formula = *m_crossings.m_formula;
        Formula twice;
        std::vector<Literal> variables = newVariables(twice, formula.variableCount());
        const Literal then = copy(formula, m_crossings.m_top, variables, twice);
        // Still there afterwards: it was there, and it stays (a variable of its own).
        for (const std::uint32_t variable : gone)
            variables[variable] = twice.addGate(
                Op::conjunction, std::vector{variables[variable], twice.addVariable()});
        const Literal now = copy(formula, m_crossings.m_top, variables, twice);
        m_solved.emplace(
            gone,
            solveOnly(twice, twice.addGate(Op::conjunction, std::vector{~then, now}), m_limits));
    }
    const std::optional<logic::Solution>& solution = m_solved.at(gone);
    if (!solution) return {};
    std::vector<double> q(before.begin(), before.end());
    for (const std::uint32_t variable : gone)
        q.push_back(after[variable] / before[variable]);
    return solution->probability(q).occurs;
}

} // namespace cutwater::reliability
