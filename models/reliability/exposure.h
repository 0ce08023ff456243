// SPDX-License-Identifier: GPL-3.0-or-later
// How a component's own clock runs against the calendar, by what the project's exposures say.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <map>
#include <optional>

namespace cutwater::reliability {

struct Exposed {
    project::Id component;               // whose exposure it is: the event's own, or one above it
    std::optional<double> firingShare;   // firing hours per calendar hour, above 0
    std::optional<double> startsPerHour; // starts per calendar hour
};

// Sums of each component's exposures; an event without a component, and one below no component with
// an exposure, has none.
class ExposureBook {
public:
    ExposureBook(const project::Project& project, const project::Index& index);

    Exposed of(const project::Event& event) const;

private:
    struct Sums {
        double calendar = 0, firing = 0, starts = 0;
        bool hasFiring = false, hasStarts = false;
    };
    const project::Index& m_index;
    std::size_t m_components;
    std::map<project::Id, Sums> m_sums;
};

} // namespace cutwater::reliability
