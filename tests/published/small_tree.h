// SPDX-License-Identifier: GPL-3.0-or-later
// Fault trees of books, written down with the names that the books use.
#pragma once

#include "models/logic/solution.h"
#include "models/reliability/importance.h"

#include <initializer_list>
#include <set>
#include <string>
#include <vector>

namespace cutwater::published {

using NamedSets = std::set<std::set<std::string>>; // "A", or "~A" where it must not occur

class SmallTree {
public:
    logic::Literal event(const std::string& name, double q);
    logic::Literal all(std::initializer_list<logic::Literal> inputs);
    logic::Literal any(std::initializer_list<logic::Literal> inputs);
    logic::Literal atLeast(int k, const std::vector<logic::Literal>& inputs);
    logic::Literal exactlyOne(std::initializer_list<logic::Literal> inputs);

    // Solves for the top event; the figures below are of it.
    void solve(logic::Literal top);
    const logic::Solution& solution() const { return *m_solution; }
    double exact() const { return m_solution->probability(m_q).occurs; }
    double sum() const { return m_solution->rareEventSum(m_q); }
    double bound() const { return m_solution->minCutUpperBound(m_q); }
    NamedSets sets() const { return named(*m_solution); }
    NamedSets pathSets() const;
    double chanceOf(const std::set<std::string>& set) const; // as listed; -1 where it is not
    reliability::EventImportance importance(const std::string& event) const;

private:
    NamedSets named(const logic::Solution& solution) const;

    logic::Formula m_formula;
    logic::Literal m_top;
    std::vector<std::string> m_names;
    std::vector<double> m_q;
    std::optional<logic::Solution> m_solution;
};

// A row of an importance table.
struct ImportanceRow {
    const char* event;
    double birnbaum, criticality, fussellVesely, riskAchievement, riskReduction;
};
// Within 1e-9 of it, or within `lastDigit`, half a unit of the last digit that the table prints.
void expectImportance(const SmallTree& tree, const ImportanceRow& row, double lastDigit = 0);

} // namespace cutwater::published
