// SPDX-License-Identifier: GPL-3.0-or-later
// Look-up by id in a project that does not change meanwhile.
#pragma once

#include "models/project/id_table.h"
#include "models/project/project.h"

#include <string_view>

namespace cutwater::project {

// Built once in linear time; holds positions only, so it stays valid as long as the project's
// vectors do not change. Where an id stands twice the first one is found.
class Index {
public:
    explicit Index(const Project& project);

    const Component* component(std::string_view id) const;
    const FailureMode* mode(std::string_view id) const;
    const Event* event(std::string_view id) const;
    const Gate* gate(std::string_view id) const;
    // The event of that id or, where there is none, the gate; both null where there is neither.
    struct Node {
        const Event* event = nullptr;
        const Gate* gate = nullptr;
        explicit operator bool() const { return event || gate; }
    };
    Node node(std::string_view id) const;
    const TopEvent* top(std::string_view id) const;
    const Parameter* parameter(std::string_view id) const;
    // The failure model that counts for an event: its mode's where it has one; null where that mode
    // does not exist.
    const FailureModel* modelOf(const Event& event) const;
    const Quantity*
    resolved(const Quantity& quantity) const; // follows `parameter`; null where it does not exist

private:
    const Project* m_project;
    IdTable m_components, m_modes, m_events, m_gates, m_tops, m_parameters;
};

} // namespace cutwater::project
