// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/safety-function/from_tree.h"

#include "models/reliability/common_cause_profile.h"
#include "models/reliability/profile_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace cutwater::safety_function_plugin {
namespace {

using reliability::EventProfile;
using sdk::Ending;
using sdk::tree::Solved;
using Answer = sdk::Answer<TreeFigures>;

constexpr double kYear = 8760;
constexpr double kMostTests = 200'000; // jumps to integrate between

class Reader {
public:
    Reader(const project::Project& project, const project::Index& index,
           std::optional<double> mission)
        : m_project(project), m_index(index), m_mission(mission), m_profiles(project.events.size()),
          m_read(project.events.size(), false) {}

    void read(std::size_t event, TreeFigures& figures) {
        if (m_read[event]) return;
        m_read[event] = true;
        const project::Event& of = m_project.events[event];
        const auto course = reliability::courseOf(m_index, of, {m_mission, true});
        if (!course) {
            problems.insert(problems.end(), course.problems().begin(), course.problems().end());
            return;
        }
        m_profiles[event] = course->profile;
        const EventProfile& profile = course->profile;
        if (profile.kind == EventProfile::Kind::tested) {
            longestInterval = std::max(longestInterval, profile.interval);
            figures.largestLoad = std::max(figures.largestLoad, profile.rate * profile.interval);
        }
        if (profile.kind == EventProfile::Kind::initiating)
            problems.push_back({project::Severity::error,
                                fmt::format("event {} is a demand (how often it comes), not a "
                                            "failure of the protection",
                                            of.id),
                                "name the gate of the protection alone",
                                fmt::format("event {}", of.id), of.line.number});
        for (const std::string& warning : course->warnings)
            figures.warnings.push_back(fmt::format("Event {}: {}", of.id, warning));
    }

    std::span<const EventProfile> profiles() const { return m_profiles; }
    project::Problems problems;
    double longestInterval = 0;

private:
    const project::Project& m_project;
    const project::Index& m_index;
    std::optional<double> m_mission;
    std::vector<EventProfile> m_profiles; // by event
    std::vector<bool> m_read;
};

// The period's figures; content only where it was not stopped.
sdk::Answer<reliability::PeriodFigures> integrate(const logic::Solution& solution,
                                                  std::vector<EventProfile> profiles,
                                                  const Solved& solved, double period,
                                                  const sdk::Job& job) {
    using One = sdk::Answer<reliability::PeriodFigures>;
    const reliability::TopCourse course(solution, std::move(profiles));
    if (course.breakpointCount(period) > kMostTests)
        return One::failed(
            {{project::Severity::error,
              fmt::format("more than {:.0f} tests fall into {:.6g} h", kMostTests, period),
              "give a shorter --interval", "", 0}});
    reliability::PeriodWish wish;
    wish.end = period;
    wish.stop = job.stop;
    auto figures = reliability::overPeriod(course, wish);
    if (!figures) return One::stopped(Ending::cancelled, sdk::tree::cancelledAt(solved.target));
    return One::of(std::move(*figures));
}

std::size_t smallestOrder(const logic::Solution& solution) {
    const auto counts = solution.countsByOrder();
    for (std::size_t order = 0; order < counts.size(); ++order)
        if (counts[order].value > 0 || counts[order].saturated) return order;
    return 0;
}

} // namespace

Answer figuresFromTree(const project::Project& project, const project::Index& index,
                       const std::string& top, std::optional<double> interval,
                       std::optional<double> mission, const sdk::Job& job,
                       const sdk::tree::Circumstances& circumstances) {
    const auto targets = sdk::tree::targetsOf(project, index, top);
    if (!targets) return Answer::failed(targets.problems());
    sdk::tree::Circumstances independent = circumstances;
    independent.commonCauses = false;
    auto all =
        sdk::tree::solveAll(project, index, *targets, sdk::tree::Side::fails, job, independent);
    if (!all.content) return {all.ending, {}, std::move(all.problems)};
    const Solved& solved = all.content->front();

    TreeFigures figures;
    figures.target = solved.target;
    figures.coherent = solved.solution.coherent();
    figures.ignoresOrder = solved.tree.hasPriorityAnd;
    figures.smallestSet = smallestOrder(solved.solution);
    Reader reader(project, index, mission);
    for (const std::uint32_t variable : solved.solution.relevantVariables())
        reader.read(solved.tree.eventOfVariable[variable], figures);

    const auto expanded = reliability::withCommonCauses(project, index, solved.tree);
    if (!expanded) return Answer::failed(expanded.problems());
    std::optional<logic::Solution> common;
    if (!expanded->groups.empty()) {
        logic::Limits limits;
        limits.stop = job.stop;
        limits.memoryBytes = job.memoryBytes;
        auto outcome = logic::solve(expanded->formula, expanded->top, limits);
        if (outcome.stop == logic::Stop::cancelled)
            return Answer::stopped(Ending::cancelled, sdk::tree::cancelledAt(solved.target));
        if (!outcome.solution)
            return Answer::stopped(Ending::overLimit,
                                   sdk::tree::overMemoryAt(solved.target, job.memoryBytes));
        common = std::move(outcome.solution);
        for (const std::uint32_t variable : common->relevantVariables())
            for (const std::size_t event : expanded->causes[variable].events)
                reader.read(event, figures);
    }
    if (!reader.problems.empty()) return Answer::failed(std::move(reader.problems));

    figures.period = interval.value_or(reader.longestInterval > 0 ? reader.longestInterval : kYear);
    std::vector<EventProfile> profiles;
    for (const std::size_t event : solved.tree.eventOfVariable) {
        const EventProfile& profile = reader.profiles()[event];
        profiles.push_back(profile);
        if (profile.kind == EventProfile::Kind::tested && profile.interval > figures.period)
            figures.longer.push_back(event);
    }
    auto plain = integrate(solved.solution, std::move(profiles), solved, figures.period, job);
    if (!plain.content) return {plain.ending, {}, std::move(plain.problems)};
    figures.independent = std::move(*plain.content);
    if (!common) return Answer::of(std::move(figures));

    const auto shares = reliability::sharesOf(project, index, expanded->groups);
    auto courses = reliability::causeCourses(*expanded, shares, reader.profiles(),
                                             reliability::UnequalRule::geometricMean);
    for (const std::size_t group : courses.mixed)
        figures.mixedGroups.push_back(project.commonCauses[expanded->groups[group]].id);
    auto with = integrate(*common, std::move(courses.profiles), solved, figures.period, job);
    if (!with.content) return {with.ending, {}, std::move(with.problems)};
    figures.common = std::move(*with.content);
    return Answer::of(std::move(figures));
}

} // namespace cutwater::safety_function_plugin
