// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/trim.h"

#include <vector>

namespace cutwater::logic {

namespace {

constexpr std::uint32_t kSmall = 256; // nodes

class Trimmer {
public:
    Trimmer(const Formula& formula, Literal top, Budget& budget)
        : m_formula(formula), m_top(top), m_budget(budget), m_uses(formula.nodeCount(), 0),
          m_shared(formula.nodeCount(), kFalse), m_known(formula.variableCount(), kUnknown) {}

    Trimmed run() {
        countUses();
        for (std::uint32_t i = 0; i < m_formula.variableCount(); ++i) {
            m_budget.step();
            m_new.addVariable();
        }
        for (std::uint32_t node = 1; node < m_top.node(); ++node)
            if (m_uses[node] > 1 && isGate(node)) m_shared[node] = below(node);
        const Literal top = isGate(m_top.node()) ? below(m_top.node()) : moved(positive(m_top));
        return {std::move(m_new), m_top.negated() ? ~top : top};
    }

private:
    static constexpr std::uint8_t kUnknown = 2; // otherwise 0 or 1

    struct Frame {
        std::uint32_t node, next; // the next input to look at
        std::size_t firstInput, firstSet;
    };

    bool isGate(std::uint32_t node) const { return m_formula.op(node) > Op::variable; }
    static Literal positive(Literal literal) { return {literal.node(), false}; }
    bool isAndOr(std::uint32_t node) const {
        return m_formula.op(node) == Op::conjunction || m_formula.op(node) == Op::disjunction;
    }
    // The value of an input that decides an `and` or an `or`.
    Literal deciding(std::uint32_t node) const {
        return m_formula.op(node) == Op::conjunction ? kFalse : kTrue;
    }

    void countUses() {
        m_uses[m_top.node()] = 1;
        for (std::uint32_t node = m_top.node() + 1; node-- > 1;) {
            m_budget.step();
            if (m_uses[node] == 0) continue;
            for (const Literal input : m_formula.inputs(node))
                ++m_uses[input.node()];
        }
    }

    // An event or a constant, as it is known here.
    Literal moved(Literal old) const {
        if (old.node() == 0) return old;
        const std::uint32_t variable = m_formula.variable(old.node());
        if (m_known[variable] != kUnknown)
            return (m_known[variable] == 1) != old.negated() ? kTrue : kFalse;
        return {variable + 1, old.negated()};
    }

    // What the gate is, knowing nothing from above.
    Literal below(std::uint32_t root) {
        Literal result = enter(root);
        while (!m_frames.empty()) {
            m_budget.step();
            Frame& frame = m_frames.back();
            const auto inputs = m_formula.inputs(frame.node);
            if (frame.next == inputs.size()) {
                result = leave(madeOf(frame));
                continue;
            }
            const Literal input = inputs[frame.next++];
            if (isGate(input.node())) {
                if (m_uses[input.node()] == 1) {
                    const std::size_t depth = m_frames.size();
                    result = enter(input.node());
                    if (m_frames.size() > depth) continue;
                    result = take(input.negated() ? ~result : result);
                } else {
                    const Literal shared = m_shared[input.node()];
                    result = take(input.negated() ? ~shared : shared);
                }
            } else if (!isAndOr(frame.node)) {
                result = take(moved(input));
            }
        }
        return result;
    }

    // An input of the gate on top of the stack is known to be this. The gate's own value where that
    // decides it, which is then handed on.
    Literal take(Literal input) {
        const Frame& frame = m_frames.back();
        if (isAndOr(frame.node) && input.node() == 0) {
            if (input == deciding(frame.node)) return leave(input);
            return input;
        }
        m_inputs.push_back(input);
        return input;
    }

    // Takes the gate down and hands its value to those that wait for it.
    Literal leave(Literal result) {
        for (;;) {
            forget();
            if (m_frames.empty()) return result;
            const Frame& frame = m_frames.back();
            if (m_formula.inputs(frame.node)[frame.next - 1].negated()) result = ~result;
            if (!isAndOr(frame.node) || result.node() != 0) {
                m_inputs.push_back(result);
                return result;
            }
            if (result != deciding(frame.node)) return result;
        }
    }

    void forget() {
        const Frame frame = m_frames.back();
        m_frames.pop_back();
        m_inputs.resize(frame.firstInput);
        for (; m_set.size() > frame.firstSet; m_set.pop_back())
            m_known[m_set.back()] = kUnknown;
    }

    // Puts the gate on the stack. Its events come first: what they are is known to all below. Where
    // they decide it, it does not stay there, and its value comes back.
    Literal enter(std::uint32_t node) {
        m_frames.push_back({node, 0, m_inputs.size(), m_set.size()});
        if (!isAndOr(node)) return kFalse;
        for (const Literal input : m_formula.inputs(node)) {
            if (isGate(input.node())) continue;
            const Literal here = moved(input);
            if (here == deciding(node)) {
                forget();
                return here;
            }
            if (here.node() == 0) continue;
            m_inputs.push_back(here);
            const std::uint32_t variable = here.node() - 1;
            const bool inputIs = m_formula.op(node) == Op::conjunction;
            m_known[variable] = inputIs != here.negated() ? 1 : 0;
            m_set.push_back(variable);
        }
        return kFalse;
    }

    Literal madeOf(const Frame& frame) {
        const std::span<const Literal> inputs(m_inputs.data() + frame.firstInput,
                                              m_inputs.size() - frame.firstInput);
        if (isAndOr(frame.node)) {
            if (inputs.empty()) return ~deciding(frame.node);
            if (inputs.size() == 1) return inputs.front();
        }
        const Op op = m_formula.op(frame.node);
        return m_new.addGate(op, inputs, op == Op::atLeast ? m_formula.k(frame.node) : 0);
    }

    const Formula& m_formula;
    const Literal m_top;
    Budget& m_budget;
    std::vector<std::uint32_t> m_uses; // of what the top reaches
    std::vector<Literal> m_shared;     // gates with several users, in the new formula
    std::vector<std::uint8_t> m_known; // by variable
    std::vector<std::uint32_t> m_set;  // variables that are known, in the order of the frames
    std::vector<Literal> m_inputs;     // of all gates on the stack, in the new formula
    std::vector<Frame> m_frames;
    Formula m_new;
};

} // namespace

Trimmed trim(const Formula& formula, Literal top, Budget& budget) {
    const Charge charge(budget, formula.nodeCount() * 2 * sizeof(std::uint32_t) +
                                    formula.variableCount() * (1 + sizeof(std::uint32_t)) +
                                    formula.bytes());
    return Trimmer(formula, top, budget).run();
}

std::optional<Trimmed> trimWhereItPays(const Formula& formula, Literal top, Budget& budget) {
    const std::uint32_t variables = formula.variableCount();
    const std::uint32_t gates = formula.nodeCount() - 1 - variables;
    if (formula.nodeCount() < kSmall || gates < variables + variables / 2) return {};
    Trimmed result = trim(formula, top, budget);
    if (result.formula.inputCount() == formula.inputCount()) return {};
    return result;
}

} // namespace cutwater::logic
