// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/top_variables.h"

#include "models/reliability/common_cause_profile.h"

#include <algorithm>
#include <utility>

namespace cutwater::reliability {

std::vector<std::vector<double>> sharesOf(const project::Project& project,
                                          const project::Index& index,
                                          std::span<const std::size_t> groups) {
    std::vector<std::vector<double>> shares;
    for (const std::size_t position : groups) {
        const project::CommonCauseGroup& group = project.commonCauses[position];
        shares.push_back(
            commonCauseShares(group.kind, factorsOf(index, group), group.members.size()));
    }
    return shares;
}

TopVariables::TopVariables(const TreeFormula& tree) {
    CommonCauseFormula plain;
    for (const std::size_t event : tree.eventOfVariable)
        plain.causes.push_back({CauseKind::event, {event}, 0, {}});
    m_causes = std::make_shared<const CommonCauseFormula>(std::move(plain));
}

TopVariables::TopVariables(CommonCauseFormula commonCauses)
    : m_causes(std::make_shared<const CommonCauseFormula>(std::move(commonCauses))) {}

std::string TopVariables::id(const project::Project& project, std::uint32_t variable) const {
    const Cause& cause = m_causes->causes[variable];
    return cause.id.empty() ? project.events[cause.events.front()].id : cause.id;
}

std::vector<std::size_t> TopVariables::eventsOf(std::span<const std::uint32_t> variables) const {
    std::vector<std::size_t> all;
    for (const std::uint32_t variable : variables)
        all.insert(all.end(), events(variable).begin(), events(variable).end());
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
}

std::vector<double> TopVariables::probabilities(const project::Project& project,
                                                std::span<const std::vector<double>> shares,
                                                std::span<const double> ofEvent, UnequalRule rule,
                                                std::size_t* overdrawn) const {
    std::vector<double> q(count());
    if (groups().empty()) {
        for (std::uint32_t variable = 0; variable < q.size(); ++variable)
            q[variable] = ofEvent[events(variable).front()];
        return q;
    }
    const std::size_t tooFew =
        CauseProbabilities(project, *m_causes, rule).fill(shares, ofEvent, q);
    if (overdrawn) *overdrawn += tooFew;
    return q;
}

std::vector<EventProfile> TopVariables::profiles(std::span<const std::vector<double>> shares,
                                                 std::span<const EventProfile> ofEvent,
                                                 std::vector<std::size_t>* mixed) const {
    CauseCourses courses = causeCourses(*m_causes, shares, ofEvent, UnequalRule::geometricMean);
    if (mixed)
        for (const std::size_t group : courses.mixed)
            mixed->push_back(groups()[group]);
    return std::move(courses.profiles);
}

} // namespace cutwater::reliability
