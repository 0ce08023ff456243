// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/figures.h"

#include <fmt/format.h>

#include <numeric>

#include <algorithm>
#include <set>

namespace cutwater::sdk::tree {
namespace {

constexpr std::size_t kMostWarnings = 10;
constexpr std::size_t kMostIds = 8;

} // namespace

FigureBook::Entry& FigureBook::entry(std::size_t event) {
    const auto found = m_entries.find(event);
    if (found != m_entries.end()) return found->second;
    Entry& made = m_entries[event];
    auto outcome =
        reliability::probabilityOf(m_project, m_index, m_project.events[event], m_mission);
    if (outcome)
        made.probability = std::move(*outcome);
    else
        made.problems = outcome.problems();
    return made;
}

// Only events that are in some set count: one that can make no difference needs no number.
Figures FigureBook::of(const Solved& solved) {
    return of(solved.variables, solved.solution.relevantVariables());
}

Figures FigureBook::of(const reliability::TopVariables& variables) {
    std::vector<std::uint32_t> all(variables.count());
    std::iota(all.begin(), all.end(), 0);
    return of(variables, std::move(all));
}

Figures FigureBook::of(const reliability::TopVariables& variables,
                       std::vector<std::uint32_t> relevant) {
    Figures figures;
    figures.known.assign(variables.count(), false);
    figures.relevant = std::move(relevant);
    std::vector<double> ofEvent(m_project.events.size(), 0.0);
    for (const std::size_t event : variables.eventsOf(figures.relevant)) {
        Entry& of = entry(event);
        of.counts = true;
        if (of.probability)
            ofEvent[event] = of.probability->value;
        else
            figures.lacking.push_back(event);
    }
    figures.q = variables.probabilities(
        m_project, reliability::sharesOf(m_project, m_index, variables.groups()), ofEvent,
        reliability::UnequalRule::geometricMean, &m_commonCauses.overdrawn);
    m_commonCauses.counted.insert(variables.groups().begin(), variables.groups().end());
    for (const std::uint32_t variable : figures.relevant) {
        const auto& events = variables.events(variable);
        figures.known[variable] = std::none_of(events.begin(), events.end(), [&](std::size_t of) {
            return std::binary_search(figures.lacking.begin(), figures.lacking.end(), of);
        });
    }
    for (std::size_t variable = 0; variable < figures.q.size(); ++variable)
        if (!figures.known[variable]) figures.q[variable] = 1;
    return figures;
}

const reliability::EventProbability* FigureBook::find(std::size_t event) const {
    const auto found = m_entries.find(event);
    return found != m_entries.end() && found->second.probability ? &*found->second.probability
                                                                 : nullptr;
}

const project::Problems& FigureBook::problemsOf(std::size_t event) const {
    static const project::Problems none;
    const auto found = m_entries.find(event);
    return found == m_entries.end() ? none : found->second.problems;
}

std::vector<std::size_t> FigureBook::events() const {
    std::vector<std::size_t> events;
    for (const auto& [event, of] : m_entries)
        if (of.counts) events.push_back(event);
    return events;
}

void FigureBook::addWarnings(std::vector<Note>& notes) const {
    std::size_t count = 0;
    for (const auto& [event, of] : m_entries) {
        if (!of.counts || !of.probability) continue;
        for (const std::string& warning : of.probability->warnings)
            if (++count <= kMostWarnings)
                notes.push_back({NoteKind::warning,
                                 fmt::format("Event {}: {}", m_project.events[event].id, warning)});
    }
    if (count > kMostWarnings)
        notes.push_back(
            {NoteKind::warning, fmt::format("{} more warnings about events are left out "
                                            "here.",
                                            count - kMostWarnings)});
}

void FigureBook::addAssumptions(std::vector<Note>& notes) const {
    std::set<project::Clock> clocks;
    std::size_t unstated = 0, tested = 0;
    for (const auto& [event, of] : m_entries) {
        if (!of.counts || !of.probability) continue;
        const project::FailureModel* const model = m_index.modelOf(m_project.events[event]);
        if (!model) continue;
        if (model->kind == project::ModelKind::tested) ++tested;
        if (!model->find(project::Role::rate) && !model->find(project::Role::scale)) continue;
        if (model->clock == project::Clock::unstated)
            ++unstated;
        else
            clocks.insert(model->clock);
    }
    if (clocks.size() > 1) {
        std::vector<std::string> words;
        for (const project::Clock clock : clocks)
            words.emplace_back(project::facts(clock).word);
        notes.push_back(
            {NoteKind::assumption,
             fmt::format("The rates run on different clocks ({}). Each was used on its own clock; "
                         "times are in hours of that clock and were not converted.",
                         fmt::join(words, ", "))});
    }
    if (unstated > 0)
        notes.push_back({NoteKind::warning,
                         fmt::format("{} of the events used do{} not say which clock the rate runs "
                                     "on (calendar hours, firing hours, starts).",
                                     unstated, unstated == 1 ? "es" : "")});
    if (tested > 1)
        notes.push_back(
            {NoteKind::assumption,
             "Dormant parts count with their mean over the test interval. Where two of them in one "
             "set are tested at the same time the true mean of that set is up to 4/3 of the "
             "figure, "
             "with three up to 2 times."});
}

std::string idList(const project::Project& project, const std::vector<std::size_t>& events) {
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < events.size() && i < kMostIds; ++i)
        ids.push_back(project.events[events[i]].id);
    std::string list = fmt::format("{}", fmt::join(ids, ", "));
    if (events.size() > kMostIds) list += fmt::format(" and {} more", events.size() - kMostIds);
    return list;
}

} // namespace cutwater::sdk::tree
