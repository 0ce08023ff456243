// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/describe.h"

namespace cutwater::logic {

namespace {
constexpr std::uint32_t kUnseen = 0xffffffff;
}

// Every event, gate and module root stands in exactly one module that uses it, so one array serves
// all of them, and no two threads write to one place.
Describer::Describer(const Formula& formula, const std::vector<bool>& isModule)
    : m_formula(formula), m_isModule(isModule), m_code(formula.nodeCount(), kUnseen),
      m_constant(formula.nodeCount()) {}

Described Describer::describe(std::uint32_t module, Budget& budget) {
    Described result;
    Program& program = result.program;
    std::vector<std::uint32_t>
        touched; // forgotten at the end, so that a module can be described again
    const auto number = [&](std::uint32_t node, std::uint32_t code) {
        m_code[node] = code;
        touched.push_back(node);
    };
    struct Step {
        std::uint32_t node, next;
    };
    std::vector<Step> stack;
    const auto enter = [&](std::uint32_t node) {
        stack.push_back({node, 0});
        for (const Literal input : m_formula.inputs(node)) {
            const std::uint32_t child = input.node();
            const bool isVariable = m_formula.op(child) == Op::variable;
            if ((!isVariable && !m_isModule[child]) || m_code[child] != kUnseen ||
                m_constant[child])
                continue;
            number(child, static_cast<std::uint32_t>(result.leaves.size()) << 2);
            result.leaves.push_back(isVariable ? Leaf{m_formula.variable(child), false}
                                               : Leaf{child, true});
        }
    };
    std::uint32_t gates = 0;
    enter(module);
    while (!stack.empty()) {
        budget.step();
        Step& step = stack.back();
        const auto inputs = m_formula.inputs(step.node);
        if (step.next < inputs.size()) {
            const std::uint32_t child = inputs[step.next++].node();
            if (m_code[child] == kUnseen && !m_constant[child]) enter(child);
            continue;
        }
        const std::uint32_t node = step.node;
        stack.pop_back();
        const Op op = m_formula.op(node);
        program.code.push_back(static_cast<std::uint32_t>(op));
        program.code.push_back(op == Op::atLeast ? m_formula.k(node) : 0);
        program.code.push_back(static_cast<std::uint32_t>(inputs.size()));
        program.monotone &= op != Op::exactlyOne;
        for (const Literal input : inputs) {
            if (const auto constant = m_constant[input.node()]) {
                program.code.push_back(*constant != input.negated() ? Program::kTrueInput
                                                                    : Program::kFalseInput);
                continue;
            }
            program.code.push_back(m_code[input.node()] | (input.negated() ? 1u : 0u));
            program.monotone &= !input.negated();
        }
        // The module itself is a leaf to whoever uses it, and that is written by him.
        if (node != module) number(node, gates << 2 | 2u);
        ++gates;
    }
    program.leaves = static_cast<std::uint32_t>(result.leaves.size());
    for (const std::uint32_t node : touched)
        m_code[node] = kUnseen;
    return result;
}

} // namespace cutwater::logic
