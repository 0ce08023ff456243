// SPDX-License-Identifier: GPL-3.0-or-later
// What the log of a project says about one failure mode: how often, and over what exposure.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <optional>
#include <string>
#include <vector>

namespace cutwater::evidence {

struct Observation {
    project::Id mode;
    project::Id component; // of the mode
    project::Id watched;   // whose exposure counts: it or one above it
    project::Clock clock = project::Clock::calendarHour; // what `exposure` is counted in
    std::size_t count = 0;                               // failures, confirmed or probable
    double exposure = 0;                                 // hours, or starts; > 0
    double calendarHours = 0;                            // of the same watching
    std::vector<double> times;         // hours on the calendar since the watching began, ascending
    std::vector<std::string> warnings; // sentences
};

// Counts the entries of the log that name the mode, are confirmed or probable, and lie within an
// exposure of the mode's component or, where that has none, of the nearest component above it (its
// parents). The clock is the mode's own; demands are taken as starts. An entry without a time of
// day counts as midnight. `times` are given only where the exposures follow each other without a
// gap. Problems: no such mode, no clock stated, no exposure, exposure without that clock, dates
// that are none, exposures that overlap.
project::Outcome<Observation> observe(const project::Project& project, const project::Index& index,
                                      const project::Id& mode);

} // namespace cutwater::evidence
