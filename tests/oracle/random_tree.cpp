// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/random_tree.h"

#include <algorithm>
#include <cmath>

namespace cutwater::oracle {

using logic::Formula;
using logic::Literal;
using logic::Op;

std::uint64_t Random::bits() {
    std::uint64_t z = (m_state += 0x9e3779b97f4a7c15ull);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ull;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebull;
    return z ^ (z >> 31);
}

std::uint32_t Random::below(std::uint32_t bound) {
    return static_cast<std::uint32_t>((bits() >> 32) * bound >> 32);
}

double Random::unit() {
    return static_cast<double>(bits() >> 11) * 0x1p-53;
}

namespace {

class Maker {
public:
    Maker(std::uint64_t seed, const TreeWish& wish) : m_random(seed), m_wish(wish) {
        m_tree.seed = seed;
    }

    RandomTree make() {
        for (std::uint32_t i = 0; i < m_wish.events; ++i) {
            remember(m_tree.formula.addVariable());
            m_depth.resize(m_tree.formula.nodeCount(), 0);
            m_tree.q.push_back(std::exp(std::log(1e-6) + m_random.unit() * std::log(0.6 / 1e-6)));
        }
        for (std::uint32_t gates = 0; gates < m_wish.gates || m_unused.size() > 1; ++gates)
            m_tree.top = gate(gates < m_wish.gates ? m_wish.gates - gates : 1);
        if (m_wish.negations && m_random.chance(0.2)) m_tree.top = ~m_tree.top;
        return std::move(m_tree);
    }

private:
    void remember(Literal literal) {
        m_all.push_back(literal);
        m_unused.push_back(literal);
    }

    // Something that exists already, mostly from a depth near the given one: a single event beside
    // a large gate absorbs nearly all of it.
    Literal usedOne(std::uint32_t depth) {
        const auto pick = [this] {
            return m_all[m_random.below(static_cast<std::uint32_t>(m_all.size()))];
        };
        const auto distance = [this, depth](Literal literal) {
            const std::uint32_t own = m_depth[literal.node()];
            return own > depth ? own - depth : depth - own;
        };
        Literal best = pick();
        if (m_random.chance(0.15)) return best;
        for (int i = 0; i < 8; ++i) {
            const Literal other = pick();
            if (distance(other) < distance(best)) best = other;
        }
        return best;
    }

    // `freshChance`: that it is something that is not used yet.
    Literal input(double freshChance, std::uint32_t depth) {
        if (m_wish.oddities && m_random.chance(0.02))
            return m_random.chance(0.5) ? logic::kTrue : logic::kFalse;
        Literal literal;
        if (!m_unused.empty() && m_random.chance(freshChance)) {
            const auto at = m_random.below(static_cast<std::uint32_t>(m_unused.size()));
            literal = m_unused[at];
            m_unused[at] = m_unused.back();
            m_unused.pop_back();
        } else {
            literal = usedOne(depth);
        }
        return m_wish.negations && m_random.chance(0.12) ? ~literal : literal;
    }

    // `left`: gates that are still to be made; what is not used yet is shared out among them.
    Literal gate(std::uint32_t left) {
        const std::uint32_t count = 2 + m_random.below(m_wish.maxInputs - 1);
        const double freshChance = (static_cast<double>(m_unused.size()) - 1 + left) /
                                   (left * (1 + m_wish.maxInputs / 2.0));
        std::vector<Literal> inputs;
        std::uint32_t depth = 0;
        for (std::uint32_t i = 0; i < count; ++i) {
            if (m_wish.oddities && i > 0 && m_random.chance(0.03))
                inputs.push_back(inputs[m_random.below(i)]);
            else
                inputs.push_back(input(freshChance, depth));
            depth = std::max(depth, m_depth[inputs.back().node()]);
        }
        Op op = Op::conjunction;
        std::int64_t k = 0;
        const double draw = m_random.unit();
        if (draw < 0.4) {
            op = Op::disjunction;
        } else if (draw < 0.6) {
            op = Op::atLeast;
            k = m_wish.oddities && m_random.chance(0.05)
                    ? std::int64_t{m_random.below(count + 4)} - 1
                    : 1 + m_random.below(count);
        } else if (draw < 0.7 && m_wish.negations) {
            op = Op::exactlyOne;
        }
        const Literal made = m_tree.formula.addGate(op, inputs, k);
        m_depth.resize(m_tree.formula.nodeCount(), depth + 1);
        remember(made);
        return made;
    }

    Random m_random;
    TreeWish m_wish;
    RandomTree m_tree;
    std::vector<Literal> m_all, m_unused;
    std::vector<std::uint32_t> m_depth; // by node
};

std::string name(const Formula& formula, Literal literal) {
    if (literal.node() == 0) return literal.negated() ? "true" : "false";
    const bool event = formula.op(literal.node()) == Op::variable;
    return (literal.negated() ? "~" : "") +
           (event ? "x" + std::to_string(formula.variable(literal.node()))
                  : "g" + std::to_string(literal.node()));
}

} // namespace

RandomTree makeTree(std::uint64_t seed, const TreeWish& wish) {
    return Maker(seed, wish).make();
}

std::string describe(const Formula& formula, Literal top) {
    std::string text = "top " + name(formula, top) + "\n";
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node) {
        if (formula.op(node) == Op::variable) continue;
        text += "  g" + std::to_string(node) + " = ";
        switch (formula.op(node)) {
        case Op::conjunction: text += "all"; break;
        case Op::disjunction: text += "any"; break;
        case Op::exactlyOne: text += "exactly one"; break;
        default: text += "at least " + std::to_string(formula.k(node)); break;
        }
        text += " of";
        for (Literal literal : formula.inputs(node))
            text += " " + name(formula, literal);
        text += "\n";
    }
    return text;
}

Literal copyInto(Formula& target, const Formula& source, Literal top,
                 std::span<const Literal> events) {
    std::vector<Literal> copies(source.nodeCount());
    const auto copied = [&](Literal literal) {
        return literal.negated() ? ~copies[literal.node()] : copies[literal.node()];
    };
    for (std::uint32_t node = 0; node < source.nodeCount(); ++node) {
        if (source.op(node) == Op::constant) {
            copies[node] = logic::kFalse;
        } else if (source.op(node) == Op::variable) {
            copies[node] = events[source.variable(node)];
        } else {
            std::vector<Literal> inputs;
            for (Literal literal : source.inputs(node))
                inputs.push_back(copied(literal));
            copies[node] =
                target.addGate(source.op(node), inputs,
                               source.op(node) == Op::atLeast ? std::int64_t{source.k(node)} : 0);
        }
    }
    return copied(top);
}

std::string describe(const RandomTree& tree) {
    return "seed " + std::to_string(tree.seed) + ", " + describe(tree.formula, tree.top);
}

} // namespace cutwater::oracle
