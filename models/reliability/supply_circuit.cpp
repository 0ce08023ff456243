// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/supply_circuit.h"

#include <algorithm>

namespace cutwater::reliability {

namespace {

using logic::Literal;

constexpr std::uint32_t kUnseen = 0xffffffff;

} // namespace

std::uint32_t Circuit::addGate(bool conjunction) {
    m_gates.push_back({conjunction, {}});
    return size() - 1;
}

void Circuit::addInput(std::uint32_t gate, std::uint32_t input) {
    m_gates[gate].inputs.push_back({true, input, {}});
}

void Circuit::addInput(std::uint32_t gate, Literal input) {
    m_gates[gate].inputs.push_back({false, 0, input});
}

std::vector<std::uint32_t> Circuit::below(std::uint32_t gate) const {
    std::vector<bool> seen(m_gates.size(), false);
    std::vector<std::uint32_t> stack{gate}, found;
    seen[gate] = true;
    while (!stack.empty()) {
        const std::uint32_t one = stack.back();
        stack.pop_back();
        found.push_back(one);
        for (const CircuitInput& input : m_gates[one].inputs)
            if (input.isGate && !seen[input.gate]) {
                seen[input.gate] = true;
                stack.push_back(input.gate);
            }
    }
    std::sort(found.begin(), found.end());
    return found;
}

// Strongly connected components (Tarjan 1972) with a stack of its own; each one comes out after all
// that it stands on.
std::optional<std::vector<Literal>> Circuit::solve(logic::Formula& formula,
                                                   const std::vector<std::uint32_t>& gates,
                                                   std::size_t mostGates) const {
    std::vector<std::uint32_t> number(m_gates.size(), kUnseen), lowest(m_gates.size(), 0);
    std::vector<bool> open(m_gates.size(), false);
    std::vector<Literal> literal(m_gates.size(), logic::kFalse);
    std::vector<Literal> inputs;
    std::vector<std::uint32_t> loop; // gates that are not yet in a component
    struct Frame {
        std::uint32_t gate;
        std::size_t next;
    };
    std::vector<Frame> stack;
    std::uint32_t count = 0;
    std::size_t made = 0;

    const auto value = [&](std::uint32_t gate) {
        const Gate& of = m_gates[gate];
        const Literal absorbing = of.conjunction ? logic::kFalse : logic::kTrue;
        inputs.clear();
        for (const CircuitInput& input : of.inputs) {
            const Literal one = input.isGate ? literal[input.gate] : input.literal;
            if (one == absorbing) return absorbing;
            if (one != ~absorbing) inputs.push_back(one);
        }
        if (inputs.empty()) return ~absorbing;
        if (inputs.size() == 1) return inputs.front();
        ++made;
        return formula.addGate(of.conjunction ? logic::Op::conjunction : logic::Op::disjunction,
                               inputs);
    };
    // All gates of a loop begin as false; each round lets what is alive spread by one step.
    const auto close = [&](const std::vector<std::uint32_t>& component) {
        const auto& own = m_gates[component.front()].inputs;
        const bool isLoop = component.size() > 1 ||
                            std::any_of(own.begin(), own.end(), [&](const CircuitInput& input) {
                                return input.isGate && input.gate == component.front();
                            });
        for (std::size_t round = 0; round < (isLoop ? component.size() : 1); ++round)
            for (const std::uint32_t gate : component) {
                if (made > mostGates) return false;
                literal[gate] = value(gate);
            }
        return true;
    };
    const auto enter = [&](std::uint32_t gate) {
        number[gate] = lowest[gate] = count++;
        open[gate] = true;
        loop.push_back(gate);
        stack.push_back({gate, 0});
    };

    for (const std::uint32_t start : gates) {
        if (number[start] == kUnseen) enter(start);
        while (!stack.empty()) {
            Frame& frame = stack.back();
            const auto& of = m_gates[frame.gate].inputs;
            if (frame.next < of.size()) {
                const CircuitInput& input = of[frame.next++];
                if (!input.isGate) continue;
                if (number[input.gate] == kUnseen)
                    enter(input.gate);
                else if (open[input.gate])
                    lowest[frame.gate] = std::min(lowest[frame.gate], number[input.gate]);
                continue;
            }
            const std::uint32_t gate = frame.gate;
            stack.pop_back();
            if (!stack.empty())
                lowest[stack.back().gate] = std::min(lowest[stack.back().gate], lowest[gate]);
            if (lowest[gate] != number[gate]) continue;
            std::vector<std::uint32_t> component;
            do {
                component.push_back(loop.back());
                loop.pop_back();
            } while (component.back() != gate);
            for (const std::uint32_t one : component)
                open[one] = false;
            if (!close(component)) return {};
        }
    }
    return literal;
}

} // namespace cutwater::reliability
