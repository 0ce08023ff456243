// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/exposure.h"

namespace cutwater::reliability {

ExposureBook::ExposureBook(const project::Project& project, const project::Index& index)
    : m_index(index), m_components(project.components.size()) {
    for (const project::Exposure& exposure : project.exposures) {
        if (!exposure.calendarHours || *exposure.calendarHours <= 0) continue;
        Sums& sums = m_sums[exposure.component];
        // What one exposure leaves out must not be divided by its hours.
        sums.hasFiring = (sums.calendar == 0 || sums.hasFiring) && exposure.firingHours.has_value();
        sums.hasStarts = (sums.calendar == 0 || sums.hasStarts) && exposure.starts.has_value();
        sums.calendar += *exposure.calendarHours;
        sums.firing += exposure.firingHours.value_or(0);
        sums.starts += exposure.starts.value_or(0);
    }
}

Exposed ExposureBook::of(const project::Event& event) const {
    Exposed result;
    const project::FailureMode* const mode = m_index.mode(event.mode);
    const project::Component* component = mode ? m_index.component(mode->component) : nullptr;
    for (std::size_t steps = 0; component && steps <= m_components; ++steps) {
        const auto found = m_sums.find(component->id);
        if (found != m_sums.end()) {
            const Sums& sums = found->second;
            result.component = component->id;
            if (sums.hasFiring && sums.firing > 0) result.firingShare = sums.firing / sums.calendar;
            if (sums.hasStarts) result.startsPerHour = sums.starts / sums.calendar;
            return result;
        }
        component = component->parent.empty() ? nullptr : m_index.component(component->parent);
    }
    return result;
}

} // namespace cutwater::reliability
