// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/set_union.h"

namespace cutwater::reliability {

namespace {

using logic::Literal;
using logic::Op;

// The minimal cut sets, and for each variable those that it is in.
struct Sets {
    std::vector<logic::CutSet> all;
    std::vector<std::vector<std::uint32_t>> with;
};

// Nothing where there are more than wished for.
std::optional<Sets> listAll(const logic::Solution& solution, std::span<const double> q,
                            const ImportanceWish& wish) {
    const logic::Count count = solution.setCount();
    if (!solution.coherent() || solution.constant() || count.saturated ||
        count.value > wish.maxSets)
        return {};
    Sets sets;
    sets.with.resize(q.size());
    std::size_t literals = 0; // of all the unions: a set stands in as many as it has events
    auto listing = solution.list(q, {});
    while (auto set = listing.next()) {
        literals += set->literals.size() * set->literals.size();
        if (literals > wish.maxLiterals) return {};
        for (const auto& literal : set->literals)
            sets.with[literal.variable].push_back(static_cast<std::uint32_t>(sets.all.size()));
        sets.all.push_back(std::move(*set));
    }
    if (listing.outOfMemory()) return {};
    return sets;
}

// Exact probability that at least one of the sets with the event occurs, made of the events that
// are in them only. Nothing where stopped.
class Union {
public:
    Union(std::span<const double> q, const Sets& sets)
        : m_q(q), m_sets(sets), m_seen(q.size(), 0) {}

    std::optional<double> with(std::uint32_t variable, logic::Limits limits) {
        const auto& numbers = m_sets.with[variable];
        if (numbers.size() == 1) return m_sets.all[numbers.front()].probability;
        logic::Formula formula;
        std::vector<Literal> events, products, product;
        std::vector<double> chances;
        ++m_round;
        m_position.resize(m_q.size());
        for (const std::uint32_t number : numbers) {
            product.clear();
            for (const auto& literal : m_sets.all[number].literals) {
                if (m_seen[literal.variable] != m_round) {
                    m_seen[literal.variable] = m_round;
                    m_position[literal.variable] = static_cast<std::uint32_t>(events.size());
                    events.push_back(formula.addVariable());
                    chances.push_back(m_q[literal.variable]);
                }
                product.push_back(events[m_position[literal.variable]]);
            }
            products.push_back(formula.addGate(Op::conjunction, product));
        }
        limits.sets = false;
        limits.progress = {};
        const auto outcome =
            logic::solve(formula, formula.addGate(Op::disjunction, products), limits);
        if (!outcome.solution) return {};
        return outcome.solution->probability(chances).occurs;
    }

private:
    std::span<const double> m_q;
    const Sets& m_sets;
    std::vector<std::uint32_t> m_seen, m_position;
    std::uint32_t m_round = 0;
};

} // namespace

bool addFussellVesely(const logic::Solution& solution, std::span<const double> q, double top,
                      const ImportanceWish& wish, std::vector<EventImportance>& entries) {
    const auto sets = listAll(solution, q, wish);
    if (!sets) return true;
    Union unionOf(q, *sets);
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const auto chance = unionOf.with(entries[i].variable, wish.limits);
        if (!chance) return false;
        entries[i].fussellVesely = *chance / top;
        if (wish.progress)
            wish.progress(static_cast<double>(i + 1) / static_cast<double>(entries.size()));
    }
    return true;
}

} // namespace cutwater::reliability
