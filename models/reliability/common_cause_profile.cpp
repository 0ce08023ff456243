// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/common_cause_profile.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace cutwater::reliability {

namespace {

using Kind = EventProfile::Kind;

// What a profile's failures are counted by; a Weibull's are not.
double& strength(EventProfile& profile) {
    return profile.kind == Kind::constant ? profile.probability : profile.rate;
}

EventProfile scaled(EventProfile profile, double share) {
    if (profile.kind == Kind::weibull) { // the hazard goes with scale^-shape
        if (share > 0)
            profile.scale *= std::pow(share, -1 / profile.shape);
        else
            profile = EventProfile{}; // never
        return profile;
    }
    strength(profile) *= share;
    return profile;
}

// What each member keeps: a share of its own model less what it has given away.
struct Kept {
    double share = 1, given = 0;
};

} // namespace

CauseCourses causeCourses(const CommonCauseFormula& expanded,
                          std::span<const std::vector<double>> shares,
                          std::span<const EventProfile> ofEvent, UnequalRule rule) {
    CauseCourses courses;
    courses.profiles.resize(expanded.causes.size());
    std::vector<Kept> kept(ofEvent.size());
    std::set<std::size_t> mixed;
    for (std::size_t variable = 0; variable < expanded.causes.size(); ++variable) {
        const Cause& cause = expanded.causes[variable];
        if (cause.kind != CauseKind::common) continue;
        const std::vector<double>& of = shares[cause.group];
        const double share = of[cause.events.size() - 1];
        const Kind kind = ofEvent[cause.events.front()].kind;
        const bool oneKind =
            std::all_of(cause.events.begin(), cause.events.end(),
                        [&](std::size_t event) { return ofEvent[event].kind == kind; });
        const bool alike = oneKind && kind != Kind::weibull;
        EventProfile common = ofEvent[cause.events.front()];
        if (alike) {
            double smallest = strength(common), largest = smallest, logs = 0;
            for (const std::size_t event : cause.events) {
                EventProfile member = ofEvent[event];
                const double own = strength(member);
                if (own < smallest) common = member;
                smallest = std::min(smallest, own);
                largest = std::max(largest, own);
                logs += std::log(own);
            }
            double together = smallest;
            if (rule == UnequalRule::geometricMean && smallest > 0 && smallest < largest) {
                together = std::exp(logs / static_cast<double>(cause.events.size()));
                if (of.front() < 1) together = std::min(together, smallest / (1 - of.front()));
            }
            strength(common) = share * together;
            for (const std::size_t event : cause.events)
                kept[event].given += share * together;
        } else {
            common = scaled(common, share);
            for (const std::size_t event : cause.events)
                kept[event].share -= share;
            if (!oneKind) mixed.insert(cause.group);
        }
        common.testDuration = 0;
        courses.profiles[variable] = common;
    }
    for (std::size_t variable = 0; variable < expanded.causes.size(); ++variable) {
        const Cause& cause = expanded.causes[variable];
        if (cause.kind == CauseKind::common) continue;
        EventProfile profile = ofEvent[cause.events.front()];
        if (cause.kind == CauseKind::alone) {
            const Kept& own = kept[cause.events.front()];
            profile = scaled(profile, std::max(own.share, 0.0));
            if (profile.kind != Kind::weibull)
                strength(profile) = std::max(strength(profile) - own.given, 0.0);
        }
        courses.profiles[variable] = profile;
    }
    courses.mixed.assign(mixed.begin(), mixed.end());
    return courses;
}

} // namespace cutwater::reliability
