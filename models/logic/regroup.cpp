// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/regroup.h"

#include <vector>

namespace cutwater::logic {

namespace {

bool isAndOr(Op op) {
    return op == Op::conjunction || op == Op::disjunction;
}

// A copy of a formula in which each gate may get other inputs; `map` takes literals from the old
// one to the new one.
class Rewriter {
public:
    explicit Rewriter(const Formula& formula)
        : m_old(formula), m_map(formula.nodeCount(), kFalse) {}

    Formula result;

    Literal moved(Literal old) const {
        const Literal now = m_map[old.node()];
        return old.negated() ? ~now : now;
    }
    void copyVariable(std::uint32_t node) { m_map[node] = result.addVariable(); }
    void putGate(std::uint32_t node, std::span<const Literal> inputs) {
        m_map[node] = result.addGate(m_old.op(node), inputs, m_old.k(node));
    }

private:
    const Formula& m_old;
    std::vector<Literal> m_map;
};

} // namespace

std::optional<Regrouped> absorb(const Formula& formula, Literal top, Budget& budget) {
    Rewriter rewriter(formula);
    bool changed = false;
    // Marks on literals, good for one gate: it is a direct input; it stands in a gate of the same
    // kind that is.
    std::vector<std::uint32_t> direct(2 * std::size_t{formula.nodeCount()}, 0), below(direct);
    std::vector<Literal> inputs;
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node) {
        budget.step();
        if (formula.op(node) == Op::variable) {
            rewriter.copyVariable(node);
            continue;
        }
        const auto old = formula.inputs(node);
        inputs.clear();
        if (isAndOr(formula.op(node))) {
            for (const Literal input : old)
                direct[input.code()] = node;
            // not (a and b) is (not a or not b): a negated gate counts as its opposite with negated
            // inputs.
            const auto eachBelow = [&](Literal input, bool sameKind, auto see) {
                const Op op = formula.op(input.node());
                if (!isAndOr(op) || ((op == formula.op(node)) != input.negated()) != sameKind)
                    return;
                for (const Literal literal : formula.inputs(input.node()))
                    see(input.negated() ? ~literal : literal);
            };
            for (const Literal input : old)
                eachBelow(input, true, [&](Literal literal) { below[literal.code()] = node; });
            for (const Literal input : old) {
                bool absorbed = below[input.code()] == node;
                eachBelow(input, false,
                          [&](Literal literal) { absorbed |= direct[literal.code()] == node; });
                if (absorbed)
                    changed = true;
                else
                    inputs.push_back(rewriter.moved(input));
            }
        } else {
            for (const Literal input : old)
                inputs.push_back(rewriter.moved(input));
        }
        rewriter.putGate(node, inputs);
    }
    if (!changed) return {};
    return Regrouped{std::move(rewriter.result), rewriter.moved(top)};
}

namespace {

// Which inputs of a module's root hang together: two do where some node of the module is below
// both.
class Components {
public:
    Components(const Formula& formula, const std::vector<bool>& isModule)
        : m_formula(formula), m_isModule(isModule), m_owner(formula.nodeCount(), kNobody) {}

    // component[i] is the first input that input i hangs together with.
    const std::vector<std::uint32_t>& of(std::uint32_t module, Budget& budget) {
        const auto inputs = m_formula.inputs(module);
        m_parent.resize(inputs.size());
        for (std::uint32_t i = 0; i < inputs.size(); ++i)
            m_parent[i] = i;
        // A node of the interior belongs to this module alone, so marks of other modules are never
        // met.
        for (std::uint32_t i = 0; i < inputs.size(); ++i) {
            m_stack.assign(1, inputs[i].node());
            while (!m_stack.empty()) {
                budget.step();
                const std::uint32_t node = m_stack.back();
                m_stack.pop_back();
                if (m_owner[node] != kNobody) {
                    join(m_owner[node], i);
                    continue;
                }
                m_owner[node] = i;
                if (m_isModule[node]) continue; // a leaf of this module
                for (const Literal input : m_formula.inputs(node))
                    m_stack.push_back(input.node());
            }
        }
        for (std::uint32_t i = 0; i < inputs.size(); ++i)
            m_parent[i] = first(i);
        return m_parent;
    }

private:
    static constexpr std::uint32_t kNobody = 0xffffffff;

    std::uint32_t first(std::uint32_t i) {
        while (m_parent[i] != i)
            i = m_parent[i] = m_parent[m_parent[i]];
        return i;
    }
    void join(std::uint32_t a, std::uint32_t b) {
        a = first(a);
        b = first(b);
        m_parent[a < b ? b : a] = a < b ? a : b;
    }

    const Formula& m_formula;
    const std::vector<bool>& m_isModule;
    std::vector<std::uint32_t> m_owner; // of a node: the input that came to it first
    std::vector<std::uint32_t> m_parent, m_stack;
};

} // namespace

Regrouped splitModules(const Formula& formula, Literal top, const std::vector<bool>& isModule,
                       Budget& budget) {
    Rewriter rewriter(formula);
    Components components(formula, isModule);
    std::vector<std::vector<Literal>> parts; // by the component's first input
    std::vector<Literal> inputs;
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node) {
        budget.step();
        if (formula.op(node) == Op::variable) {
            rewriter.copyVariable(node);
            continue;
        }
        const auto old = formula.inputs(node);
        inputs.clear();
        if (!isModule[node] || !isAndOr(formula.op(node)) || old.size() < 3) {
            for (const Literal input : old)
                inputs.push_back(rewriter.moved(input));
            rewriter.putGate(node, inputs);
            continue;
        }
        const std::vector<std::uint32_t>& component = components.of(node, budget);
        parts.assign(old.size(), {});
        for (std::uint32_t i = 0; i < old.size(); ++i)
            parts[component[i]].push_back(rewriter.moved(old[i]));
        for (const std::vector<Literal>& part : parts) {
            if (part.empty()) continue;
            const bool whole = part.size() == 1 || part.size() == old.size();
            if (whole)
                inputs.insert(inputs.end(), part.begin(), part.end());
            else
                inputs.push_back(rewriter.result.addGate(formula.op(node), part));
        }
        rewriter.putGate(node, inputs);
    }
    return {std::move(rewriter.result), rewriter.moved(top)};
}

Regrouped groupOwnInputs(const Formula& formula, Literal top, const std::vector<bool>& isModule,
                         Budget& budget) {
    std::vector<std::uint32_t> users(formula.nodeCount(), 0);
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node)
        for (const Literal input : formula.inputs(node))
            ++users[input.node()];
    const auto isOwn = [&](Literal input) {
        const std::uint32_t node = input.node();
        return users[node] == 1 && (formula.op(node) == Op::variable || isModule[node]);
    };

    Rewriter rewriter(formula);
    std::vector<Literal> own, shared;
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node) {
        budget.step();
        if (formula.op(node) == Op::variable) {
            rewriter.copyVariable(node);
            continue;
        }
        own.clear();
        shared.clear();
        for (const Literal input : formula.inputs(node))
            (isOwn(input) ? own : shared).push_back(rewriter.moved(input));
        if (isAndOr(formula.op(node)) && own.size() > 1 && !shared.empty()) {
            shared.push_back(rewriter.result.addGate(formula.op(node), own));
            rewriter.putGate(node, shared);
            continue;
        }
        own.clear();
        for (const Literal input : formula.inputs(node))
            own.push_back(rewriter.moved(input));
        rewriter.putGate(node, own);
    }
    return {std::move(rewriter.result), rewriter.moved(top)};
}

} // namespace cutwater::logic
