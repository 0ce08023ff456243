// SPDX-License-Identifier: GPL-3.0-or-later
// How often a failure mode comes in a year of the calendar, from its failure model and the clock
// that the model runs on. Rates per hour; a year is 8760 hours.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <optional>
#include <string>
#include <unordered_map>

namespace cutwater::worksheet {

inline constexpr double kHoursPerYear = 8760;

// How much of the other clocks a year of the calendar holds for one component.
struct Pace {
    std::optional<double> firingHours; // per year
    std::optional<double> starts;      // per year
};

struct Frequency {
    std::optional<double> perYear;
    std::string how;      // "1e-06 per hour x 8760 h", or why there is none
    bool assumed = false; // something was taken for granted: `how` says what
};

// Holds a reference to the project.
class FrequencyBook {
public:
    FrequencyBook(const project::Project& project, const project::Index& index);

    // From the exposures of the component or of the nearest part that it belongs to.
    Pace paceOf(const project::Component* component) const;

    // Of the mode by its own model or, where it has no rate and its component has a failure rate
    // and the mode a share of it, alpha x lambda_p. A part that fails is taken to be mended, so
    // that it can fail again.
    Frequency of(const project::FailureMode& mode) const;

    // The failures in `hours` of the calendar, of a rate per hour of the given clock.
    Frequency onClock(double ratePerHour, project::Clock clock,
                      const project::Component* component) const;

private:
    const project::Project& m_project;
    const project::Index& m_index;
    std::unordered_map<std::string_view, Pace> m_paces; // by id of the component
};

} // namespace cutwater::worksheet
