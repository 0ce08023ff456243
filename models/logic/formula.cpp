// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/formula.h"

#include <algorithm>
#include <cassert>

namespace cutwater::logic {

Formula::Formula() : m_ops{Op::constant}, m_data{0}, m_begin{0, 0} {}

void Formula::reserve(const Formula& other) {
    m_ops.reserve(other.m_ops.size());
    m_data.reserve(other.m_data.size());
    m_begin.reserve(other.m_begin.size());
    m_inputs.reserve(other.m_inputs.size());
}

std::size_t Formula::bytes() const {
    return m_ops.capacity() * sizeof(Op) + m_data.capacity() * sizeof(m_data[0]) +
           m_begin.capacity() * sizeof(m_begin[0]) + m_inputs.capacity() * sizeof(m_inputs[0]);
}

Literal Formula::addVariable() {
    m_ops.push_back(Op::variable);
    m_data.push_back(m_variableCount++);
    m_begin.push_back(static_cast<std::uint32_t>(m_inputs.size()));
    return {nodeCount() - 1, false};
}

Literal Formula::addGate(Op op, std::span<const Literal> inputs, std::int64_t k) {
    assert(op != Op::constant && op != Op::variable);
    if (op == Op::atLeast && k <= 0) return kTrue;
    if (op == Op::atLeast && k > static_cast<std::int64_t>(inputs.size())) return kFalse;
    for ([[maybe_unused]] const Literal input : inputs)
        assert(input.node() < nodeCount());
    m_ops.push_back(op);
    m_data.push_back(op == Op::atLeast ? static_cast<std::uint32_t>(k) : 0);
    m_inputs.insert(m_inputs.end(), inputs.begin(), inputs.end());
    m_begin.push_back(static_cast<std::uint32_t>(m_inputs.size()));
    return {nodeCount() - 1, false};
}

DualFormula dual(const Formula& formula, Literal top) {
    DualFormula result;
    // map[n] is the dual of node n; the dual of a negation is the negation of the dual.
    std::vector<Literal> map(formula.nodeCount(), kTrue);
    std::vector<Literal> inputs;
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node) {
        if (formula.op(node) == Op::variable) {
            map[node] = result.formula.addVariable();
            continue;
        }
        inputs.clear();
        for (const Literal input : formula.inputs(node))
            inputs.push_back(input.negated() ? ~map[input.node()] : map[input.node()]);
        switch (formula.op(node)) {
        case Op::conjunction: map[node] = result.formula.addGate(Op::disjunction, inputs); break;
        case Op::disjunction: map[node] = result.formula.addGate(Op::conjunction, inputs); break;
        case Op::atLeast:
            map[node] = result.formula.addGate(Op::atLeast, inputs,
                                               std::int64_t(inputs.size()) - formula.k(node) + 1);
            break;
        default: // exactlyOne: not (exactly one of the inputs does not occur)
            for (Literal& input : inputs)
                input = ~input;
            map[node] = ~result.formula.addGate(Op::exactlyOne, inputs);
        }
    }
    result.top = top.negated() ? ~map[top.node()] : map[top.node()];
    return result;
}

} // namespace cutwater::logic
