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
