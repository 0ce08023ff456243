// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/builder.h"

#include "models/logic/extract.h"
#include "models/logic/sifting.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

bool isGateInput(std::uint32_t input) {
    return !GateView::isConstant(input) && GateView::isGate(input);
}

} // namespace

Builder::Builder(const Program& program, const std::vector<std::uint32_t>& order, Bdd& bdd,
                 Budget& budget, const BuilderWish& wish)
    : m_program(program), m_bdd(bdd), m_budget(budget),
      m_charge(budget, order.size() * 2 * sizeof(std::uint32_t) + program.code.size() * 2),
      m_wish(wish), m_gate(program, 0), m_leafAt(order), m_levelOf(order.size()),
      m_collectAt(std::max(m_wish.collectAbove, 2 * bdd.size())), m_siftAt(wish.siftAbove),
      m_before(bdd.size()) {
    for (std::uint32_t level = 0; level < order.size(); ++level)
        m_levelOf[order[level]] = level;
    countUses();
}

void Builder::countUses() {
    std::uint32_t gates = 0;
    for (GateView gate(m_program, 0); !gate.atEnd(); gate.advance()) {
        m_uses.resize(++gates, 0);
        for (std::uint32_t i = 0; i < gate.count(); ++i)
            if (isGateInput(gate.input(i))) ++m_uses[GateView::index(gate.input(i))];
    }
    m_uses.back() = 1;
    m_gates.reserve(gates);
}

std::uint64_t Builder::made() const {
    return m_madeBefore + m_bdd.size() - std::min(m_before, m_bdd.size());
}

bool Builder::advance(std::uint64_t mostMade) {
    const auto setCeiling = [&] {
        const std::uint64_t room = mostMade - std::min(mostMade, m_madeBefore);
        m_bdd.setCeiling(room > ~std::uint64_t{0} / 2 ? ~std::size_t{0} : m_before + room);
    };
    setCeiling();
    try {
        for (; !m_gate.atEnd(); m_gate.advance()) {
            computeGate(m_gate);
            for (std::uint32_t i = 0; i < m_gate.count(); ++i)
                letGo(m_gate.input(i));
            if (m_bdd.size() <= m_collectAt) continue;
            m_madeBefore = made();
            collect();
            m_before = m_bdd.size();
            setCeiling();
        }
    } catch (const CeilingReached&) {
        m_bdd.forgetTasks();
        m_bdd.setCeiling(~std::size_t{0});
        return false;
    } catch (...) {
        m_bdd.forgetTasks();
        m_bdd.setCeiling(~std::size_t{0});
        throw;
    }
    m_bdd.setCeiling(~std::size_t{0});
    return true;
}

Built Builder::take() {
    Forest forest =
        extract(m_bdd, {m_gates.back()}, static_cast<std::uint32_t>(m_leafAt.size()), m_budget);
    return {{std::move(forest.nodes), forest.roots.front()}, std::move(m_leafAt), made()};
}

// --- one gate --------------------------------------------------------------------------------

void Builder::computeGate(const GateView& gate) {
    if (m_fold.inputs.empty()) {
        m_inputs.clear(); // another array, since even a variable may not fit any more
        for (std::uint32_t i = 0; i < gate.count(); ++i)
            m_inputs.push_back(edgeOf(gate.input(i)));
        // Constants first, then the deepest: what is on top of the order comes last.
        std::stable_sort(m_inputs.begin(), m_inputs.end(),
                         [&](Edge a, Edge b) { return m_bdd.level(a) > m_bdd.level(b); });
        m_fold.inputs.swap(m_inputs);
        m_fold.next = 0;
        m_fold.result = gate.op() == Op::conjunction ? kAlways : kNever;
    }
    const std::size_t steps = m_steps;
    try {
        switch (gate.op()) {
        case Op::conjunction: m_gates.push_back(fold(true)); break;
        case Op::disjunction: m_gates.push_back(fold(false)); break;
        case Op::atLeast: m_gates.push_back(atLeast(gate.k())); break;
        default: m_gates.push_back(exactlyOne());
        }
    } catch (...) {
        if (gate.op() != Op::conjunction && gate.op() != Op::disjunction)
            m_steps = steps; // begun again
        throw;
    }
    m_fold.inputs.clear();
}

// Goes on where it was stopped.
Edge Builder::fold(bool conjunction) {
    for (; m_fold.next < m_fold.inputs.size(); ++m_fold.next) {
        const Edge input = m_fold.inputs[m_fold.next];
        m_fold.result = conjunction ? m_bdd.conjunction(input, m_fold.result)
                                    : m_bdd.disjunction(input, m_fold.result);
        ++m_steps;
    }
    return m_fold.result;
}

// reached[j]: at least j of the inputs so far.
Edge Builder::atLeast(std::uint32_t k) {
    std::vector<Edge> reached(k + 1, kNever);
    reached[0] = kAlways;
    std::uint32_t done = 0;
    const auto count = static_cast<std::uint32_t>(m_fold.inputs.size());
    for (const Edge input : m_fold.inputs) {
        ++done;
        // Fewer than k - (inputs to come) reached so far is too few to matter.
        const std::uint32_t toCome = count - done;
        const std::uint32_t least = k > toCome ? k - toCome : 1;
        for (std::uint32_t j = std::min(k, done); j >= least; --j)
            reached[j] = m_bdd.ifThenElse(input, reached[j - 1], reached[j]);
        ++m_steps;
    }
    return reached[k];
}

Edge Builder::exactlyOne() {
    Edge none = kAlways, one = kNever;
    for (const Edge input : m_fold.inputs) {
        one = m_bdd.ifThenElse(input, none, one);
        none = m_bdd.conjunction(input ^ 1u, none);
        ++m_steps;
    }
    return one;
}

Edge Builder::edgeOf(std::uint32_t input) {
    if (GateView::isConstant(input)) return input == Program::kTrueInput ? kAlways : kNever;
    const std::uint32_t index = GateView::index(input);
    const Edge edge = GateView::isGate(input) ? m_gates[index] : m_bdd.variable(m_levelOf[index]);
    return edge ^ (GateView::isNegated(input) ? 1u : 0u);
}

void Builder::letGo(std::uint32_t input) {
    if (isGateInput(input)) --m_uses[GateView::index(input)];
}

// Keeps the gates that are still needed, in a better order where that pays, and empties the table
// of the rest.
void Builder::collect() {
    std::vector<std::size_t> live;
    std::vector<Edge> roots;
    for (std::size_t gate = 0; gate < m_gates.size(); ++gate) {
        if (m_uses[gate] == 0) continue;
        live.push_back(gate);
        roots.push_back(m_gates[gate]);
    }
    Forest forest = extract(m_bdd, roots, static_cast<std::uint32_t>(m_leafAt.size()), m_budget);
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

std::optional<Built> build(const Program& program, const std::vector<std::uint32_t>& order,
                           Bdd& bdd, Budget& budget, const BuilderWish& wish,
                           std::uint64_t mostMade) {
    Builder builder(program, order, bdd, budget, wish);
    if (!builder.advance(mostMade)) return {};
    return builder.take();
}

} // namespace cutwater::logic
