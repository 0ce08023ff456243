// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/importance.h"

#include "models/logic/set_unions.h"

#include <algorithm>
#include <cmath>

namespace cutwater::reliability {

namespace {

// Below this share of Q the difference Q - q x birnbaum has lost four digits: ask the diagram.
constexpr double kCancelled = 1e-4;
// More events than this that all of Q depends on are not asked about one by one.
constexpr std::size_t kMostAsked = 10'000;

// Q with one event certain or impossible.
class Conditional {
public:
    Conditional(const logic::Solution& solution, std::span<const double> q)
        : m_solution(solution), m_q(q.begin(), q.end()) {}

    // `estimate` is the value by the derivative, `from` what it was subtracted from.
    double operator()(std::uint32_t variable, double state, double estimate, double from) {
        if (!(estimate < kCancelled * from) || m_asked >= kMostAsked)
            return std::max(estimate, 0.0);
        ++m_asked;
        const double own = m_q[variable];
        m_q[variable] = state;
        const double value = m_solution.probability(m_q).occurs;
        m_q[variable] = own;
        return value;
    }

private:
    const logic::Solution& m_solution;
    std::vector<double> m_q;
    std::size_t m_asked = 0;
};

} // namespace

std::optional<std::vector<EventImportance>>
importance(const logic::Solution& solution, std::span<const double> q, const ImportanceWish& wish) {
    if (wish.limits.stop.stop_requested()) return {};
    const double top = solution.probability(q).occurs;
    const std::vector<double> birnbaum = solution.birnbaum(q);
    const double sumOfSets = solution.rareEventSum(q);
    const std::vector<double> sums = solution.setSumsWith(q);
    const std::vector<std::uint32_t> relevant = solution.relevantVariables();
    double changes = 0;
    for (const std::uint32_t variable : relevant)
        changes += birnbaum[variable] * q[variable];

    Conditional conditional(solution, q);
    std::vector<EventImportance> result;
    for (const std::uint32_t variable : relevant) {
        if (wish.limits.stop.stop_requested()) return {};
        const double own = q[variable], by = birnbaum[variable];
        const double with = conditional(variable, 1, top + (1 - own) * by, top);
        const double without = conditional(variable, 0, top - own * by, top);
        EventImportance entry;
        entry.variable = variable;
        entry.birnbaum = by;
        entry.criticality = by * own / top;
        entry.setShare = sums[variable] / sumOfSets;
        entry.riskAchievement = with / top;
        entry.riskReduction = top / without;
        entry.differential = by * own / changes;
        result.push_back(entry);
    }
    if (wish.unionNodes == 0) return result;
    const auto unions = logic::setUnionsWith(solution, q, wish.limits, wish.unionNodes);
    if (!unions) return {};
    for (EventImportance& entry : result) {
        const double with = (*unions)[entry.variable];
        if (!std::isnan(with)) entry.fussellVesely = with / top;
    }
    return result;
}

std::optional<std::vector<GroupImportance>> groupImportance(const logic::Solution& solution,
                                                            std::span<const double> q,
                                                            const std::vector<EventGroup>& groups,
                                                            const std::stop_token& stop) {
    const double top = solution.probability(q).occurs;
    const std::vector<double> birnbaum = solution.birnbaum(q);
    const double sumOfSets = solution.rareEventSum(q);
    double changes = 0;
    for (std::size_t variable = 0; variable < q.size(); ++variable)
        changes += birnbaum[variable] * q[variable];
    std::vector<double> changed(q.begin(), q.end());
    std::vector<GroupImportance> result;
    const auto set = [&](const std::vector<std::uint32_t>& variables, auto value) {
        for (const std::uint32_t variable : variables)
            changed[variable] = value(variable);
    };
    const auto own = [&](std::uint32_t variable) { return q[variable]; };
    for (const EventGroup& group : groups) {
        if (stop.stop_requested()) return {};
        GroupImportance entry;
        for (const std::uint32_t variable : group.impossible)
            entry.differential += birnbaum[variable] * q[variable] / changes;
        set(group.certain, [](std::uint32_t) { return 1.0; });
        const double with = solution.probability(changed).occurs;
        set(group.certain, own);
        set(group.impossible, [](std::uint32_t) { return 0.0; });
        const double without = solution.probability(changed).occurs;
        const double setsWithout = solution.rareEventSum(changed);
        set(group.impossible, own);
        entry.birnbaum = with - without;
        entry.reduction = 1 - without / top;
        entry.setShare = 1 - setsWithout / sumOfSets;
        entry.riskAchievement = with / top;
        entry.riskReduction = top / without;
        result.push_back(entry);
    }
    return result;
}

namespace {

double frequencyOf(const std::vector<double>& birnbaum, std::span<const double> frequency) {
    double sum = 0;
    for (std::size_t i = 0; i < birnbaum.size(); ++i)
        sum += std::max(birnbaum[i], 0.0) * frequency[i];
    return sum;
}

} // namespace

std::optional<FrequencyFigures> frequencyImportance(const logic::Solution& solution,
                                                    std::span<const double> q,
                                                    std::span<const double> frequency,
                                                    const std::stop_token& stop) {
    const std::vector<double> birnbaum = solution.birnbaum(q);
    FrequencyFigures figures;
    figures.frequency = frequencyOf(birnbaum, frequency);
    if (!(figures.frequency > 0)) return {};
    std::vector<double> chance(q.begin(), q.end()), often(frequency.begin(), frequency.end());
    for (const std::uint32_t variable : solution.relevantVariables()) {
        if (stop.stop_requested()) return {};
        FrequencyImportance entry;
        entry.variable = variable;
        entry.completes =
            std::max(birnbaum[variable], 0.0) * frequency[variable] / figures.frequency;
        // An event that is always there, or never, does not come.
        often[variable] = 0;
        chance[variable] = 1;
        entry.riskAchievement = frequencyOf(solution.birnbaum(chance), often) / figures.frequency;
        chance[variable] = 0;
        entry.reduction = 1 - frequencyOf(solution.birnbaum(chance), often) / figures.frequency;
        chance[variable] = q[variable];
        often[variable] = frequency[variable];
        figures.events.push_back(entry);
    }
    return figures;
}

} // namespace cutwater::reliability
