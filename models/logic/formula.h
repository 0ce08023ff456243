// SPDX-License-Identifier: GPL-3.0-or-later
// Formula: a Boolean formula as a directed acyclic graph in flat arrays. Knows nothing of plants:
// variables are numbers.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace cutwater::logic {

// A node of the formula, or its negation. Constants are literals too.
class Literal {
public:
    constexpr Literal() = default;
    constexpr Literal(std::uint32_t node, bool negated) : m_code(node << 1 | (negated ? 1u : 0u)) {}
    constexpr std::uint32_t node() const { return m_code >> 1; }
    constexpr bool negated() const { return m_code & 1u; }
    constexpr std::uint32_t code() const { return m_code; }
    constexpr Literal operator~() const { return fromCode(m_code ^ 1u); }
    static constexpr Literal fromCode(std::uint32_t code) {
        Literal literal;
        literal.m_code = code;
        return literal;
    }
    constexpr bool operator==(const Literal&) const = default;

private:
    std::uint32_t m_code = 0;
};

constexpr Literal kFalse{0, false};
constexpr Literal kTrue{0, true};

enum class Op : std::uint8_t {
    constant, // node 0 only: false
    variable, // an event
    conjunction,
    disjunction,
    atLeast,    // at least k of the inputs
    exactlyOne, // exactly one of the inputs
};

// Nodes are numbered from 0 (the constant); inputs must exist before the gate that uses them, so
// numbers are a topological order and no cycle can be made. Not thread-safe while it grows; a
// finished one may be read by many.
class Formula {
public:
    Formula();

    // A new event; its variable number is the count of variables before it.
    Literal addVariable();
    // `k` counts for atLeast only: k <= 0 is always true, k > n never. No inputs: conjunction is
    // true, disjunction false, exactlyOne false. Inputs may repeat and are counted as often as they
    // stand. Precondition: inputs exist.
    Literal addGate(Op op, std::span<const Literal> inputs, std::int64_t k = 0);

    std::uint32_t nodeCount() const { return static_cast<std::uint32_t>(m_ops.size()); }
    std::uint32_t variableCount() const { return m_variableCount; }
    std::size_t inputCount() const { return m_inputs.size(); } // of all gates together
    void reserve(const Formula& other); // room for as much as the other one holds
    std::size_t bytes() const;          // that the arrays hold
    Op op(std::uint32_t node) const { return m_ops[node]; }
    std::uint32_t variable(std::uint32_t node) const { return m_data[node]; } // op == variable
    std::uint32_t k(std::uint32_t node) const { return m_data[node]; }        // op == atLeast
    std::span<const Literal> inputs(std::uint32_t node) const {
        return {m_inputs.data() + m_begin[node], m_inputs.data() + m_begin[node + 1]};
    }

private:
    std::vector<Op> m_ops;
    std::vector<std::uint32_t> m_data; // variable number or k
    std::vector<std::uint32_t> m_begin;
    std::vector<Literal> m_inputs;
    std::uint32_t m_variableCount = 0;
};

// The formula whose minimal cut sets are the minimal path sets of `formula`: and and or exchanged,
// at least k of n made at least n-k+1, all constants turned. dual(f)(x) = not f(not x).
struct DualFormula {
    Formula formula;
    Literal top;
};
DualFormula dual(const Formula& formula, Literal top);

} // namespace cutwater::logic
