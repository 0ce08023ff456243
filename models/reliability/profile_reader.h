// SPDX-License-Identifier: GPL-3.0-or-later
// From an event's failure model to its course over time.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"
#include "models/reliability/exposure.h"
#include "models/reliability/profile.h"

#include <optional>
#include <string>
#include <vector>

namespace cutwater::reliability {

struct ProfileWish {
    // For models without a mission time of their own that may have one: hours until they begin
    // anew.
    std::optional<double> mission;
    bool steady = false; // repairable parts without a mission begin in their long-run state
    // Where given, time is calendar time: a model on firing hours runs only while there is firing,
    // and a frequency per start counts the starts. Otherwise each model's clock runs all the time.
    const ExposureBook* calendar = nullptr;
};

struct EventCourse {
    EventProfile profile;
    std::vector<std::string> warnings; // sentences: where an assumption does not hold
    Exposed converted;                 // what was used to turn its clock into calendar time
};

// What probabilityOf() averages or takes at the end of the mission, as a function of time.
// Problems: no model, a frequency per start, numbers that make no sense.
project::Outcome<EventCourse> courseOf(const project::Index& index, const project::Event& event,
                                       const ProfileWish& wish = {});

} // namespace cutwater::reliability
