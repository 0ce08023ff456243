// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/judge.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace cutwater::logic {

void NodeProbabilities::computeAll() {
    if (m_bdd.size() > m_of.capacity()) {
        const std::size_t room = std::max<std::size_t>(m_bdd.size(), 2 * m_of.capacity());
        m_charge.set(room * sizeof(double));
        m_of.reserve(room);
    }
    while (m_of.size() < m_bdd.size()) {
        m_budget.step();
        const BddNode& node = m_bdd.node(static_cast<std::uint32_t>(m_of.size()));
        const auto at = [&](Edge edge) { return edge == kAlways ? 1.0 : m_of[edge >> 1]; };
        const double q = m_q[node.level];
        m_of.push_back(q * at(node.high) + (1 - q) * at(node.low));
    }
}

Judge::Judge(const Functions& functions, Bdd& bdd, std::span<const double> q, Budget& budget)
    : m_bdd(bdd), m_budget(budget), m_probability(bdd, q, budget),
      m_behind(functions.edges.size() * functions.edges.size(), 0) {
    const std::size_t count = functions.edges.size();
    for (std::uint32_t level = 0; level < functions.near.size(); ++level)
        for (std::uint64_t i = functions.near[level]; i != 0; i &= i - 1)
            for (std::uint64_t j = functions.near[level]; j != 0; j &= j - 1)
                m_behind[static_cast<std::size_t>(std::countr_zero(i)) * count +
                         static_cast<std::size_t>(std::countr_zero(j))] = level + 1;
}

Interval Judge::glance(std::span<const Edge> edges) {
    double largest = 0, logOfNone = 0;
    std::size_t live = 0;
    for (const Edge edge : edges) {
        if (edge == kNever) continue;
        const double p = m_probability.of(edge);
        if (p >= 1) return {1, 1};
        ++live;
        largest = std::max(largest, p);
        logOfNone += std::log1p(-p);
    }
    if (live < 2) return {largest, largest};
    return {largest, std::max(largest, -std::expm1(logOfNone))};
}

Interval Judge::look(std::span<const Edge> edges, std::uint32_t level) {
    m_live.clear();
    for (std::uint32_t i = 0; i < edges.size(); ++i)
        if (edges[i] != kNever) m_live.push_back(i);
    m_members.clear(m_live.size());
    for (std::size_t a = 0; a < m_live.size(); ++a)
        m_members.set(a, m_probability.of(edges[m_live[a]]));
    for (std::size_t a = 0; a < m_live.size(); ++a)
        for (std::size_t b = 0; b < a; ++b) {
            m_budget.step();
            const std::size_t i = m_live[a], j = m_live[b];
            if (m_behind[i * edges.size() + j] <= level)
                m_members.setIndependent(a, b);
            else
                m_members.setDependent(a, b, both(edges[i], edges[j]));
        }
    return boundUnion(m_members);
}

Interval Judge::both(Edge a, Edge b) {
    if (!m_full) {
        try {
            const double p = m_probability.of(m_bdd.conjunction(a, b));
            return {p, p};
        } catch (const CeilingReached&) {
            m_full = true;
        } catch (const Stopped& stopped) {
            if (stopped.why != Stop::memory) throw;
            m_full = true;
        }
        m_bdd.forgetTasks();
    }
    const double p = m_probability.of(a), r = m_probability.of(b);
    return {p * r, std::min(p, r)}; // increasing events
}

} // namespace cutwater::logic
