// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/common_cause.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace cutwater::reliability {

namespace {

using project::CommonCauseKind;

double binomial(std::size_t n, std::size_t k) {
    double result = 1;
    for (std::size_t i = 1; i <= k; ++i)
        result = result * static_cast<double>(n - k + i) / static_cast<double>(i);
    return result;
}

// Greek letters rho_2 .. as they stand; the ones that are missing are 1, the one after the last
// member is 0.
double letter(std::span<const double> factors, std::size_t number, std::size_t members) {
    if (number <= 1) return 1;
    if (number > members) return 0;
    return number - 2 < factors.size() ? factors[number - 2] : 1;
}

} // namespace

std::vector<double> commonCauseShares(CommonCauseKind kind, std::span<const double> factors,
                                      std::size_t members) {
    std::vector<double> shares(members, 0.0);
    if (kind == CommonCauseKind::beta) {
        shares.front() = 1 - factors.front();
        shares.back() = factors.front();
        return shares;
    }
    if (kind == CommonCauseKind::multipleGreekLetters) {
        double product = 1;
        for (std::size_t k = 1; k <= members; ++k) {
            product *= letter(factors, k, members);
            shares[k - 1] =
                product * (1 - letter(factors, k + 1, members)) / binomial(members - 1, k - 1);
        }
        return shares;
    }
    const bool staggered = kind == CommonCauseKind::alphaStaggered;
    double total = 0;
    for (std::size_t k = 1; k <= members; ++k)
        total += (staggered ? 1.0 : static_cast<double>(k)) * factors[k - 1];
    for (std::size_t k = 1; k <= members; ++k)
        shares[k - 1] = (staggered ? 1.0 : static_cast<double>(k)) * factors[k - 1] / total /
                        binomial(members - 1, k - 1);
    return shares;
}

std::vector<double> factorsOf(const project::Index& index, const project::CommonCauseGroup& group) {
    std::vector<double> factors;
    for (const project::Quantity& factor : group.factors) {
        const project::Quantity* const quantity = index.resolved(factor);
        factors.push_back(quantity ? project::inBaseUnits(*quantity) : 0);
    }
    return factors;
}

CauseProbabilities::CauseProbabilities(const project::Project& project,
                                       const CommonCauseFormula& expanded, UnequalRule rule)
    : m_expanded(expanded), m_rule(rule) {
    constexpr std::size_t kNone = static_cast<std::size_t>(-1);
    std::vector<std::size_t> aloneOf(project.events.size(), kNone);
    std::vector<bool> needed(project.events.size(), false);
    for (std::size_t variable = 0; variable < expanded.causes.size(); ++variable) {
        const Cause& cause = expanded.causes[variable];
        if (cause.kind == CauseKind::alone) aloneOf[cause.events.front()] = variable;
        for (const std::size_t event : cause.events)
            needed[event] = true;
    }
    for (std::size_t event = 0; event < needed.size(); ++event)
        if (needed[event]) m_events.push_back(event);
    for (std::size_t variable = 0; variable < expanded.causes.size(); ++variable) {
        if (expanded.causes[variable].kind != CauseKind::common) continue;
        m_common.push_back(variable);
        m_ofMembers.emplace_back();
        for (const std::size_t event : expanded.causes[variable].events)
            if (aloneOf[event] != kNone) m_ofMembers.back().push_back(aloneOf[event]);
    }
}

// The Q that the share of a common cause is taken of. Members of equal Q keep that Q to the bit.
// `alone` is the share that members keep for themselves: no Q above smallest / (1 - alone) is
// possible, or the best member would give away more than it has.
double CauseProbabilities::together(const Cause& cause, double alone,
                                    std::span<const double> ofEvent) const {
    double smallest = ofEvent[cause.events.front()], largest = smallest;
    for (const std::size_t event : cause.events) {
        smallest = std::min(smallest, ofEvent[event]);
        largest = std::max(largest, ofEvent[event]);
    }
    if (m_rule == UnequalRule::smallest || smallest == largest || smallest <= 0) return smallest;
    double logs = 0;
    for (const std::size_t event : cause.events)
        logs += std::log(ofEvent[event]);
    const double mean = std::exp(logs / static_cast<double>(cause.events.size()));
    return alone < 1 ? std::min(mean, smallest / (1 - alone)) : mean;
}

std::size_t CauseProbabilities::fill(std::span<const std::vector<double>> shares,
                                     std::span<const double> ofEvent, std::span<double> q) const {
    for (std::size_t variable = 0; variable < m_expanded.causes.size(); ++variable)
        q[variable] = ofEvent[m_expanded.causes[variable].events.front()];
    for (std::size_t i = 0; i < m_common.size(); ++i) {
        const Cause& cause = m_expanded.causes[m_common[i]];
        const std::vector<double>& of = shares[cause.group];
        const double common = of[cause.events.size() - 1] * together(cause, of.front(), ofEvent);
        q[m_common[i]] = common;
        for (const std::size_t alone : m_ofMembers[i])
            q[alone] -= common;
    }
    std::size_t overdrawn = 0;
    for (std::size_t variable = 0; variable < m_expanded.causes.size(); ++variable) {
        if (m_expanded.causes[variable].kind != CauseKind::alone || q[variable] >= 0) continue;
        // Rounding alone can leave a member with minus nothing.
        const double own = ofEvent[m_expanded.causes[variable].events.front()];
        if (q[variable] < -1e-12 * own) ++overdrawn;
        q[variable] = 0;
    }
    return overdrawn;
}

} // namespace cutwater::reliability
