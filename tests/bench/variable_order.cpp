// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/reference_buddy.h"

namespace bench {

namespace {

class Walk {
public:
    explicit Walk(const Instance& instance)
        : m_formula(instance.formula), m_top(instance.top.node()), m_seen(m_formula.nodeCount()) {}

    std::vector<std::uint32_t> depthFirst(bool eventsFirst) {
        struct Step {
            std::uint32_t node;
            std::size_t next;
        };
        std::vector<Step> stack;
        const auto enter = [&](std::uint32_t node) {
            if (!isNewGate(node)) return;
            if (eventsFirst)
                for (const Literal input : m_formula.inputs(node))
                    if (m_formula.op(input.node()) == Op::variable) isNewGate(input.node());
            stack.push_back({node, 0});
        };
        enter(m_top);
        while (!stack.empty()) {
            Step& step = stack.back();
            const auto inputs = m_formula.inputs(step.node);
            if (step.next == inputs.size())
                stack.pop_back();
            else
                enter(inputs[step.next++].node());
        }
        return std::move(m_events);
    }

    std::vector<std::uint32_t> byLevel() {
        std::vector<std::uint32_t> queue;
        if (isNewGate(m_top)) queue.push_back(m_top);
        for (std::size_t next = 0; next < queue.size(); ++next)
            for (const Literal input : m_formula.inputs(queue[next]))
                if (isNewGate(input.node())) queue.push_back(input.node());
        return std::move(m_events);
    }

private:
    // Marks the node; an event that is met for the first time takes its place.
    bool isNewGate(std::uint32_t node) {
        if (node == 0 || m_seen[node]) return false;
        m_seen[node] = true;
        if (m_formula.op(node) != Op::variable) return true;
        m_events.push_back(m_formula.variable(node));
        return false;
    }

    const Formula& m_formula;
    std::uint32_t m_top;
    std::vector<bool> m_seen;
    std::vector<std::uint32_t> m_events;
};

} // namespace

std::vector<std::uint32_t> variableOrder(const Instance& instance, Order order) {
    Walk walk(instance);
    return order == Order::byLevel ? walk.byLevel() : walk.depthFirst(order == Order::eventsFirst);
}

} // namespace bench
