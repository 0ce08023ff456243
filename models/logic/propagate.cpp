// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/propagate.h"

#include <algorithm>
#include <vector>

namespace cutwater::logic {

namespace {

// The gates through which every way from the top to a node goes, as a tree. A new leaf costs one
// step, a common ancestor log n, by jumps of growing length (E. W. Myers, "An applicative
// random-access stack", 1983; from memory).
class DominatorTree {
public:
    explicit DominatorTree(std::size_t count) : m_nodes(count) {}

    void setTop(std::uint32_t top) { m_nodes[top] = {top, top, 0, true}; }
    bool has(std::uint32_t node) const { return m_nodes[node].reached; }
    std::uint32_t parent(std::uint32_t node) const { return m_nodes[node].parent; }

    // Another gate that uses the node.
    void addUser(std::uint32_t node, std::uint32_t user) {
        m_nodes[node].parent = m_nodes[node].reached ? common(m_nodes[node].parent, user) : user;
        m_nodes[node].reached = true;
    }
    // All users of the node are known.
    void settle(std::uint32_t node) {
        Node& n = m_nodes[node];
        const Node& p = m_nodes[n.parent];
        const Node& far = m_nodes[p.jump];
        n.depth = p.depth + 1;
        n.jump = p.depth - far.depth == far.depth - m_nodes[far.jump].depth ? far.jump : n.parent;
    }

private:
    struct Node {
        std::uint32_t parent = 0, jump = 0, depth = 0;
        bool reached = false;
    };

    std::uint32_t common(std::uint32_t a, std::uint32_t b) const {
        if (m_nodes[a].depth < m_nodes[b].depth) std::swap(a, b);
        while (m_nodes[a].depth > m_nodes[b].depth)
            a = m_nodes[m_nodes[a].jump].depth >= m_nodes[b].depth ? m_nodes[a].jump
                                                                   : m_nodes[a].parent;
        while (a != b) {
            const bool jump = m_nodes[a].jump != m_nodes[b].jump;
            a = jump ? m_nodes[a].jump : m_nodes[a].parent;
            b = jump ? m_nodes[b].jump : m_nodes[b].parent;
        }
        return a;
    }

    std::vector<Node> m_nodes;
};

enum class Known : std::uint8_t { nothing, isFalse, isTrue };

class Propagation {
public:
    Propagation(const Formula& formula, Literal top, Budget& budget)
        : m_formula(formula), m_top(top.node()), m_budget(budget),
          m_charge(budget, formula.nodeCount() * (16 + 2 * sizeof(std::uint32_t) + sizeof(Known)) +
                               formula.inputCount() * sizeof(std::uint32_t)),
          m_tree(formula.nodeCount()), m_known(formula.nodeCount(), Known::nothing) {}

    std::optional<Formula> run() {
        if (m_formula.inputs(m_top).empty()) return {};
        buildTree();
        walk();
        if (m_replaced.empty()) return {};
        return rewritten();
    }

private:
    struct Replaced {
        std::uint32_t gate, input;
        bool value;
    };

    void buildTree() {
        m_tree.setTop(m_top);
        m_firstChild.assign(m_formula.nodeCount(), 0);
        m_nextSibling.assign(m_formula.nodeCount(), 0);
        for (std::uint32_t node = m_top + 1; node-- > 1;) { // users before what they use
            m_budget.step();
            if (!m_tree.has(node) || m_formula.inputs(node).empty()) continue;
            if (node != m_top) {
                m_tree.settle(node);
                m_nextSibling[node] = m_firstChild[m_tree.parent(node)];
                m_firstChild[m_tree.parent(node)] = node;
            }
            for (const Literal input : m_formula.inputs(node))
                m_tree.addUser(input.node(), node);
        }
    }

    // Down the tree of dominators with what is known; undone on the way back.
    void walk() {
        struct Step {
            std::uint32_t nextChild;
            std::size_t undo;
        };
        std::vector<Step> stack;
        std::vector<std::uint32_t> learned;
        const auto enter = [&](std::uint32_t gate) {
            m_budget.step();
            use(gate);
            stack.push_back({m_firstChild[gate], learned.size()});
            learn(gate, learned);
        };
        enter(m_top);
        while (!stack.empty()) {
            Step& step = stack.back();
            if (step.nextChild != 0) {
                const std::uint32_t child = step.nextChild;
                step.nextChild = m_nextSibling[child];
                enter(child);
                continue;
            }
            for (; learned.size() > step.undo; learned.pop_back())
                m_known[learned.back()] = Known::nothing;
            stack.pop_back();
        }
    }

    void use(std::uint32_t gate) {
        const auto inputs = m_formula.inputs(gate);
        for (std::uint32_t i = 0; i < inputs.size(); ++i) {
            const Known known = m_known[inputs[i].node()];
            if (known != Known::nothing)
                m_replaced.push_back({gate, i, (known == Known::isTrue) != inputs[i].negated()});
        }
    }

    void learn(std::uint32_t gate, std::vector<std::uint32_t>& learned) {
        const Op op = m_formula.op(gate);
        if (op != Op::conjunction && op != Op::disjunction) return;
        for (const Literal input : m_formula.inputs(gate)) {
            if (m_formula.op(input.node()) != Op::variable ||
                m_known[input.node()] != Known::nothing)
                continue;
            m_known[input.node()] =
                (op == Op::conjunction) != input.negated() ? Known::isTrue : Known::isFalse;
            learned.push_back(input.node());
        }
    }

    Formula rewritten() {
        std::sort(m_replaced.begin(), m_replaced.end(),
                  [](const Replaced& a, const Replaced& b) { return a.gate < b.gate; });
        const Charge charge(m_budget, m_formula.bytes());
        Formula result;
        result.reserve(m_formula);
        std::vector<Literal> inputs;
        auto next = m_replaced.begin();
        for (std::uint32_t node = 1; node < m_formula.nodeCount(); ++node) {
            m_budget.step();
            if (m_formula.op(node) == Op::variable) {
                result.addVariable();
                continue;
            }
            inputs.assign(m_formula.inputs(node).begin(), m_formula.inputs(node).end());
            for (; next != m_replaced.end() && next->gate == node; ++next)
                inputs[next->input] = next->value ? kTrue : kFalse;
            result.addGate(m_formula.op(node), inputs, m_formula.k(node));
        }
        return result;
    }

    const Formula& m_formula;
    std::uint32_t m_top;
    Budget& m_budget;
    Charge m_charge;
    DominatorTree m_tree;
    std::vector<std::uint32_t> m_firstChild, m_nextSibling; // 0: none
    std::vector<Known> m_known;                             // of variables
    std::vector<Replaced> m_replaced;
};

} // namespace

std::optional<Formula> propagateEvents(const Formula& formula, Literal top, Budget& budget) {
    return Propagation(formula, top, budget).run();
}

} // namespace cutwater::logic
