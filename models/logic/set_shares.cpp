// SPDX-License-Identifier: GPL-3.0-or-later
// What each event contributes to the sum over all sets, in one sweep up and one down.
#include "models/logic/solution.h"

#include "models/logic/solution_data.h"

#include <array>

namespace cutwater::logic {

namespace {

// Values of the set diagrams' nodes: the sum over the sets below of the product of their literals.
class SetSums {
public:
    SetSums(const SolutionData& data, std::span<const double> q)
        : m_data(data), m_q(q), m_ofPart(data.parts.size(), {0.0, 0.0}) {}

    void sweep(std::size_t part, bool negated) {
        const Families& families = m_data.setsOf(part, negated);
        m_value.assign(families.nodes.size(), 0.0);
        m_value[kEmptySet] = 1.0;
        for (std::size_t i = 2; i < families.nodes.size(); ++i) {
            const ZddNode& node = families.nodes[i];
            m_value[i] = weight(part, node.element) * m_value[node.with] + m_value[node.without];
        }
        m_ofPart[part][negated] = m_value[families.root];
    }
    double weight(std::size_t part, std::uint32_t element) const {
        const Leaf& leaf = m_data.leavesOf(m_data.parts[part])[element >> 1];
        if (leaf.isPart) return m_ofPart[leaf.index][element & 1u];
        return element & 1u ? 1.0 - m_q[leaf.index] : m_q[leaf.index];
    }
    double at(Family family) const { return m_value[family]; }

private:
    const SolutionData& m_data;
    std::span<const double> m_q;
    std::vector<std::array<double, 2>> m_ofPart;
    std::vector<double> m_value;
};

} // namespace

std::vector<double> Solution::setSumsWith(std::span<const double> q) const {
    const SolutionData& data = *m_data;
    std::vector<double> result(data.variableCount, 0.0);
    if (data.constant) return result;
    SetSums sums(data, q);
    forEachNeeded(
        data, [&](std::size_t part, bool negated, const Families&) { sums.sweep(part, negated); });
    // What the sum over all sets changes with the sum of each part: handed down from the top.
    std::vector<std::array<double, 2>> ofPart(data.parts.size(), {0.0, 0.0});
    ofPart.back()[false] = 1.0;
    std::vector<double> above;
    for (std::size_t part = data.parts.size(); part-- > 0;)
        for (const bool negated : {false, true}) {
            if (!data.parts[part].needed[negated]) continue;
            sums.sweep(part, negated);
            const Families& families = data.setsOf(part, negated);
            const auto leaves = data.leavesOf(data.parts[part]);
            above.assign(families.nodes.size(), 0.0);
            above[families.root] = ofPart[part][negated];
            for (std::size_t i = families.nodes.size(); i-- > 2;) {
                if (above[i] == 0) continue;
                const ZddNode& node = families.nodes[i];
                const Leaf& leaf = leaves[node.element >> 1];
                const double weight = sums.weight(part, node.element);
                if (leaf.isPart)
                    ofPart[leaf.index][node.element & 1u] += above[i] * sums.at(node.with);
                else
                    result[leaf.index] += above[i] * weight * sums.at(node.with);
                above[node.with] += above[i] * weight;
                above[node.without] += above[i];
            }
        }
    return result;
}

} // namespace cutwater::logic
