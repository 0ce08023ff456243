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
    Numbers numbers;
    numbers.q = figures.q;
    numbers.frequency.assign(figures.q.size(), 0.0);
    project::Problems problems;
    reliability::ProfileWish wish;
    wish.mission = mission;
    for (const std::uint32_t variable : figures.relevant) {
        const std::size_t position = solved.tree.eventOfVariable[variable];
        const auto course = reliability::courseOf(index, project.events[position], wish);
        const bool initiating = course && course->profile.kind == Kind::initiating;
        if (initiating) {
            numbers.q[variable] = 0;
            numbers.initiating.push_back(position);
        } else if (!figures.known[variable]) {
            const project::Problems& reasons = book.problemsOf(position);
            problems.insert(problems.end(), reasons.begin(), reasons.end());
            continue;
        }
        // A model that has a probability but no course (a mission of 0 h) has no frequency either.
        if (course) numbers.frequency[variable] = frequencyOf(course->profile, numbers.q[variable]);
    }
    if (!problems.empty()) return problems;
    return numbers;
}

} // namespace cutwater::importance_plugin
