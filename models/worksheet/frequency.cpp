// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/frequency.h"

#include <cmath>
#include <fmt/format.h>

namespace cutwater::worksheet {

namespace {

using project::Clock;
using project::Dimension;
using project::ModelKind;
using project::Quantity;
using project::Role;

constexpr std::size_t kDeepest = 100; // of a plant breakdown

Frequency none(std::string why) {
    return {{}, std::move(why), false};
}

// Per hour; a mean time to failure is turned over.
std::optional<double> rateOf(const Quantity& quantity) {
    const double value = inBaseUnits(quantity);
    if (facts(quantity.unit).dimension == Dimension::time)
        return value > 0 ? std::optional(1 / value) : std::nullopt;
    if (facts(quantity.unit).dimension == Dimension::rate) return value;
    return {};
}

} // namespace

FrequencyBook::FrequencyBook(const project::Project& project, const project::Index& index)
    : m_project(project), m_index(index) {
    struct Sum {
        double calendar = 0, firing = 0, starts = 0;
        bool hasFiring = false, hasStarts = false;
    };
    std::unordered_map<std::string_view, Sum> sums;
    for (const project::Exposure& exposure : project.exposures) {
        if (!exposure.calendarHours || !(*exposure.calendarHours > 0)) continue;
        Sum& sum = sums[exposure.component];
        sum.calendar += *exposure.calendarHours;
        sum.firing += exposure.firingHours.value_or(0);
        sum.starts += exposure.starts.value_or(0);
        sum.hasFiring = sum.hasFiring || exposure.firingHours;
        sum.hasStarts = sum.hasStarts || exposure.starts;
    }
    for (const auto& [id, sum] : sums) {
        Pace pace;
        if (sum.hasFiring) pace.firingHours = kHoursPerYear * sum.firing / sum.calendar;
        if (sum.hasStarts) pace.starts = kHoursPerYear * sum.starts / sum.calendar;
        m_paces[id] = pace;
    }
}

Pace FrequencyBook::paceOf(const project::Component* component) const {
    Pace pace;
    for (std::size_t depth = 0; component && depth < kDeepest; ++depth) {
        if (const auto found = m_paces.find(component->id); found != m_paces.end()) {
            if (!pace.firingHours) pace.firingHours = found->second.firingHours;
            if (!pace.starts) pace.starts = found->second.starts;
        }
        component = m_index.component(component->parent);
    }
    return pace;
}

Frequency FrequencyBook::onClock(double rate, Clock clock,
                                 const project::Component* component) const {
    const Pace pace = paceOf(component);
    switch (clock) {
    case Clock::calendarHour:
        return {rate * kHoursPerYear, fmt::format("{:.3g} per hour x 8760 h", rate), false};
    case Clock::unstated:
        return {rate * kHoursPerYear,
                fmt::format("{:.3g} per hour x 8760 h; the clock is not stated, the calendar taken",
                            rate),
                true};
    case Clock::firingHour:
        if (pace.firingHours)
            return {rate * *pace.firingHours,
                    fmt::format("{:.3g} per firing hour x {:.4g} firing hours a year", rate,
                                *pace.firingHours),
                    false};
        return {rate * kHoursPerYear,
                fmt::format("{:.3g} per firing hour x 8760 h: no exposure says how long it fires, "
                            "so it is taken to fire all year",
                            rate),
                true};
    case Clock::start:
    case Clock::demand: break;
    }
    return none("a rate per hour on a clock that counts no hours");
}

Frequency FrequencyBook::of(const project::FailureMode& mode) const {
    const project::Component* component = m_index.component(mode.component);
    const project::FailureModel& model = mode.model;
    const auto number = [&](Role role) -> const Quantity* {
        const Quantity* quantity = model.find(role);
        return quantity ? m_index.resolved(*quantity) : nullptr;
    };
    if (const Quantity* quantity = number(Role::rate)) {
        const auto rate = rateOf(*quantity);
        return rate ? onClock(*rate, model.clock, component) : none("its rate has no unit");
    }
    if (const Quantity* quantity = number(Role::frequency)) {
        if (const auto rate = rateOf(*quantity)) return onClock(*rate, model.clock, component);
        if (facts(quantity->unit).dimension == Dimension::perStart) {
            const Pace pace = paceOf(component);
            if (!pace.starts) return none("no exposure says how many starts there are");
            return {quantity->value * *pace.starts,
                    fmt::format("{:.3g} per start x {:.4g} starts a year", quantity->value,
                                *pace.starts),
                    false};
        }
        return none("its frequency has no unit");
    }
    if (const Quantity* quantity = number(Role::probability)) {
        const bool starts =
            model.clock == Clock::start || facts(quantity->unit).dimension == Dimension::perStart;
        if (model.kind == ModelKind::perDemand && starts) {
            const Pace pace = paceOf(component);
            if (!pace.starts) return none("no exposure says how many starts there are");
            return {quantity->value * *pace.starts,
                    fmt::format("{:.3g} per start x {:.4g} starts a year", quantity->value,
                                *pace.starts),
                    false};
        }
        if (model.kind == ModelKind::perDemand)
            return none("nobody has said how many demands there are in a year");
        return none("a plain probability has no frequency");
    }
    if (model.kind == ModelKind::weibull) {
        const Quantity *shape = number(Role::shape), *scale = number(Role::scale);
        if (!shape || !scale || !(shape->value > 0))
            return none("its Weibull numbers are not all there");
        const Quantity* location = number(Role::location);
        const double mean = (location ? inBaseUnits(*location) : 0) +
                            inBaseUnits(*scale) * std::tgamma(1 + 1 / shape->value);
        if (!(mean > 0) || std::isinf(mean)) return none("its Weibull numbers have no mean");
        Frequency found = onClock(1 / mean, model.clock, component);
        found.how = fmt::format("mean life {:.4g} h, replaced when it fails: {}", mean, found.how);
        found.assumed = true;
        return found;
    }
    if (mode.ratio && component && component->failureRate) {
        const Quantity* ratio = m_index.resolved(*mode.ratio);
        const Quantity* whole = m_index.resolved(*component->failureRate);
        const auto rate = whole ? rateOf(*whole) : std::nullopt;
        if (ratio && rate) {
            Frequency found = onClock(
                ratio->value * *rate,
                model.clock == Clock::unstated ? Clock::calendarHour : model.clock, component);
            found.how =
                fmt::format("share {:.3g} of the component's rate: {}", ratio->value, found.how);
            return found;
        }
    }
    return none("it has no failure model");
}

} // namespace cutwater::worksheet
