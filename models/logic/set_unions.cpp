// SPDX-License-Identifier: GPL-3.0-or-later
// A family of minimal sets is the function "at least one of its sets occurs":
//   up(x in s of F1, or s of F0) = x (up(F1) or up(F0))  or  not x up(F0).
// The sets with the event v, v left out, come from the same rule above v: up(F1) at v itself, never
// below. Times the chance of v it is the union of the sets with v. Modules share no events, so the
// union of the top's sets with v is the product of such factors from v's module to the top.
#include "models/logic/set_unions.h"

#include "models/logic/bdd.h"
#include "models/logic/solution_data.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace cutwater::logic {

namespace {

constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

// The functions of one part's family; levels are the family's elements.
class Unions {
public:
    Unions(const Families& families, std::span<const ProbabilityPair> ofElement, Budget& budget,
           std::uint64_t nodes)
        : m_families(families), m_ofElement(ofElement), m_bdd(budget) {
        m_bdd.setCeiling(std::min<std::uint64_t>(nodes, 0x7fffffff));
    }

    // False where the ceiling was reached.
    bool build() {
        m_up.assign(m_families.nodes.size(), kNever);
        m_up[kEmptySet] = kAlways;
        try {
            for (std::size_t i = 2; i < m_families.nodes.size(); ++i)
                m_up[i] = joined(m_families.nodes[i], m_up);
        } catch (const CeilingReached&) {
            m_bdd.forgetTasks();
            return false;
        }
        return true;
    }

    ProbabilityPair whole() { return chance(m_up[m_families.root]); }

    // That a set with the element occurs, the element itself left out; not a number where it does
    // not fit.
    double without(std::uint32_t element) {
        for (const bool again : {false, true}) {
            try {
                return tryWithout(element);
            } catch (const CeilingReached&) {
                m_bdd.forgetTasks();
                if (again || !restart()) break;
            }
        }
        return kUnknown;
    }

private:
    Edge joined(const ZddNode& node, const std::vector<Edge>& below) {
        const Edge low = below[node.without];
        return m_bdd.make(node.element, m_bdd.disjunction(below[node.with], low), low);
    }

    double tryWithout(std::uint32_t element) {
        m_with.assign(m_families.nodes.size(), kNever);
        for (std::size_t i = 2; i < m_families.nodes.size(); ++i) {
            const ZddNode& node = m_families.nodes[i];
            if (node.element == element)
                m_with[i] = m_up[node.with];
            else if (node.element < element && (m_with[node.with] | m_with[node.without]) != kNever)
                m_with[i] = joined(node, m_with);
        }
        return chance(m_with[m_families.root]).occurs;
    }

    // Forgets what earlier elements have left behind.
    bool restart() {
        if (m_made == 0) return false; // there was nothing else in the table
        m_made = 0;
        m_bdd.clear();
        m_values.clear();
        return build();
    }

    ProbabilityPair chance(Edge edge) {
        ++m_made;
        if (m_values.empty()) m_values.push_back({0, 1});
        for (std::size_t i = m_values.size(); i < m_bdd.size(); ++i) {
            const BddNode& node = m_bdd.node(static_cast<std::uint32_t>(i));
            const ProbabilityPair own = m_ofElement[node.level], high = at(node.high),
                                  low = at(node.low);
            m_values.push_back({own.occurs * high.occurs + own.occursNot * low.occurs,
                                own.occurs * high.occursNot + own.occursNot * low.occursNot});
        }
        return at(edge);
    }
    ProbabilityPair at(Edge edge) const {
        const ProbabilityPair& value = m_values[edge >> 1];
        return edge & 1u ? ProbabilityPair{value.occursNot, value.occurs} : value;
    }

    const Families& m_families;
    std::span<const ProbabilityPair> m_ofElement;
    Bdd m_bdd;
    std::size_t m_made = 0; // answers since the table was cleared
    std::vector<Edge> m_up, m_with;
    std::vector<ProbabilityPair> m_values;
};

class UnionsOfTop {
public:
    UnionsOfTop(const SolutionData& data, std::span<const double> q, Budget& budget,
                std::uint64_t nodes)
        : m_data(data), m_q(q), m_budget(budget), m_nodes(nodes),
          m_ofPart(data.parts.size(), ProbabilityPair{kUnknown, kUnknown}),
          m_factors(data.parts.size()) {}

    std::vector<double> run() {
        forEachNeeded(m_data, [&](std::size_t part, bool, const Families& families) {
            sweep(part, families);
        });
        return handDown();
    }

private:
    // Of every element of the family: the chance that a set with it occurs, itself left out.
    struct Factor {
        Leaf leaf;
        double value;
    };

    void sweep(std::size_t part, const Families& families) {
        const auto leaves = m_data.leavesOf(m_data.parts[part]);
        std::vector<ProbabilityPair> ofElement(leaves.size() * 2);
        for (const std::uint32_t element : families.elements) {
            const Leaf& leaf = leaves[element >> 1];
            // What stands negated in a coherent tree's sets can only be a part, and its own sets
            // are those of its negation: m_ofPart is of that.
            ofElement[element] = leaf.isPart
                                     ? m_ofPart[leaf.index]
                                     : ProbabilityPair{m_q[leaf.index], 1.0 - m_q[leaf.index]};
        }
        Unions unions(families, ofElement, m_budget, m_nodes);
        const bool fits = unions.build();
        if (fits) m_ofPart[part] = unions.whole();
        for (const std::uint32_t element : families.elements) {
            m_budget.look();
            m_factors[part].push_back(
                {leaves[element >> 1], fits ? unions.without(element) : kUnknown});
        }
    }

    std::vector<double> handDown() const {
        std::vector<double> result(m_data.variableCount, 0.0), above(m_data.parts.size(), 0.0);
        above.back() = 1.0;
        for (std::size_t part = m_data.parts.size(); part-- > 0;)
            for (const Factor& factor : m_factors[part]) {
                const double value = above[part] * factor.value;
                if (factor.leaf.isPart)
                    above[factor.leaf.index] = value;
                else
                    result[factor.leaf.index] = value * m_q[factor.leaf.index];
            }
        return result;
    }

    const SolutionData& m_data;
    std::span<const double> m_q;
    Budget& m_budget;
    std::uint64_t m_nodes;
    std::vector<ProbabilityPair> m_ofPart;
    std::vector<std::vector<Factor>> m_factors;
};

} // namespace

std::optional<std::vector<double>> setUnionsWith(const Solution& solution,
                                                 std::span<const double> q, const Limits& limits,
                                                 std::uint64_t nodes) {
    const SolutionData& data = SolutionData::of(solution);
    if (data.constant) return std::vector<double>(data.variableCount, 0.0);
    if (!data.coherent) return std::vector<double>(data.variableCount, kUnknown);
    try {
        Account account(limits);
        Budget budget(account);
        budget.look();
        return UnionsOfTop(data, q, budget, nodes).run();
    } catch (const Stopped& stopped) {
        if (stopped.why == Stop::cancelled) return {};
        return std::vector<double>(data.variableCount, kUnknown); // out of memory
    }
}

} // namespace cutwater::logic
