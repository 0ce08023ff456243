// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/brute_force.h"

#include <bit>

namespace cutwater::oracle {

using logic::Formula;
using logic::Literal;
using logic::Op;

namespace {

// Patterns of the first six variables within a word of 64 states.
constexpr std::uint64_t kPattern[6] = {0xaaaaaaaaaaaaaaaaull, 0xccccccccccccccccull,
                                       0xf0f0f0f0f0f0f0f0ull, 0xff00ff00ff00ff00ull,
                                       0xffff0000ffff0000ull, 0xffffffff00000000ull};

std::uint64_t pattern(std::uint32_t variable, std::size_t word) {
    if (variable < 6) return kPattern[variable];
    return word >> (variable - 6) & 1u ? ~std::uint64_t{0} : 0;
}

// One gate in 64 states at once: counts how many inputs are true with counters "at least j".
std::uint64_t evaluate(const Formula& formula, std::uint32_t node,
                       const std::vector<std::uint64_t>& values) {
    const auto value = [&](Literal literal) {
        return literal.negated() ? ~values[literal.node()] : values[literal.node()];
    };
    const auto inputs = formula.inputs(node);
    switch (formula.op(node)) {
    case Op::conjunction: {
        std::uint64_t all = ~std::uint64_t{0};
        for (Literal literal : inputs)
            all &= value(literal);
        return all;
    }
    case Op::disjunction: {
        std::uint64_t any = 0;
        for (Literal literal : inputs)
            any |= value(literal);
        return any;
    }
    default: break;
    }
    std::vector<std::uint64_t> atLeast(inputs.size() + 2, 0);
    atLeast[0] = ~std::uint64_t{0};
    for (Literal literal : inputs)
        for (std::size_t j = inputs.size(); j >= 1; --j)
            atLeast[j] |= atLeast[j - 1] & value(literal);
    if (formula.op(node) == Op::exactlyOne) return atLeast[1] & ~atLeast[2];
    return formula.k(node) > inputs.size() ? 0 : atLeast[formula.k(node)];
}

} // namespace

TruthTable::TruthTable(const Formula& formula, Literal top)
    : m_variables(formula.variableCount()), m_words((states() + 63) / 64) {
    std::vector<std::uint64_t> values(formula.nodeCount());
    for (std::size_t word = 0; word < m_words.size(); ++word) {
        for (std::uint32_t node = 0; node < formula.nodeCount(); ++node) {
            if (formula.op(node) == Op::constant)
                values[node] = 0;
            else if (formula.op(node) == Op::variable)
                values[node] = pattern(formula.variable(node), word);
            else
                values[node] = evaluate(formula, node, values);
        }
        m_words[word] = top.negated() ? ~values[top.node()] : values[top.node()];
    }
}

TruthTable::TruthTable(std::uint32_t variables, std::vector<std::uint64_t> words)
    : m_variables(variables), m_words(std::move(words)) {}

bool TruthTable::always() const {
    for (std::uint32_t state = 0; state < states(); ++state)
        if (!(*this)[state]) return false;
    return true;
}

bool TruthTable::never() const {
    for (std::uint32_t state = 0; state < states(); ++state)
        if ((*this)[state]) return false;
    return true;
}

bool TruthTable::monotone() const {
    for (std::uint32_t state = 0; state < states(); ++state)
        if ((*this)[state])
            for (std::uint32_t v = 0; v < m_variables; ++v)
                if (!(*this)[state | std::uint32_t{1} << v]) return false;
    return true;
}

TruthTable TruthTable::dual() const {
    std::vector<std::uint64_t> words(m_words.size(), 0);
    for (std::uint32_t state = 0; state < states(); ++state)
        if (!(*this)[states() - 1 - state]) words[state / 64] |= std::uint64_t{1} << state % 64;
    return {m_variables, std::move(words)};
}

Chances probability(const TruthTable& table, std::span<const double> q) {
    Chances sum;
    for (std::uint32_t state = 0; state < table.states(); ++state) {
        long double chance = 1;
        for (std::uint32_t v = 0; v < table.variables(); ++v)
            chance *= state >> v & 1u ? static_cast<long double>(q[v]) : 1.0L - q[v];
        (table[state] ? sum.occurs : sum.occursNot) += chance;
    }
    return sum;
}

Sets primeImplicants(const TruthTable& table) {
    // A product is a number in base 3, a digit per variable: 0 must not occur, 1 must, 2 does not
    // matter. It implies the formula if both products with its lowest 2 replaced do; those have
    // smaller numbers.
    const std::uint32_t n = table.variables();
    std::vector<std::uint32_t> weight(n + 1, 1);
    for (std::uint32_t v = 0; v < n; ++v)
        weight[v + 1] = 3 * weight[v];
    std::vector<char> implies(weight[n]);
    Sets sets;
    std::vector<std::uint8_t> digit(n, 0);
    for (std::uint32_t code = 0; code < weight[n]; ++code) {
        std::uint32_t state = 0;
        std::uint32_t free = n;
        for (std::uint32_t v = 0; v < n; ++v) {
            if (digit[v] == 2) {
                free = v;
                break;
            }
            state |= std::uint32_t{digit[v]} << v;
        }
        implies[code] = free == n ? static_cast<char>(table[state])
                                  : static_cast<char>(implies[code - weight[free]] &&
                                                      implies[code - 2 * weight[free]]);
        for (std::uint32_t v = 0; v < n && ++digit[v] == 3; ++v)
            digit[v] = 0;
    }
    digit.assign(n, 0);
    for (std::uint32_t code = 0; code < weight[n]; ++code) {
        bool prime = implies[code];
        for (std::uint32_t v = 0; v < n && prime; ++v)
            prime = digit[v] == 2 || !implies[code + (2 - digit[v]) * weight[v]];
        if (prime) {
            Set set;
            for (std::uint32_t v = 0; v < n; ++v)
                if (digit[v] != 2) set.push_back({v, digit[v] == 0});
            sets.insert(std::move(set));
        }
        for (std::uint32_t v = 0; v < n && ++digit[v] == 3; ++v)
            digit[v] = 0;
    }
    return sets;
}

Sets minimalCutSets(const TruthTable& table) {
    Sets sets;
    for (std::uint32_t state = 0; state < table.states(); ++state) {
        bool minimal = table[state];
        for (std::uint32_t rest = state; rest && minimal; rest &= rest - 1)
            minimal = !table[state & ~(rest & -rest)];
        if (!minimal) continue;
        Set set;
        for (std::uint32_t rest = state; rest; rest &= rest - 1)
            set.push_back({static_cast<std::uint32_t>(std::countr_zero(rest)), false});
        sets.insert(std::move(set));
    }
    return sets;
}

double product(const Set& set, std::span<const double> q) {
    double chance = 1;
    for (const auto& literal : set)
        chance *= literal.negated ? 1 - q[literal.variable] : q[literal.variable];
    return chance;
}

} // namespace cutwater::oracle
