// SPDX-License-Identifier: GPL-3.0-or-later
// What the variables of a solved top event are: the events of the tree or, where common causes are
// counted, what is left of each member of a group and the causes that take several together. The
// analyses read their numbers through this and need not know which of the two it is.
#pragma once

#include "models/reliability/common_cause.h"
#include "models/reliability/profile.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cutwater::reliability {

// One list for each of `groups` (positions in project.commonCauses): see commonCauseShares().
std::vector<std::vector<double>> sharesOf(const project::Project& project,
                                          const project::Index& index,
                                          std::span<const std::size_t> groups);

// A value; copies share what does not change.
class TopVariables {
public:
    explicit TopVariables(const TreeFormula& tree);         // events as independent
    explicit TopVariables(CommonCauseFormula commonCauses); // see withCommonCauses()

    std::size_t count() const { return m_causes->causes.size(); }
    CauseKind kind(std::uint32_t variable) const { return m_causes->causes[variable].kind; }
    // Positions in project.events: one, or all that a common cause takes.
    const std::vector<std::size_t>& events(std::uint32_t variable) const {
        return m_causes->causes[variable].events;
    }
    // "e1", "e1 [alone]" or "e1 + e2 [common]".
    std::string id(const project::Project& project, std::uint32_t variable) const;
    // Groups whose common causes are counted here: positions in project.commonCauses, ascending.
    const std::vector<std::size_t>& groups() const { return m_causes->groups; }
    // Of a common cause: position in groups().
    std::size_t groupOf(std::uint32_t variable) const { return m_causes->causes[variable].group; }

    // The causes themselves; where none is common their formula is empty.
    const CommonCauseFormula& causes() const { return *m_causes; }

    // Positions in project.events, ascending, whose numbers these variables need.
    std::vector<std::size_t> eventsOf(std::span<const std::uint32_t> variables) const;

    // Probability by variable; ofEvent by position in project.events, shares by groups(). Adds to
    // `overdrawn` the members that give away more than they have: see CauseProbabilities.
    std::vector<double> probabilities(const project::Project& project,
                                      std::span<const std::vector<double>> shares,
                                      std::span<const double> ofEvent,
                                      UnequalRule rule = UnequalRule::geometricMean,
                                      std::size_t* overdrawn = nullptr) const;
    // Course over time by variable: see causeCourses(). Adds to `mixed` the groups whose members
    // have models of different kinds.
    std::vector<EventProfile> profiles(std::span<const std::vector<double>> shares,
                                       std::span<const EventProfile> ofEvent,
                                       std::vector<std::size_t>* mixed = nullptr) const;

private:
    std::shared_ptr<const CommonCauseFormula> m_causes; // its formula is empty where independent
};

} // namespace cutwater::reliability
