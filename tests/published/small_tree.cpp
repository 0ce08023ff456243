// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/published/small_tree.h"

#include "tests/oracle/solved.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace cutwater::published {

using logic::Literal;
using logic::Op;

Literal SmallTree::event(const std::string& name, double q) {
    m_names.push_back(name);
    m_q.push_back(q);
    return m_formula.addVariable();
}

Literal SmallTree::all(std::initializer_list<Literal> inputs) {
    return m_formula.addGate(Op::conjunction, std::vector<Literal>(inputs));
}

Literal SmallTree::any(std::initializer_list<Literal> inputs) {
    return m_formula.addGate(Op::disjunction, std::vector<Literal>(inputs));
}

Literal SmallTree::atLeast(int k, const std::vector<Literal>& inputs) {
    return m_formula.addGate(Op::atLeast, inputs, k);
}

Literal SmallTree::exactlyOne(std::initializer_list<Literal> inputs) {
    return m_formula.addGate(Op::exactlyOne, std::vector<Literal>(inputs));
}

void SmallTree::solve(Literal top) {
    m_top = top;
    m_solution = oracle::solved(m_formula, top);
    if (!m_solution) throw std::runtime_error("the engine stopped at a tree of a few events");
}

NamedSets SmallTree::named(const logic::Solution& solution) const {
    NamedSets result;
    for (const auto& set : oracle::drain(solution.list(m_q, {}))) {
        std::set<std::string> names;
        for (const auto& literal : set.literals)
            names.insert((literal.negated ? "~" : "") + m_names[literal.variable]);
        EXPECT_TRUE(result.insert(names).second);
    }
    return result;
}

NamedSets SmallTree::pathSets() const {
    const auto dual = logic::dual(m_formula, m_top);
    const auto solution = oracle::solved(dual.formula, dual.top);
    return solution ? named(*solution) : NamedSets{};
}

double SmallTree::chanceOf(const std::set<std::string>& wanted) const {
    for (const auto& set : oracle::drain(m_solution->list(m_q, {}))) {
        std::set<std::string> names;
        for (const auto& literal : set.literals)
            names.insert((literal.negated ? "~" : "") + m_names[literal.variable]);
        if (names == wanted) return set.probability;
    }
    return -1;
}

reliability::EventImportance SmallTree::importance(const std::string& event) const {
    const auto all = reliability::importance(*m_solution, m_q);
    if (all)
        for (const auto& entry : *all)
            if (m_names[entry.variable] == event) return entry;
    ADD_FAILURE() << "no importance of " << event;
    return {};
}

void expectImportance(const SmallTree& tree, const ImportanceRow& row, double lastDigit) {
    SCOPED_TRACE(row.event);
    const auto got = tree.importance(row.event);
    const auto expect = [lastDigit](double value, double wanted) {
        EXPECT_NEAR(value, wanted, std::max(1e-9 * std::fabs(wanted), lastDigit));
    };
    expect(got.birnbaum, row.birnbaum);
    expect(got.criticality, row.criticality);
    ASSERT_TRUE(got.fussellVesely);
    expect(*got.fussellVesely, row.fussellVesely);
    expect(got.riskAchievement, row.riskAchievement);
    expect(got.riskReduction, row.riskReduction);
}

} // namespace cutwater::published
