// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/importance/numbers.h"

#include "models/reliability/profile_reader.h"

namespace cutwater::importance_plugin {
namespace {

using reliability::EventProfile;
using Kind = EventProfile::Kind;

// How often the event comes at the moment that its probability holds for.
double frequencyOf(const EventProfile& profile, double q) {
    switch (profile.kind) {
    case Kind::constant: return 0;
    case Kind::failing:
    case Kind::repairable:
    case Kind::tested: return profile.rate * (1 - q);
    case Kind::initiating: return profile.rate;
    case Kind::weibull: // at the end of the mission, where q is taken, too
        return profile.renewal > 0
                   ? profile.at(profile.renewal, reliability::Side::before).frequency
                   : 0;
    }
    return 0;
}

} // namespace

project::Outcome<Numbers> numbersOf(const project::Project& project, const project::Index& index,
                                    const sdk::tree::Solved& solved, sdk::tree::FigureBook& book,
                                    std::optional<double> mission) {
    const sdk::tree::Figures figures = book.of(solved);
    const reliability::TopVariables& variables = solved.variables;
    Numbers numbers;
    numbers.q = figures.q;
    numbers.frequency.assign(figures.q.size(), 0.0);
    reliability::ProfileWish wish;
    wish.mission = mission;
    // A model that has a probability but no course (a mission of 0 h) has no frequency either: its
    // profile stays that of something that never comes.
    std::vector<EventProfile> ofEvent(project.events.size());
    for (const std::size_t position : variables.eventsOf(figures.relevant))
        if (const auto course = reliability::courseOf(index, project.events[position], wish)) {
            ofEvent[position] = course->profile;
            if (course->profile.kind == Kind::initiating) numbers.initiating.push_back(position);
        }
    project::Problems problems;
    for (const std::size_t position : figures.lacking) {
        if (ofEvent[position].kind == Kind::initiating) continue;
        const project::Problems& reasons = book.problemsOf(position);
        problems.insert(problems.end(), reasons.begin(), reasons.end());
    }
    if (!problems.empty()) return problems;
    const std::vector<EventProfile> profiles =
        variables.profiles(reliability::sharesOf(project, index, variables.groups()), ofEvent);
    for (const std::uint32_t variable : figures.relevant) {
        if (!figures.known[variable]) numbers.q[variable] = 0; // it comes and is over
        numbers.frequency[variable] = frequencyOf(profiles[variable], numbers.q[variable]);
    }
    return numbers;
}

} // namespace cutwater::importance_plugin
