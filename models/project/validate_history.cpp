// SPDX-License-Identifier: GPL-3.0-or-later
// The rules for common causes, exposures, the log and assessments.
#include "models/project/dates.h"
#include "models/project/judge.h"

#include <cmath>
#include <fmt/format.h>
#include <unordered_set>

namespace cutwater::project {

namespace {

// How many factors a group of `size` members may have: least and most.
std::pair<std::size_t, std::size_t> factorCount(CommonCauseKind kind, std::size_t size) {
    switch (kind) {
    case CommonCauseKind::beta: return {1, 1};
    case CommonCauseKind::multipleGreekLetters: return {1, size - 1};
    case CommonCauseKind::alpha:
    case CommonCauseKind::alphaStaggered: return {size, size};
    }
    return {1, size};
}

void judgeFactors(Judge& judge, const CommonCauseGroup& group, const Place& place) {
    double sum = 0;
    bool allKnown = true;
    for (const Quantity& factor : group.factors) {
        judge.quantity(factor, place.with("factor", factor.line.number), {Dimension::number},
                       Range::chance);
        const Quantity* resolved = judge.index.resolved(factor);
        allKnown = allKnown && resolved;
        sum += resolved ? resolved->value : 0;
    }
    const std::size_t size = group.members.size();
    if (size < 2) return;
    const auto [least, most] = factorCount(group.kind, size);
    const std::size_t count = group.factors.size();
    if (count < least || count > most)
        judge.error(place,
                    fmt::format("{} ({}) of {} members has {} factors", place.words(),
                                word(group.kind), size, count),
                    least == most ? fmt::format("enter {}", least)
                                  : fmt::format("enter {} to {}", least, most));
    const bool alpha =
        group.kind == CommonCauseKind::alpha || group.kind == CommonCauseKind::alphaStaggered;
    constexpr double kTolerance = 0.005; // factors are rounded to two or three digits in print
    if (alpha && count == size && allKnown && !(std::abs(sum - 1) <= kTolerance))
        judge.error(place,
                    fmt::format("the alpha factors of {} add up to {:.4g}", place.words(), sum),
                    "enter factors that add up to 1");
}

void judgeCommonCauses(Judge& judge) {
    Judge::Seen seen;
    std::unordered_map<std::string_view, std::string_view> groupOf;
    for (const CommonCauseGroup& group : judge.project.commonCauses) {
        const Place place{"common-cause group", group.id, group.line.number};
        judge.id(place, group.id, seen);
        if (group.members.size() < 2)
            judge.error(place,
                        fmt::format("{} has {} members", place.words(), group.members.size()),
                        "name at least two events, or delete the group");
        judgeFactors(judge, group, place);
        for (const Reference& member : group.members) {
            const Place here = place.with("member", member.line.number);
            if (!judge.reference(Target::event, member.id, here)) continue;
            if (judge.index.event(member.id)->kind == EventKind::house)
                judge.error(here, fmt::format("{} is {}, a house event", here.words(), member.id),
                            "take it out: a house event does not fail");
            const auto [other, isFirst] = groupOf.try_emplace(member.id, group.id);
            if (isFirst) continue;
            if (other->second == group.id)
                judge.error(here, fmt::format("{} is twice in {}", member.id, place.words()),
                            "keep one of them");
            else
                judge.warn(here,
                           fmt::format("{} is in two common-cause groups, {} and {}", member.id,
                                       other->second, group.id),
                           "make sure that the two causes are different ones");
        }
    }
}

void judgeExposures(Judge& judge) {
    for (const Exposure& exposure : judge.project.exposures) {
        const Place place{"exposure of component", exposure.component, exposure.line.number};
        judge.reference(Target::component, exposure.component,
                        {"exposure", {}, place.line, "component"});
        judge.date(exposure.from, place.with("start", 0));
        judge.date(exposure.to, place.with("end", 0));
        if (isIsoDate(exposure.from) && isIsoDate(exposure.to) && exposure.from > exposure.to)
            judge.error(place,
                        fmt::format("{} ends on {}, before it starts on {}", place.words(),
                                    exposure.to, exposure.from),
                        "exchange the dates");
        judge.number(exposure.calendarHours, place.with("calendar hours", 0), Range::notNegative);
        judge.number(exposure.firingHours, place.with("firing hours", 0), Range::notNegative);
        judge.number(exposure.starts, place.with("starts", 0), Range::notNegative);
        if (!exposure.calendarHours && !exposure.firingHours && !exposure.starts)
            judge.warn(place, fmt::format("{} counts neither hours nor starts", place.words()),
                       "enter what the meters say: without it a count of failures is not a rate");
        judge.source(exposure.source, place);
    }
}

void judgeLog(Judge& judge) {
    Judge::Seen seen;
    for (const LogEntry& entry : judge.project.log) {
        const Place place{"log entry", entry.id, entry.line.number};
        judge.id(place, entry.id, seen);
        if (entry.date.empty())
            judge.error(place, fmt::format("{} has no date", place.words()),
                        "write it like 2026-02-28");
        judge.date(entry.date, place.with("date", 0));
        if (!entry.time.empty() && !isTimeOfDay(entry.time))
            judge.error(place,
                        fmt::format("time of {} is \"{:.40}\", which is no time of day",
                                    place.words(), entry.time),
                        "write it like 03:10");
        if (!entry.component.empty())
            judge.reference(Target::component, entry.component, place.with("component", 0));
        if (!entry.mode.empty() &&
            judge.reference(Target::mode, entry.mode, place.with("failure mode", 0))) {
            const Id& owner = judge.index.mode(entry.mode)->component;
            if (!entry.component.empty() && owner != entry.component)
                judge.warn(place,
                           fmt::format("{} names component {}, but failure mode {} belongs to {}",
                                       place.words(), entry.component, entry.mode, owner),
                           "correct one of the two");
        }
        if (!entry.topEvent.empty())
            judge.reference(Target::top, entry.topEvent, place.with("top event", 0));
        judge.number(entry.runningHours, place.with("running hours", 0), Range::notNegative);
        judge.number(entry.starts, place.with("starts", 0), Range::notNegative);
        judge.number(entry.downtimeHours, place.with("downtime", 0), Range::notNegative);
        judge.source(entry.source, place);
    }
}

void judgeAssessments(Judge& judge) {
    Judge::Seen seen;
    std::unordered_set<std::string_view> forced;
    for (const Assessment& assessment : judge.project.assessments) {
        const Place place{"assessment", assessment.id, assessment.line.number};
        judge.id(place, assessment.id, seen);
        forced.clear();
        for (const ForcedEvent& one : assessment.forced) {
            const Place here = place.with("forced event", one.event.line.number);
            judge.reference(Target::event, one.event.id, here);
            if (!forced.insert(one.event.id).second)
                judge.error(here,
                            fmt::format("{} is forced twice in {}", one.event.id, place.words()),
                            "keep one of them");
        }
        if (assessment.duration)
            judge.quantity(*assessment.duration,
                           place.with("duration", assessment.duration->line.number),
                           {Dimension::time}, Range::notNegative);
    }
}

} // namespace

void judgeHistory(Judge& judge) {
    judgeCommonCauses(judge);
    judgeExposures(judge);
    judgeLog(judge);
    judgeAssessments(judge);
}

} // namespace cutwater::project
