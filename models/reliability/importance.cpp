// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/importance.h"

#include <algorithm>

namespace cutwater::reliability {

namespace {

using logic::Literal;
using logic::Op;

// All sets, or nothing where there are more than wished for.
std::optional<std::vector<logic::CutSet>> listAll(const logic::Solution& solution,
                                                  std::span<const double> q, std::size_t maxSets) {
    const logic::Count count = solution.setCount();
    if (!solution.coherent() || count.saturated || count.value > maxSets) return {};
    std::vector<logic::CutSet> sets;
    auto listing = solution.list(q, {});
    while (auto set = listing.next())
        sets.push_back(std::move(*set));
    if (listing.outOfMemory()) return {};
    return sets;
}

// Exact probability that at least one of the sets with the event occurs; nothing where stopped.
std::optional<double> unionWith(std::uint32_t variable, const std::vector<logic::CutSet>& sets,
                                std::span<const double> q, const logic::Limits& limits) {
    logic::Formula formula;
    std::vector<Literal> events;
    for (std::size_t v = 0; v < q.size(); ++v)
        events.push_back(formula.addVariable());
    std::vector<Literal> products;
    std::vector<Literal> product;
    for (const auto& set : sets) {
        if (std::none_of(set.literals.begin(), set.literals.end(),
                         [variable](const auto& literal) { return literal.variable == variable; }))
            continue;
        product.clear();
        for (const auto& literal : set.literals)
            product.push_back(events[literal.variable]);
        products.push_back(formula.addGate(Op::conjunction, product));
    }
    const auto outcome = logic::solve(formula, formula.addGate(Op::disjunction, products), limits);
    if (!outcome.solution) return {};
    return outcome.solution->probability(q).occurs;
}

} // namespace

std::optional<std::vector<EventImportance>>
importance(const logic::Solution& solution, std::span<const double> q, const ImportanceWish& wish) {
    const double top = solution.probability(q).occurs;
    const auto sets = listAll(solution, q, wish.maxSets);
    std::vector<double> changed(q.begin(), q.end());
    std::vector<EventImportance> result;
    for (const std::uint32_t variable : solution.relevantVariables()) {
        if (wish.limits.stop.stop_requested()) return {};
        changed[variable] = 1;
        const double with = solution.probability(changed).occurs;
        changed[variable] = 0;
        const double without = solution.probability(changed).occurs;
        changed[variable] = q[variable];

        EventImportance entry;
        entry.variable = variable;
        entry.birnbaum = with - without;
        entry.criticality = entry.birnbaum * q[variable] / top;
        entry.riskAchievement = with / top;
        entry.riskReduction = top / without;
        if (sets) {
            const auto chance = unionWith(variable, *sets, q, wish.limits);
            if (!chance) return {};
            entry.fussellVesely = *chance / top;
        }
        result.push_back(entry);
    }
    return result;
}

} // namespace cutwater::reliability
