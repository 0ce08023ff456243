// SPDX-License-Identifier: GPL-3.0-or-later
// Judge: how probable it is that one of some functions with diagrams is true.
#pragma once

#include "models/logic/functions.h"
#include "models/logic/pair_bounds.h"

#include <cstdint>
#include <span>
#include <vector>

namespace cutwater::logic {

// P of every node of a table that only grows. Precondition: no edge is complemented but the
// constant, as it is with monotone functions.
class NodeProbabilities {
public:
    NodeProbabilities(const Bdd& bdd, std::span<const double> q, Budget& budget)
        : m_bdd(bdd), m_q(q), m_budget(budget), m_charge(budget, 0), m_of(1, 0.0) {}

    double of(Edge edge) {
        if (edge == kAlways) return 1;
        if ((edge >> 1) >= m_of.size()) computeAll();
        return m_of[edge >> 1];
    }

private:
    void computeAll();

    const Bdd& m_bdd;
    std::span<const double> m_q;
    Budget& m_budget;
    Charge m_charge;
    std::vector<double> m_of;
};

// Works on what is left of the functions after some leaves are decided: one edge for each of them,
// kNever where nothing is left. q[level] is the probability of a leaf.
class Judge {
public:
    Judge(const Functions& functions, Bdd& bdd, std::span<const double> q, Budget& budget);

    // Without pairs: the largest of them, and the product bound (Esary and Proschan 1963).
    Interval glance(std::span<const Edge> edges);

    // With pairs. `level`: all before it are decided. Where the table is full, what is known
    // without their diagrams stands for the pairs.
    Interval look(std::span<const Edge> edges, std::uint32_t level);

private:
    Interval both(Edge a, Edge b);

    Bdd& m_bdd;
    Budget& m_budget;
    NodeProbabilities m_probability;
    std::vector<std::uint32_t> m_behind; // behind the last level that both functions have
    std::vector<std::uint32_t> m_live;
    Members m_members;
    bool m_full = false; // the table: no more pairs
};

} // namespace cutwater::logic
