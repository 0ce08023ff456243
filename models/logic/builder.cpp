// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/builder.h"

#include "models/logic/extract.h"
#include "models/logic/sifting.h"

#include <algorithm>
#include <numeric>

namespace cutwater::logic {

namespace {

class Builder {
public:
    Builder(const Program& program, const std::vector<std::uint32_t>& order, Bdd& bdd,
            Budget& budget, const BuilderWish& wish)
        : m_program(program), m_bdd(bdd), m_budget(budget),
          m_charge(budget, order.size() * 2 * sizeof(std::uint32_t) + program.code.size() * 2),
          m_wish(wish), m_leafAt(order), m_levelOf(order.size()),
          m_collectAt(std::max(m_wish.collectAbove, 2 * bdd.size())), m_siftAt(wish.siftAbove) {
        for (std::uint32_t level = 0; level < order.size(); ++level)
            m_levelOf[order[level]] = level;
    }

    Built run() {
        countUses();
        m_bdd.setCeiling(ceiling(m_bdd.size()));
        std::vector<Edge> inputs;
        std::uint32_t before = m_bdd.size();
        for (GateView gate(m_program, 0); !gate.atEnd(); gate.advance()) {
            inputs.clear();
            for (std::uint32_t i = 0; i < gate.count(); ++i)
                inputs.push_back(edgeOf(gate.input(i)));
            // Constants first, then the deepest: what is on top of the order comes last.
            std::stable_sort(inputs.begin(), inputs.end(),
                             [&](Edge a, Edge b) { return m_bdd.level(a) > m_bdd.level(b); });
            m_gates.push_back(compute(gate, inputs));
            for (std::uint32_t i = 0; i < gate.count(); ++i)
                letGo(gate.input(i));
            if (m_bdd.size() > m_collectAt) {
                m_made += m_bdd.size() - std::min(before, m_bdd.size());
                collect();
                before = m_bdd.size();
                m_bdd.setCeiling(ceiling(before));
            }
        }
        m_made += m_bdd.size() - std::min(before, m_bdd.size());
        Forest forest =
            extract(m_bdd, {m_gates.back()}, static_cast<std::uint32_t>(m_leafAt.size()), m_budget);
        return {{std::move(forest.nodes), forest.roots.front()}, std::move(m_leafAt), m_made};
    }

    std::size_t stepsDone() const { return m_steps; }

private:
    // How large the table may become before more has been made than is allowed.
    std::size_t ceiling(std::size_t size) const {
        if (m_wish.maxMade == ~std::uint64_t{0}) return ~std::size_t{0};
        return size + (m_wish.maxMade > m_made ? m_wish.maxMade - m_made : 0);
    }
    void countUses() {
        std::uint32_t gates = 0;
        for (GateView gate(m_program, 0); !gate.atEnd(); gate.advance()) {
            ++gates;
            m_uses.resize(gates, 0);
            for (std::uint32_t i = 0; i < gate.count(); ++i)
                if (isGateInput(gate.input(i))) ++m_uses[GateView::index(gate.input(i))];
        }
        m_uses.back() = 1;
        m_gates.reserve(gates);
    }
    static bool isGateInput(std::uint32_t input) {
        return !GateView::isConstant(input) && GateView::isGate(input);
    }
    void letGo(std::uint32_t input) {
        if (isGateInput(input)) --m_uses[GateView::index(input)];
    }

    Edge edgeOf(std::uint32_t input) {
        if (GateView::isConstant(input)) return input == Program::kTrueInput ? kAlways : kNever;
        const std::uint32_t index = GateView::index(input);
        const Edge edge =
            GateView::isGate(input) ? m_gates[index] : m_bdd.variable(m_levelOf[index]);
        return edge ^ (GateView::isNegated(input) ? 1u : 0u);
    }

    Edge compute(const GateView& gate, const std::vector<Edge>& inputs) {
        switch (gate.op()) {
        case Op::conjunction: return fold(inputs, true);
        case Op::disjunction: return fold(inputs, false);
        case Op::atLeast: return atLeast(inputs, gate.k());
        default: return exactlyOne(inputs);
        }
    }

    Edge fold(const std::vector<Edge>& inputs, bool conjunction) {
        Edge result = conjunction ? kAlways : kNever;
        for (const Edge input : inputs) {
            result =
                conjunction ? m_bdd.conjunction(input, result) : m_bdd.disjunction(input, result);
            ++m_steps;
        }
        return result;
    }

    // reached[j]: at least j of the inputs so far.
    Edge atLeast(const std::vector<Edge>& inputs, std::uint32_t k) {
        std::vector<Edge> reached(k + 1, kNever);
        reached[0] = kAlways;
        std::uint32_t done = 0;
        for (const Edge input : inputs) {
            ++done;
            ++m_steps;
            // Fewer than k - (inputs to come) reached so far is too few to matter.
            const auto toCome = static_cast<std::uint32_t>(inputs.size()) - done;
            const std::uint32_t least = k > toCome ? k - toCome : 1;
            for (std::uint32_t j = std::min(k, done); j >= least; --j)
                reached[j] = m_bdd.ifThenElse(input, reached[j - 1], reached[j]);
        }
        return reached[k];
    }

    Edge exactlyOne(const std::vector<Edge>& inputs) {
        Edge none = kAlways, one = kNever;
        for (const Edge input : inputs) {
            one = m_bdd.ifThenElse(input, none, one);
            none = m_bdd.conjunction(input ^ 1u, none);
            ++m_steps;
        }
        return one;
    }

    // Keeps the gates that are still needed, in a better order where that pays, and empties the
    // table of the rest.
    void collect() {
        std::vector<std::size_t> live;
        std::vector<Edge> roots;
        for (std::size_t gate = 0; gate < m_gates.size(); ++gate) {
            if (m_uses[gate] == 0) continue;
            live.push_back(gate);
            roots.push_back(m_gates[gate]);
        }
        Forest forest =
            extract(m_bdd, roots, static_cast<std::uint32_t>(m_leafAt.size()), m_budget);
        if (forest.nodes.size() > m_siftAt) {
            const std::vector<std::uint32_t> was =
                sift(forest, {.growth = 1.1, .maxSteps = 40 * forest.nodes.size()}, m_budget);
            std::vector<std::uint32_t> leafAt(was.size());
            for (std::uint32_t level = 0; level < was.size(); ++level)
                leafAt[level] = m_leafAt[was[level]];
            m_leafAt = std::move(leafAt);
            for (std::uint32_t level = 0; level < m_leafAt.size(); ++level)
                m_levelOf[m_leafAt[level]] = level;
            m_siftAt = std::max(m_siftAt, static_cast<std::uint32_t>(3 * forest.nodes.size()));
        }
        m_bdd.clear();
        const std::vector<Edge> moved = putBack(forest, m_bdd);
        for (std::size_t i = 0; i < live.size(); ++i)
            m_gates[live[i]] = moved[i];
        m_collectAt = std::max(m_wish.collectAbove, 4 * m_bdd.size());
    }

    const Program& m_program;
    Bdd& m_bdd;
    Budget& m_budget;
    Charge m_charge; // a gate takes four words or more of the program, and eight bytes here
    const BuilderWish m_wish;
    std::vector<std::uint32_t> m_leafAt, m_levelOf;
    std::vector<Edge> m_gates;
    std::vector<std::uint32_t> m_uses;
    std::uint32_t m_collectAt, m_siftAt;
    std::uint64_t m_made = 0;
    std::size_t m_steps = 0; // inputs folded
};

} // namespace

std::optional<Built> build(const Program& program, const std::vector<std::uint32_t>& order,
                           Bdd& bdd, Budget& budget, const BuilderWish& wish,
                           std::size_t* stepsDone) {
    Builder builder(program, order, bdd, budget, wish);
    std::optional<Built> built;
    try {
        built = builder.run();
    } catch (const CeilingReached&) {
        bdd.forgetTasks();
    } catch (...) {
        bdd.forgetTasks();
        bdd.setCeiling(~std::size_t{0});
        throw;
    }
    if (stepsDone) *stepsDone = builder.stepsDone();
    bdd.setCeiling(~std::size_t{0});
    return built;
}

} // namespace cutwater::logic
