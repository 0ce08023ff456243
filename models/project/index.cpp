// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/index.h"

namespace cutwater::project {

namespace {

template <typename Map, typename Value>
void fill(Map& map, const std::vector<Value>& values) {
    map.reserve(values.size());
    for (std::size_t i = 0; i < values.size(); ++i)
        map.try_emplace(values[i].id, i); // the first of two stays
}

template <typename Map, typename Value>
const Value* find(const Map& map, const std::vector<Value>& values, std::string_view id) {
    const auto place = map.find(id);
    return place == map.end() ? nullptr : &values[place->second];
}

} // namespace

Index::Index(const Project& project) : m_project(&project) {
    fill(m_components, project.components);
    fill(m_modes, project.modes);
    fill(m_events, project.events);
    fill(m_gates, project.gates);
    fill(m_tops, project.tops);
    fill(m_parameters, project.parameters);
}

const Component* Index::component(std::string_view id) const {
    return find(m_components, m_project->components, id);
}
const FailureMode* Index::mode(std::string_view id) const {
    return find(m_modes, m_project->modes, id);
}
const Event* Index::event(std::string_view id) const {
    return find(m_events, m_project->events, id);
}
const Gate* Index::gate(std::string_view id) const {
    return find(m_gates, m_project->gates, id);
}
const TopEvent* Index::top(std::string_view id) const {
    return find(m_tops, m_project->tops, id);
}
const Parameter* Index::parameter(std::string_view id) const {
    return find(m_parameters, m_project->parameters, id);
}

const FailureModel* Index::modelOf(const Event& event) const {
    if (event.mode.empty()) return &event.model;
    const FailureMode* its = mode(event.mode);
    return its ? &its->model : nullptr;
}

const Quantity* Index::resolved(const Quantity& quantity) const {
    if (quantity.parameter.empty()) return &quantity;
    const Parameter* shared = parameter(quantity.parameter);
    return shared ? &shared->quantity : nullptr;
}

} // namespace cutwater::project
