// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/top_event.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <utility>

namespace cutwater::reliability {

TopCourse::TopCourse(logic::Solution solution, std::vector<EventProfile> profiles,
                     std::optional<Crossings> crossings)
    : m_solution(std::move(solution)), m_profiles(std::move(profiles)),
      m_crossings(std::move(crossings)), m_relevant(m_solution.relevantVariables()) {}

void TopCourse::fill(double time, Side side, std::vector<double>& q,
                     std::vector<EventMoment>& moments) const {
    q.assign(m_profiles.size(), 0.0);
    moments.resize(m_relevant.size());
    for (std::size_t i = 0; i < m_relevant.size(); ++i) {
        moments[i] = m_profiles[m_relevant[i]].at(time, side);
        q[m_relevant[i]] = moments[i].unavailability;
    }
}

// An event that hinders the top brings it about when it goes away again.
double TopCourse::completes(std::size_t relevant, const std::vector<double>& q,
                            const EventMoment& moment, double birnbaum) const {
    if (!m_crossings)
        return birnbaum >= 0 ? birnbaum * moment.frequency : -birnbaum * moment.restoration;
    const double helps = m_crossings->helps(m_relevant[relevant], q, birnbaum);
    return helps * moment.frequency + std::max(helps - birnbaum, 0.0) * moment.restoration;
}

TopMoment TopCourse::momentOf(const std::vector<double>& q, const std::vector<EventMoment>& moments,
                              const std::vector<double>& birnbaum) const {
    const logic::ProbabilityPair pair = m_solution.probability(q);
    TopMoment top;
    top.unavailability = pair.occurs;
    top.available = pair.occursNot;
    for (std::size_t i = 0; i < m_relevant.size(); ++i)
        top.frequency += completes(i, q, moments[i], birnbaum[m_relevant[i]]);
    if (top.frequency > 0) top.conditional = top.frequency / pair.occursNot;
    return top;
}

TopMoment TopCourse::at(double time, Side side) const {
    std::vector<double> q;
    std::vector<EventMoment> moments;
    fill(time, side, q, moments);
    return momentOf(q, moments, m_solution.birnbaum(q));
}

std::vector<EventShare> TopCourse::shares(double time, Side side) const {
    std::vector<double> q;
    std::vector<EventMoment> moments;
    fill(time, side, q, moments);
    const std::vector<double> birnbaum = m_solution.birnbaum(q);
    std::vector<EventShare> shares;
    for (std::size_t i = 0; i < m_relevant.size(); ++i)
        shares.push_back({m_relevant[i], moments[i], birnbaum[m_relevant[i]],
                          completes(i, q, moments[i], birnbaum[m_relevant[i]])});
    return shares;
}

std::vector<double> TopCourse::breakpoints(double end) const {
    std::vector<double> all;
    for (const std::uint32_t variable : m_relevant) {
        const std::vector<double> own = m_profiles[variable].breakpoints(end);
        all.insert(all.end(), own.begin(), own.end());
        // Many events share their test days: tidy up before it gets large.
        if (all.size() > 1'000'000) {
            std::sort(all.begin(), all.end());
            all.erase(std::unique(all.begin(), all.end()), all.end());
        }
    }
    std::sort(all.begin(), all.end());
    std::vector<double> distinct;
    for (const double time : all)
        if (distinct.empty() || time - distinct.back() > 1e-11 * std::max(1.0, time))
            distinct.push_back(time);
    return distinct;
}

double TopCourse::breakpointCount(double end) const {
    // Events with the same test days or missions share their breakpoints.
    std::set<std::tuple<EventProfile::Kind, double, double, double, double, double>> seen;
    double count = 0;
    for (const std::uint32_t variable : m_relevant) {
        const EventProfile& part = m_profiles[variable];
        if (seen.insert({part.kind, part.interval, part.firstTest, part.testDuration, part.renewal,
                         part.location})
                .second)
            count += part.breakpointCount(end);
    }
    return count;
}

const EventProfile* TopCourse::onlyEvent() const {
    const bool one = m_relevant.size() == 1 && coherent() && !m_solution.constant();
    return one ? &m_profiles[m_relevant.front()] : nullptr;
}

bool TopCourse::neverRecovers() const {
    return std::all_of(m_relevant.begin(), m_relevant.end(), [this](std::uint32_t variable) {
        return m_profiles[variable].neverRecovers();
    });
}

} // namespace cutwater::reliability
