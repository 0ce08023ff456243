// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/evidence/observed.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <fmt/format.h>
#include <unordered_set>

namespace cutwater::evidence {

namespace {

using project::Clock;
using project::Exposure;
using project::Problem;
using project::Severity;

// Reads digits [from, from + count) of the text.
std::optional<int> number(const std::string& text, std::size_t from, std::size_t count) {
    int value = 0;
    const char* begin = text.data() + from;
    const auto [end, error] = std::from_chars(begin, begin + count, value);
    if (error != std::errc() || end != begin + count || value < 0) return {};
    return value;
}

// Days since 1970 of an ISO date; nothing where it is none.
std::optional<long> dayNumber(const std::string& date) {
    if (date.size() != 10 || date[4] != '-' || date[7] != '-') return {};
    const auto year = number(date, 0, 4), month = number(date, 5, 2), day = number(date, 8, 2);
    if (!year || !month || !day) return {};
    const std::chrono::year_month_day when{std::chrono::year(*year),
                                           std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*day))};
    if (!when.ok()) return {};
    return std::chrono::sys_days(when).time_since_epoch().count();
}

// Hours since midnight of "HH:MM"; midnight where it is empty or none.
double hoursOf(const std::string& time) {
    if (time.size() != 5 || time[2] != ':') return 0;
    const auto hours = number(time, 0, 2), minutes = number(time, 3, 2);
    return hours && minutes ? *hours + *minutes / 60.0 : 0;
}

struct Span {
    long from, to; // days, both included
    const Exposure* exposure;
};

Problem problem(std::string what, std::string remedy, const project::Id& mode, int line = 0) {
    return {Severity::error, std::move(what), std::move(remedy), fmt::format("mode {}", mode),
            line};
}

// The component itself or the nearest one above it that the log watched; empty where there is none.
project::Id watchedComponent(const project::Project& project, const project::Index& index,
                             project::Id component) {
    std::unordered_set<std::string_view> watched;
    for (const Exposure& exposure : project.exposures)
        watched.insert(exposure.component);
    // A chain of parents longer than all components would be a cycle.
    for (std::size_t i = 0; i <= project.components.size() && !component.empty(); ++i) {
        if (watched.count(component)) return component;
        const auto* found = index.component(component);
        component = found ? found->parent : project::Id();
    }
    return {};
}

std::optional<double> amount(const Exposure& exposure, Clock clock) {
    switch (clock) {
    case Clock::calendarHour: return exposure.calendarHours;
    case Clock::firingHour: return exposure.firingHours;
    case Clock::start:
    case Clock::demand: return exposure.starts;
    case Clock::unstated: break;
    }
    return {};
}

// The exposures of a component by date; a problem where a date is none or two of them overlap.
project::Outcome<std::vector<Span>> spansOf(const project::Project& project,
                                            const project::Id& component, const project::Id& mode) {
    std::vector<Span> spans;
    for (const Exposure& exposure : project.exposures) {
        if (exposure.component != component) continue;
        const auto from = dayNumber(exposure.from), to = dayNumber(exposure.to);
        if (!from || !to || *to < *from)
            return problem(fmt::format("the exposure of {} does not run from one date to a later "
                                       "one",
                                       component),
                           "give both dates as 2026-02-28", mode, exposure.line.number);
        spans.push_back({*from, *to, &exposure});
    }
    std::sort(spans.begin(), spans.end(),
              [](const Span& a, const Span& b) { return a.from < b.from; });
    for (std::size_t i = 1; i < spans.size(); ++i)
        if (spans[i].from <= spans[i - 1].to)
            return problem(fmt::format("two exposures of {} overlap, so that time would be counted "
                                       "twice",
                                       component),
                           "let each begin after the other's end", mode,
                           spans[i].exposure->line.number);
    return spans;
}

} // namespace

project::Outcome<Observation> observe(const project::Project& project, const project::Index& index,
                                      const project::Id& modeId) {
    const auto* mode = index.mode(modeId);
    if (!mode)
        return problem(fmt::format("the failure mode {} does not exist", modeId),
                       "name a failure mode of the project", modeId);
    Observation result;
    result.mode = modeId;
    result.component = mode->component;
    result.clock = mode->model.clock;
    if (result.clock == Clock::unstated)
        return problem(
            fmt::format("the failure mode {} has no clock, so a count of it is no rate", modeId),
            "say whether starts, firing hours or calendar hours make it older", modeId,
            mode->line.number);
    result.watched = watchedComponent(project, index, mode->component);
    if (result.watched.empty())
        return problem(
            fmt::format("the log has no exposure for {} or anything above it", mode->component),
            "say from when to when it was watched, and for how many hours and starts", modeId,
            mode->line.number);
    const auto spans = spansOf(project, result.watched, modeId);
    if (!spans) return spans.problems();

    bool gap = false;
    for (std::size_t i = 0; i < spans->size(); ++i) {
        const Span& span = (*spans)[i];
        const auto value = amount(*span.exposure, result.clock);
        if (!value || !(*value > 0))
            return problem(fmt::format("the exposure of {} does not say how many {} it was",
                                       result.watched,
                                       result.clock == Clock::calendarHour ? "calendar hours"
                                       : result.clock == Clock::firingHour ? "firing hours"
                                                                           : "starts"),
                           "give it", modeId, span.exposure->line.number);
        result.exposure += *value;
        result.calendarHours += 24.0 * static_cast<double>(span.to - span.from + 1);
        gap = gap || (i > 0 && span.from != (*spans)[i - 1].to + 1);
    }

    std::size_t outside = 0;
    for (const auto& entry : project.log) {
        if (entry.mode != modeId || entry.status == project::CauseStatus::notFound) continue;
        const auto day = dayNumber(entry.date);
        const bool within =
            day && std::any_of(spans->begin(), spans->end(), [day](const Span& span) {
                return *day >= span.from && *day <= span.to;
            });
        if (!within) {
            ++outside;
            continue;
        }
        ++result.count;
        result.times.push_back(24.0 * static_cast<double>(*day - spans->front().from) +
                               hoursOf(entry.time));
    }
    std::sort(result.times.begin(), result.times.end());
    if (gap) {
        result.times.clear();
        result.warnings.push_back(
            "the watching has gaps, so that times since it began say nothing about a trend");
    }
    if (outside > 0)
        result.warnings.push_back(fmt::format(
            "{} entries of the log lie outside the time that was watched and are not counted",
            outside));
    if (result.clock == Clock::demand)
        result.warnings.push_back("the clock is demands; starts are counted as demands");
    return result;
}

} // namespace cutwater::evidence
