// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/describe.h"

namespace cutwater::logic {

namespace {
constexpr std::uint32_t kUnseen = 0xffffffff;
}

// Every event, gate and module root stands in exactly one module that uses it, so one array serves
// all of them, and no two threads write to one place.
Describer::Describer(const Formula& formula, const std::vector<bool>& isModule,
                     const std::vector<bool>& turned)
    : m_formula(formula), m_isModule(isModule), m_turned(turned),
      m_code(formula.nodeCount(), kUnseen), m_constant(formula.nodeCount(), Constant::no) {
    m_constant[0] = Constant::isFalse;
}

// The leaves directly below a gate get their numbers when it is met.
void Describer::enter(std::uint32_t node, std::size_t firstLeaf, Descriptions& to) {
    to.m_stack.push_back({node, 0});
    for (const Literal input : m_formula.inputs(node)) {
        const std::uint32_t child = input.node();
        const bool isVariable = m_formula.op(child) == Op::variable;
        if ((!isVariable && !m_isModule[child]) || m_code[child] != kUnseen || isConstant(child))
            continue;
        m_code[child] = static_cast<std::uint32_t>(to.m_leaves.size() - firstLeaf) << 2;
        to.m_touched.push_back(child);
        to.m_leaves.push_back(isVariable ? Leaf{m_formula.variable(child), false}
                                         : Leaf{child, true});
    }
}

void Describer::describe(std::uint32_t module, Descriptions& to, Budget& budget) {
    Descriptions::Item item;
    item.code = to.m_code.size();
    item.leaf = to.m_leaves.size();
    std::uint32_t gates = 0;
    to.m_stack.clear();
    enter(module, item.leaf, to);
    while (!to.m_stack.empty()) {
        budget.step();
        Descriptions::Step& step = to.m_stack.back();
        const auto inputs = m_formula.inputs(step.node);
        if (step.next < inputs.size()) {
            const std::uint32_t child = inputs[step.next++].node();
            if (m_code[child] == kUnseen && !isConstant(child)) enter(child, item.leaf, to);
            continue;
        }
        const std::uint32_t node = step.node;
        to.m_stack.pop_back();
        const Op op = m_formula.op(node);
        to.m_code.push_back(static_cast<std::uint32_t>(op));
        to.m_code.push_back(op == Op::atLeast ? m_formula.k(node) : 0);
        to.m_code.push_back(static_cast<std::uint32_t>(inputs.size()));
        item.monotone &= op != Op::exactlyOne;
        for (const Literal input : inputs) {
            const bool negated = input.negated() != isTurned(input.node());
            const Constant constant = m_constant[input.node()];
            if (constant != Constant::no) {
                to.m_code.push_back((constant == Constant::isTrue) != negated
                                        ? Program::kTrueInput
                                        : Program::kFalseInput);
                continue;
            }
            to.m_code.push_back(m_code[input.node()] | (negated ? 1u : 0u));
            item.monotone &= !negated;
        }
        // The module itself is a leaf to whoever uses it, and that is written by him.
        if (node != module) {
            m_code[node] = gates << 2 | 2u;
            to.m_touched.push_back(node);
        }
        ++gates;
    }
    if (isTurned(module)) {
        const std::uint32_t complement = (gates - 1) << 2 | 3u;
        to.m_code.insert(to.m_code.end(),
                         {static_cast<std::uint32_t>(Op::disjunction), 0, 1, complement});
        item.monotone = false;
    }
    item.words = static_cast<std::uint32_t>(to.m_code.size() - item.code);
    item.leaves = static_cast<std::uint32_t>(to.m_leaves.size() - item.leaf);
    item.hash = hashOf(to.codeOf(item));
    to.items.push_back(item);
    for (const std::uint32_t node : to.m_touched) // so that a module can be described again
        m_code[node] = kUnseen;
    to.m_touched.clear();
}

} // namespace cutwater::logic
