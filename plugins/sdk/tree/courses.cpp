// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/courses.h"

#include "plugins/sdk/tree/figures.h"

#include <fmt/format.h>

namespace cutwater::sdk::tree {
namespace {

using reliability::EventProfile;
using Kind = EventProfile::Kind;

constexpr std::size_t kMostWarnings = 10;

std::string events(std::size_t count) {
    return count == 1 ? std::string("1 event") : fmt::format("{} events", count);
}

} // namespace

project::Outcome<std::vector<EventProfile>> CourseBook::of(const Solved& solved) {
    std::vector<EventProfile> ofEvent(m_project.events.size());
    project::Problems problems;
    for (const std::size_t position :
         solved.variables.eventsOf(solved.solution.relevantVariables())) {
        auto known = m_profiles.find(position);
        if (known == m_profiles.end()) {
            auto course = reliability::courseOf(m_index, m_project.events[position], m_wish);
            if (!course) {
                problems.insert(problems.end(), course.problems().begin(), course.problems().end());
                continue;
            }
            for (const std::string& warning : course->warnings)
                m_warnings[warning].insert(position);
            noteClock(position, course->converted);
            known = m_profiles.emplace(position, course->profile).first;
        }
        ofEvent[position] = known->second;
    }
    if (!problems.empty()) return problems;
    const auto& groups = solved.variables.groups();
    m_commonCauses.counted.insert(groups.begin(), groups.end());
    std::vector<std::size_t> mixed;
    auto profiles = solved.variables.profiles(reliability::sharesOf(m_project, m_index, groups),
                                              ofEvent, &mixed);
    m_commonCauses.mixed.insert(mixed.begin(), mixed.end());
    return profiles;
}

void CourseBook::noteClock(std::size_t position, const reliability::Exposed& converted) {
    if (converted.startsPerHour)
        m_converted[fmt::format("starts are counted by the exposure of {}: {:.4g} per year",
                                converted.component, *converted.startsPerHour * 8760)]
            .insert(position);
    else if (converted.firingShare)
        m_converted[fmt::format("firing hours are {:.4g} of the calendar's, by the exposure of {}",
                                *converted.firingShare, converted.component)]
            .insert(position);
}

void CourseBook::addNotes(std::vector<Note>& notes) const {
    std::size_t constants = 0, renewed = 0, tested = 0, initiating = 0, outages = 0;
    for (const auto& [position, profile] : m_profiles) {
        constants += profile.kind == Kind::constant ? 1 : 0;
        initiating += profile.kind == Kind::initiating ? 1 : 0;
        tested += profile.kind == Kind::tested ? 1 : 0;
        outages += profile.kind == Kind::tested && profile.testDuration > 0 ? 1 : 0;
        renewed += profile.renewal > 0 && profile.kind != Kind::tested ? 1 : 0;
    }
    const auto assume = [&notes](std::string sentence) {
        notes.push_back({NoteKind::assumption, std::move(sentence)});
    };
    assume("At hour 0 everything works" +
           std::string(m_wish.steady ? ", but parts that are repaired at once begin in their "
                                       "long-run state"
                                     : "") +
           ". Parts are as good as new after a test, a repair, and at the start of each mission.");
    if (tested > 0)
        assume(
            fmt::format("{} tested at the first test given, or else after one interval, and then "
                        "on the calendar every interval. Tests that are not given a first test "
                        "of their own fall together.",
                        events(tested) + (tested == 1 ? " is" : " are")));
    if (renewed > 0)
        assume(fmt::format("{} a mission time: when a mission is over the next begins, with the "
                           "part as new.",
                           renewed == 1 ? "1 event has" : fmt::format("{} events have", renewed)));
    if (constants > 0)
        assume(
            fmt::format("{} a plain probability: it is there or not from the start, and never "
                        "begins or completes a failure. The frequency holds on that condition.",
                        constants == 1 ? "1 event has" : fmt::format("{} events have", constants)));
    if (initiating > 0)
        assume(fmt::format("{}: over as soon as it has come. It counts in the frequency, times the "
                           "chance that the other events of its sets are there; it adds nothing to "
                           "the unavailability. Two of them never meet.",
                           initiating == 1 ? "1 initiating event"
                                           : fmt::format("{} initiating events", initiating)));
    if (outages > 0)
        assume("A part that is taken out for a test counts as down. The moment it is taken out is "
               "not counted as a failure.");
    for (const auto& [sentence, positions] : m_converted)
        assume(fmt::format("{}: {}.", idList(m_project, {positions.begin(), positions.end()}),
                           sentence));
    if (!m_converted.empty())
        assume("Where a clock is spread over the calendar its failures come as much more slowly, "
               "and missions and tests that it counts lie as much further apart; repairs and tests "
               "take the time they take.");
    std::vector<std::size_t> asked;
    for (const auto& [position, profile] : m_profiles)
        asked.push_back(position);
    addCommonCauseNotes(notes, m_project, asked, m_commonCauses);
    if (!m_commonCauses.counted.empty())
        assume("Common causes share out the rates of their members, and are tested, mended and "
               "renewed like the best of them.");
    assume(std::string(m_commonCauses.counted.empty()
                           ? ""
                           : "Apart from the common causes that are counted, ") +
           (m_commonCauses.counted.empty() ? "Events" : "events") +
           " are independent of each other at every moment.");
    std::size_t count = 0;
    for (const auto& [sentence, positions] : m_warnings) {
        if (++count > kMostWarnings) break;
        notes.push_back(
            {NoteKind::warning,
             fmt::format("{}: {}.", idList(m_project, {positions.begin(), positions.end()}),
                         sentence)});
    }
    if (m_warnings.size() > kMostWarnings)
        notes.push_back(
            {NoteKind::warning, fmt::format("{} more warnings about events are left out.",
                                            m_warnings.size() - kMostWarnings)});
    for (const std::string& own : m_project.assumptions)
        assume(own);
}

reliability::TopCourse courseOfTop(const Solved& solved, std::vector<EventProfile> profiles,
                                   const Job& job) {
    std::optional<reliability::Crossings> crossings;
    if (!solved.solution.coherent() && !solved.solution.constant()) {
        logic::Limits limits;
        limits.stop = job.stop;
        limits.memoryBytes = job.memoryBytes;
        crossings = reliability::Crossings::of(solved.formula(), solved.top(), limits);
    }
    return {solved.solution, std::move(profiles), std::move(crossings)};
}

std::optional<project::Problem>
tooManyBreakpoints(const Target& target, const reliability::TopCourse& course, double end) {
    const double count = course.breakpointCount(end);
    if (count <= kMostBreakpoints) return {};
    return project::Problem{
        project::Severity::error,
        fmt::format("{} has about {:.0f} tests and missions in {:.6g} h, more than {:.0f}",
                    target.id, count, end, kMostBreakpoints),
        "ask about a shorter period", "top event " + target.id, target.line};
}

} // namespace cutwater::sdk::tree
