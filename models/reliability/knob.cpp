// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/knob.h"

#include "models/reliability/event_model.h"

#include <algorithm>
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
    return owner + "@" + std::string(project::facts(role).word);
}

std::vector<Knob> knobsOf(const project::Project& project, const project::Index& index,
                          std::span<const std::size_t> events) {
    std::vector<Knob> knobs;
    std::map<std::string, std::size_t> known;
    for (const std::size_t position : events) {
        const project::Event& event = project.events[position];
        const project::FailureModel* const model =
            event.kind == project::EventKind::house ? nullptr : index.modelOf(event);
        if (!model) continue;
        for (const project::Assignment& number : model->numbers) {
            Knob knob;
            knob.role = number.role;
            if (!number.quantity.parameter.empty())
                knob.parameter = number.quantity.parameter;
            else
                knob.owner = event.mode.empty() ? event.id : event.mode;
            const auto [found, isNew] = known.try_emplace(knob.id(), knobs.size());
            if (isNew) knobs.push_back(std::move(knob));
            auto& users = knobs[found->second].events;
            if (std::find(users.begin(), users.end(), position) == users.end())
                users.push_back(position);
        }
    }
    for (Knob& knob : knobs)
        std::sort(knob.events.begin(), knob.events.end());
    return knobs;
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

project::Outcome<EventCourse> WhatIf::course(std::size_t event, bool steady) const {
    ProfileWish wish;
    wish.mission = m_mission;
    wish.steady = steady;
    return courseOf(m_index, m_project.events[event], wish);
}

} // namespace cutwater::reliability
