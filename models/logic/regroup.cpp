// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/regroup.h"

#include <algorithm>
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
    explicit Rewriter(const Formula& formula) : m_old(formula), m_map(formula.nodeCount(), kFalse) {
        result.reserve(formula);
    }

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

namespace {

// Finds the inputs that others absorb, as (gate, place) in ascending order.
class Absorber {
public:
    explicit Absorber(const Formula& formula)
        : m_formula(formula), m_direct(2 * std::size_t{formula.nodeCount()}, 0), m_below(m_direct) {
    }

    struct Place {
        std::uint32_t gate, input;
    };
    std::vector<Place> run(Budget& budget) {
        std::vector<Place> found;
        for (std::uint32_t node = 1; node < m_formula.nodeCount(); ++node) {
            budget.step();
            if (!isAndOr(m_formula.op(node)) || !hasAndOrBelow(node)) continue;
            const auto inputs = m_formula.inputs(node);
            for (const Literal input : inputs) {
                m_direct[input.code()] = node;
                eachBelow(node, input, true,
                          [&](Literal literal) { m_below[literal.code()] = node; });
            }
            for (std::uint32_t i = 0; i < inputs.size(); ++i) {
                bool absorbed = m_below[inputs[i].code()] == node;
                eachBelow(node, inputs[i], false,
                          [&](Literal literal) { absorbed |= m_direct[literal.code()] == node; });
                if (absorbed) found.push_back({node, i});
            }
        }
        return found;
    }

private:
    bool hasAndOrBelow(std::uint32_t node) const {
        const auto inputs = m_formula.inputs(node);
        return std::any_of(inputs.begin(), inputs.end(),
                           [&](Literal input) { return isAndOr(m_formula.op(input.node())); });
    }
    // The inputs of `input` where it is of the same kind as the gate, or of the other. not (a and
    // b) is (not a or not b): a negated gate counts as its opposite with negated inputs.
    template <typename See>
    void eachBelow(std::uint32_t gate, Literal input, bool sameKind, See see) const {
        const Op op = m_formula.op(input.node());
        if (!isAndOr(op) || ((op == m_formula.op(gate)) != input.negated()) != sameKind) return;
        for (const Literal literal : m_formula.inputs(input.node()))
            see(input.negated() ? ~literal : literal);
    }

    const Formula& m_formula;
    // Marks on literals, good for one gate: it is a direct input; it stands in a gate of the same
    // kind that is.
    std::vector<std::uint32_t> m_direct, m_below;
};

} // namespace

std::optional<Regrouped> absorb(const Formula& formula, Literal top, Budget& budget) {
    const Charge charge(budget, formula.bytes() + 20 * std::size_t{formula.nodeCount()});
    const std::vector<Absorber::Place> absorbed = Absorber(formula).run(budget);
    if (absorbed.empty()) return {};
    Rewriter rewriter(formula);
    std::vector<Literal> inputs;
    auto next = absorbed.begin();
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node) {
        budget.step();
        if (formula.op(node) == Op::variable) {
            rewriter.copyVariable(node);
            continue;
        }
        inputs.clear();
        const auto old = formula.inputs(node);
        for (std::uint32_t i = 0; i < old.size(); ++i) {
            if (next != absorbed.end() && next->gate == node && next->input == i)
                ++next;
            else
                inputs.push_back(rewriter.moved(old[i]));
        }
        rewriter.putGate(node, inputs);
    }
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

namespace {

class Grouper {
public:
    Grouper(const Formula& formula, const std::vector<bool>& isModule, Budget& budget)
        : m_formula(formula), m_isModule(isModule), m_budget(budget),
          m_charge(budget, 2 * formula.bytes() + 16 * std::size_t{formula.nodeCount()}),
          m_rewriter(formula), m_components(formula, isModule), m_users(formula.nodeCount(), 0) {}

    std::optional<Grouped> run(Literal top) {
        for (std::uint32_t node = 1; node < m_formula.nodeCount(); ++node)
            for (const Literal input : m_formula.inputs(node))
                ++m_users[input.node()];
        for (std::uint32_t node = 1; node < m_formula.nodeCount(); ++node) {
            m_budget.step();
            if (m_formula.op(node) == Op::variable)
                m_rewriter.copyVariable(node);
            else
                rewrite(node);
            m_nowModule.push_back(m_isModule[node]);
        }
        if (!m_changed) return {};
        return Grouped{std::move(m_rewriter.result), m_rewriter.moved(top), std::move(m_nowModule)};
    }

private:
    void rewrite(std::uint32_t node) {
        const auto old = m_formula.inputs(node);
        m_parts.clear();
        if (isAndOr(m_formula.op(node)) && m_isModule[node] && old.size() > 2)
            split(node);
        else
            m_parts.emplace_back(old.begin(), old.end());
        if (m_parts.size() == 1) {
            m_rewriter.putGate(node, isAndOr(m_formula.op(node)) ? withOwnGrouped(node, m_parts[0])
                                                                 : moved(m_parts[0]));
            return;
        }
        std::vector<Literal> inputs;
        for (const std::vector<Literal>& part : m_parts) {
            inputs.push_back(part.size() == 1 ? m_rewriter.moved(part[0])
                                              : newModule(node, withOwnGrouped(node, part)));
        }
        m_rewriter.putGate(node, inputs);
    }

    // The inputs of a module that hang together, each such part in the place of its first.
    void split(std::uint32_t node) {
        const auto old = m_formula.inputs(node);
        const std::vector<std::uint32_t>& component = m_components.of(node, m_budget);
        m_partOf.assign(old.size(), 0);
        for (std::uint32_t i = 0; i < old.size(); ++i) {
            if (component[i] == i) {
                m_partOf[i] = static_cast<std::uint32_t>(m_parts.size());
                m_parts.emplace_back();
            }
            m_parts[m_partOf[component[i]]].push_back(old[i]);
        }
    }

    std::vector<Literal> moved(const std::vector<Literal>& inputs) const {
        std::vector<Literal> result;
        for (const Literal input : inputs)
            result.push_back(m_rewriter.moved(input));
        return result;
    }

    // Shared inputs first, then one module of all that nobody else uses.
    std::vector<Literal> withOwnGrouped(std::uint32_t node, const std::vector<Literal>& inputs) {
        std::vector<Literal> own, shared;
        for (const Literal input : inputs)
            (isOwn(input) ? own : shared).push_back(m_rewriter.moved(input));
        if (own.size() < 2 || shared.empty()) return moved(inputs);
        shared.push_back(newModule(node, own));
        return shared;
    }
    bool isOwn(Literal input) const {
        const std::uint32_t node = input.node();
        return m_users[node] == 1 && (m_formula.op(node) == Op::variable || m_isModule[node]);
    }
    Literal newModule(std::uint32_t node, const std::vector<Literal>& inputs) {
        m_changed = true;
        m_nowModule.push_back(true);
        return m_rewriter.result.addGate(m_formula.op(node), inputs);
    }

    const Formula& m_formula;
    const std::vector<bool>& m_isModule;
    Budget& m_budget;
    Charge m_charge;
    Rewriter m_rewriter;
    Components m_components;
    std::vector<std::uint32_t> m_users;
    std::vector<bool> m_nowModule{false}; // by node of the result
    std::vector<std::vector<Literal>> m_parts;
    std::vector<std::uint32_t> m_partOf;
    bool m_changed = false;
};

} // namespace

std::optional<Grouped> groupModules(const Formula& formula, Literal top,
                                    const std::vector<bool>& isModule, Budget& budget) {
    return Grouper(formula, isModule, budget).run(top);
}

} // namespace cutwater::logic
