// SPDX-License-Identifier: GPL-3.0-or-later
// The exact readings of the decision diagrams: probability and its derivatives.
#include "models/logic/solution.h"

#include "models/logic/solution_data.h"

#include <cmath>

namespace cutwater::logic {

namespace {

ProbabilityPair turned(const ProbabilityPair& pair) {
    return {pair.occursNot, pair.occurs};
}

// Values of one part's nodes, both halves kept so that nothing is ever found by subtraction from 1.
class PartValues {
public:
    PartValues(const SolutionData& data, std::span<const double> q)
        : m_data(data), m_q(q), m_ofPart(data.parts.size()) {}

    // Parts must be swept from the first one on.
    void sweep(std::size_t part) {
        const auto leaves = m_data.leavesOf(m_data.parts[part]);
        const Diagram& diagram = m_data.diagramOf(m_data.parts[part]);
        m_value.resize(diagram.nodes.size());
        m_value[0] = {0, 1};
        for (std::size_t i = 1; i < diagram.nodes.size(); ++i) {
            const BddNode& node = diagram.nodes[i];
            const ProbabilityPair own = ofLeaf(leaves[node.level]), high = at(node.high),
                                  low = at(node.low);
            m_value[i] = {own.occurs * high.occurs + own.occursNot * low.occurs,
                          own.occurs * high.occursNot + own.occursNot * low.occursNot};
        }
        m_ofPart[part] = at(diagram.root);
    }

    ProbabilityPair at(Edge edge) const {
        return edge & 1u ? turned(m_value[edge >> 1]) : m_value[edge >> 1];
    }
    ProbabilityPair ofLeaf(const Leaf& leaf) const {
        return leaf.isPart ? m_ofPart[leaf.index]
                           : ProbabilityPair{m_q[leaf.index], 1.0 - m_q[leaf.index]};
    }
    ProbabilityPair ofPart(std::size_t part) const { return m_ofPart[part]; }

private:
    const SolutionData& m_data;
    std::span<const double> m_q;
    std::vector<ProbabilityPair> m_ofPart, m_value;
};

// a - b of two probabilities, from whichever halves are smaller.
double difference(const ProbabilityPair& a, const ProbabilityPair& b) {
    return a.occurs + b.occurs < a.occursNot + b.occursNot ? a.occurs - b.occurs
                                                           : b.occursNot - a.occursNot;
}

} // namespace

ProbabilityPair Solution::probability(std::span<const double> q) const {
    const SolutionData& data = *m_data;
    if (data.constant) return *data.constant ? ProbabilityPair{1, 0} : ProbabilityPair{0, 1};
    PartValues values(data, q);
    for (std::size_t part = 0; part < data.parts.size(); ++part)
        values.sweep(part);
    return values.ofPart(data.topPart());
}

// How much the top changes with each node's probability goes down from the root: a node hands q of
// it to the half where the event occurs and 1 - q to the other, with the sign turned along
// complemented edges.
std::vector<double> Solution::birnbaum(std::span<const double> q) const {
    const SolutionData& data = *m_data;
    std::vector<double> result(data.variableCount, 0.0);
    if (data.constant) return result;
    PartValues values(data, q);
    for (std::size_t part = 0; part < data.parts.size(); ++part)
        values.sweep(part);

    std::vector<double> ofPart(data.parts.size(), 0.0), weight;
    ofPart.back() = 1.0;
    for (std::size_t part = data.parts.size(); part-- > 0;) {
        values.sweep(
            part); // its nodes' values; the last part's are still there, the others are made again
        const auto leaves = data.leavesOf(data.parts[part]);
        const Diagram& diagram = data.diagramOf(data.parts[part]);
        weight.assign(diagram.nodes.size(), 0.0);
        const auto give = [&](Edge edge, double amount) {
            weight[edge >> 1] += edge & 1u ? -amount : amount;
        };
        give(diagram.root, ofPart[part]);
        for (std::size_t i = diagram.nodes.size(); i-- > 1;) {
            if (weight[i] == 0) continue;
            const BddNode& node = diagram.nodes[i];
            const Leaf& leaf = leaves[node.level];
            const ProbabilityPair own = values.ofLeaf(leaf);
            (leaf.isPart ? ofPart : result)[leaf.index] +=
                weight[i] * difference(values.at(node.high), values.at(node.low));
            give(node.high, weight[i] * own.occurs);
            give(node.low, weight[i] * own.occursNot);
        }
    }
    return result;
}

} // namespace cutwater::logic
