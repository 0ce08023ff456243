// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/sweep.h"

#include "models/logic/solution_data.h"

namespace cutwater::logic {

// All parts one after another in one array, so that a sample is one walk through it.
ProbabilitySweep::ProbabilitySweep(const Solution& solution) {
    const SolutionData& data = SolutionData::of(solution);
    m_steps.emplace_back();
    if (data.constant) {
        m_top = *data.constant ? 1 : 0;
    } else {
        std::vector<std::uint32_t> rootOf(data.parts.size());
        for (std::size_t part = 0; part < data.parts.size(); ++part) {
            const auto leaves = data.leavesOf(data.parts[part]);
            const Diagram& diagram = data.diagramOf(data.parts[part]);
            // Node i of this part is step base + i; node 0, the constant, is step 0.
            const auto base = static_cast<std::uint32_t>(m_steps.size() - 1);
            const auto moved = [base](Edge edge) {
                return edge >> 1 == 0 ? edge : edge + (base << 1);
            };
            for (std::size_t i = 1; i < diagram.nodes.size(); ++i) {
                const BddNode& node = diagram.nodes[i];
                const Leaf& leaf = leaves[node.level];
                Step step;
                step.ownIsStep = leaf.isPart;
                step.own = leaf.isPart ? rootOf[leaf.index] >> 1 : leaf.index;
                step.ownComplemented = leaf.isPart && (rootOf[leaf.index] & 1u) != 0;
                step.high = moved(node.high);
                step.low = moved(node.low);
                m_steps.push_back(step);
            }
            rootOf[part] = moved(diagram.root);
        }
        m_top = rootOf.back();
    }
    m_values.resize(m_steps.size());
    m_values.front().occursNot.fill(1.0);
}

void ProbabilitySweep::operator()(std::span<const double> q, std::span<double, kSamples> top) {
    for (std::size_t i = 1; i < m_steps.size(); ++i) {
        const Step& step = m_steps[i];
        Values own;
        if (step.ownIsStep) {
            const Values& part = m_values[step.own];
            own.occurs = step.ownComplemented ? part.occursNot : part.occurs;
            own.occursNot = step.ownComplemented ? part.occurs : part.occursNot;
        } else {
            for (std::size_t s = 0; s < kSamples; ++s) {
                own.occurs[s] = q[step.own * kSamples + s];
                own.occursNot[s] = 1.0 - own.occurs[s];
            }
        }
        const Values& high = m_values[step.high >> 1];
        const Values& low = m_values[step.low >> 1];
        const auto& highIs = step.high & 1u ? high.occursNot : high.occurs;
        const auto& highNot = step.high & 1u ? high.occurs : high.occursNot;
        const auto& lowIs = step.low & 1u ? low.occursNot : low.occurs;
        const auto& lowNot = step.low & 1u ? low.occurs : low.occursNot;
        Values& value = m_values[i];
        for (std::size_t s = 0; s < kSamples; ++s) {
            value.occurs[s] = own.occurs[s] * highIs[s] + own.occursNot[s] * lowIs[s];
            value.occursNot[s] = own.occurs[s] * highNot[s] + own.occursNot[s] * lowNot[s];
        }
    }
    const Values& value = m_values[m_top >> 1];
    const auto& result = m_top & 1u ? value.occursNot : value.occurs;
    for (std::size_t s = 0; s < kSamples; ++s)
        top[s] = result[s];
}

} // namespace cutwater::logic
