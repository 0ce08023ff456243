// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/tree_places.h"

#include <set>
#include <unordered_set>
#include <utility>

namespace cutwater::editor {

TreePlaces::TreePlaces(Snapshot project) : m_project(std::move(project)) {
    for (const project::Event& event : m_project->events)
        if (!event.mode.empty()) m_events[event.mode].push_back(event.id);
    for (const project::Gate& gate : m_project->gates) {
        for (const project::Reference& input : gate.inputs)
            m_parents[input.id].push_back(gate.id);
        if (!gate.condition.id.empty()) m_parents[gate.condition.id].push_back(gate.id);
    }
    for (std::size_t i = 0; i < m_project->tops.size(); ++i)
        m_topsAt[m_project->tops[i].node.id].push_back(i);
}

const std::vector<project::Id>& TreePlaces::eventsOf(std::string_view mode) const {
    static const std::vector<project::Id> none;
    const auto found = m_events.find(mode);
    return found == m_events.end() ? none : found->second;
}

const std::vector<std::size_t>& TreePlaces::topsOf(std::string_view mode) const {
    static const std::vector<std::size_t> none;
    const auto events = m_events.find(mode);
    if (events == m_events.end()) return none;
    const auto [known, fresh] = m_known.try_emplace(events->first);
    if (!fresh) return known->second;
    std::set<std::size_t> tops;
    std::unordered_set<std::string_view> seen;
    std::vector<std::string_view> left(events->second.begin(), events->second.end());
    while (!left.empty()) {
        const std::string_view node = left.back();
        left.pop_back();
        if (!seen.insert(node).second) continue;
        if (const auto at = m_topsAt.find(node); at != m_topsAt.end())
            tops.insert(at->second.begin(), at->second.end());
        if (const auto parents = m_parents.find(node); parents != m_parents.end())
            left.insert(left.end(), parents->second.begin(), parents->second.end());
    }
    known->second.assign(tops.begin(), tops.end());
    return known->second;
}

} // namespace cutwater::editor
