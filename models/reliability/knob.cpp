// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/knob.h"

#include "models/reliability/event_model.h"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace cutwater::reliability {

namespace {

template <typename Things>
auto* byId(Things& things, const project::Id& id) {
    const auto found = std::find_if(things.begin(), things.end(),
                                    [&id](const auto& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

// Of a const or a changeable project.
template <typename Project>
auto* quantityOf(Project& project, const Knob& knob) {
    using Quantity = std::remove_reference_t<decltype((project.parameters.front().quantity))>;
    Quantity* none = nullptr;
    if (!knob.parameter.empty()) {
        auto* const parameter = byId(project.parameters, knob.parameter);
        return parameter ? &parameter->quantity : none;
    }
    if (knob.factor > 0) {
        auto* const group = byId(project.commonCauses, knob.owner);
        return group && knob.factor <= group->factors.size() ? &group->factors[knob.factor - 1]
                                                             : none;
    }
    auto* const mode = byId(project.modes, knob.owner);
    auto* const event = mode ? nullptr : byId(project.events, knob.owner);
    if (!mode && !event) return none;
    auto& numbers = mode ? mode->model.numbers : event->model.numbers;
    for (auto& number : numbers)
        if (number.role == knob.role) return &number.quantity;
    return none;
}

} // namespace

std::string Knob::id() const {
    if (!parameter.empty()) return parameter;
    if (factor > 0) return fmt::format("{}@factor-{}", owner, factor);
    return owner + "@" + std::string(project::facts(role).word);
}

namespace {

class Collector {
public:
    void take(Knob knob, const project::Quantity& quantity, std::span<const std::size_t> users) {
        if (!quantity.parameter.empty()) {
            knob.parameter = quantity.parameter;
            knob.owner.clear();
            knob.factor = 0;
        }
        const auto [found, isNew] = m_known.try_emplace(knob.id(), m_knobs.size());
        if (isNew) m_knobs.push_back(std::move(knob));
        auto& all = m_knobs[found->second].events;
        for (const std::size_t user : users)
            if (std::find(all.begin(), all.end(), user) == all.end()) all.push_back(user);
    }
    std::vector<Knob> finished() {
        for (Knob& knob : m_knobs)
            std::sort(knob.events.begin(), knob.events.end());
        return std::move(m_knobs);
    }

private:
    std::vector<Knob> m_knobs;
    std::map<std::string, std::size_t> m_known;
};

} // namespace

std::vector<Knob> knobsOf(const project::Project& project, const project::Index& index,
                          std::span<const std::size_t> events,
                          std::span<const std::size_t> groups) {
    Collector collector;
    for (const std::size_t position : events) {
        const project::Event& event = project.events[position];
        const project::FailureModel* const model =
            event.kind == project::EventKind::house ? nullptr : index.modelOf(event);
        if (!model) continue;
        for (const project::Assignment& number : model->numbers) {
            Knob knob;
            knob.role = number.role;
            knob.owner = event.mode.empty() ? event.id : event.mode;
            collector.take(std::move(knob), number.quantity, {&position, 1});
        }
    }
    for (const std::size_t position : groups) {
        const project::CommonCauseGroup& group = project.commonCauses[position];
        std::vector<std::size_t> members;
        for (const project::Reference& member : group.members)
            if (const project::Event* const event = index.event(member.id))
                members.push_back(static_cast<std::size_t>(event - project.events.data()));
        for (std::size_t i = 0; i < group.factors.size(); ++i) {
            const project::Quantity* const quantity = index.resolved(group.factors[i]);
            const bool possible =
                group.kind == project::CommonCauseKind::beta ||
                (quantity && (quantity->value != 0 || quantity->uncertainty.index() != 0));
            if (!possible) continue;
            Knob knob;
            knob.owner = group.id;
            knob.factor = i + 1;
            collector.take(std::move(knob), group.factors[i], members);
        }
    }
    return collector.finished();
}

const project::Quantity* find(const project::Project& project, const Knob& knob) {
    return quantityOf(project, knob);
}

WhatIf::WhatIf(const project::Project& project, std::optional<double> mission)
    : m_original(project), m_project(project), m_index(m_project), m_mission(mission) {}

void WhatIf::turn(const Knob& knob, double value) {
    project::Quantity* const quantity = quantityOf(m_project, knob);
    if (!quantity) return;
    quantity->value = value;
    for (const std::size_t event : knob.events)
        m_probabilities.erase(event);
}

void WhatIf::reset(const Knob& knob) {
    if (const project::Quantity* const original = find(m_original, knob))
        turn(knob, original->value);
}

const project::Outcome<double>& WhatIf::probability(std::size_t event) {
    const auto found = m_probabilities.find(event);
    if (found != m_probabilities.end()) return found->second;
    const auto outcome = probabilityOf(m_project, m_index, m_project.events[event], m_mission);
    const auto value = outcome ? project::Outcome<double>(outcome->value)
                               : project::Outcome<double>(outcome.problems());
    return m_probabilities.emplace(event, value).first->second;
}

project::Outcome<std::vector<double>>
WhatIf::probabilities(const TopVariables& variables, std::span<const std::uint32_t> relevant) {
    std::vector<double> ofEvent(m_project.events.size(), 0.0);
    project::Problems problems;
    for (const std::size_t event : variables.eventsOf(relevant)) {
        const auto& outcome = probability(event);
        if (outcome)
            ofEvent[event] = *outcome;
        else
            problems.insert(problems.end(), outcome.problems().begin(), outcome.problems().end());
    }
    if (!problems.empty()) return problems;
    return variables.probabilities(m_project, sharesOf(m_project, m_index, variables.groups()),
                                   ofEvent);
}

project::Outcome<EventCourse> WhatIf::course(std::size_t event) const {
    ProfileWish wish;
    wish.mission = m_mission;
    return courseOf(m_index, m_project.events[event], wish);
}

project::Outcome<std::vector<EventProfile>>
WhatIf::profiles(const TopVariables& variables, std::span<const std::uint32_t> relevant) const {
    std::vector<EventProfile> ofEvent(m_project.events.size());
    project::Problems problems;
    for (const std::size_t event : variables.eventsOf(relevant)) {
        const auto course = this->course(event);
        if (course)
            ofEvent[event] = course->profile;
        else
            problems.insert(problems.end(), course.problems().begin(), course.problems().end());
    }
    if (!problems.empty()) return problems;
    return variables.profiles(sharesOf(m_project, m_index, variables.groups()), ofEvent);
}

} // namespace cutwater::reliability
