// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/index.h"

namespace cutwater::project {

namespace {

template <typename Value>
const Value* find(const IdTable& table, const std::vector<Value>& values, std::string_view id) {
    return table.find(values, id, IdTable::hash(id));
}

} // namespace

Index::Index(const Project& project)
    : m_project(&project), m_components(project.components), m_modes(project.modes),
      m_events(project.events), m_gates(project.gates), m_tops(project.tops),
      m_parameters(project.parameters) {}

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
Index::Node Index::node(std::string_view id) const {
    const std::uint32_t hash = IdTable::hash(id);
    if (const Event* event = m_events.find(m_project->events, id, hash)) return {event, nullptr};
    return {nullptr, m_gates.find(m_project->gates, id, hash)};
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
