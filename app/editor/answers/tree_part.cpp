// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/tree_part.h"

#include <string_view>
#include <unordered_map>
#include <unordered_set>

namespace cutwater::editor {
namespace {

using Ids = std::unordered_set<std::string_view>;

Ids reachable(const project::Project& project, const project::Id& node) {
    // Not the index: of an id that stands twice it knows only the first.
    std::unordered_map<std::string_view, std::vector<const project::Gate*>> gates;
    for (const project::Gate& gate : project.gates)
        gates[gate.id].push_back(&gate);
    Ids seen{node};
    std::vector<std::string_view> open{node};
    const auto visit = [&](const project::Id& id) {
        if (!id.empty() && seen.insert(id).second) open.push_back(id);
    };
    while (!open.empty()) {
        const std::string_view id = open.back();
        open.pop_back();
        const auto found = gates.find(id);
        if (found == gates.end()) continue;
        for (const project::Gate* gate : found->second) {
            for (const project::Reference& input : gate->inputs)
                visit(input.id);
            visit(gate->condition.id);
        }
    }
    return seen;
}

bool speaksOf(const std::string& where, std::string_view kind) {
    // "rate of failure mode ET-1.fouled": the part comes first.
    return where.find(std::string(kind) + ' ') != std::string::npos;
}

} // namespace

project::Project treePart(const project::Project& project, const project::Id& node) {
    const Ids nodes = reachable(project, node);
    project::Project part;
    part.name = project.name;
    part.parameters = project.parameters;
    Ids modes, components;
    for (const project::Event& event : project.events)
        if (nodes.contains(event.id)) {
            part.events.push_back(event);
            if (!event.mode.empty()) modes.insert(event.mode);
        }
    for (const project::Gate& gate : project.gates)
        if (nodes.contains(gate.id)) part.gates.push_back(gate);
    for (const project::TopEvent& top : project.tops)
        if (top.node.id == node) part.tops.push_back(top);
    for (const project::FailureMode& mode : project.modes)
        if (modes.contains(mode.id)) {
            part.modes.push_back(mode);
            components.insert(mode.component);
        }
    for (const project::Component& component : project.components)
        if (components.contains(component.id)) {
            part.components.push_back(component);
            // Where it belongs and what supplies it makes no difference to the tree.
            part.components.back().parent.clear();
            part.components.back().suppliedBy.clear();
        }
    return part;
}

std::vector<project::Id> nodesOf(const project::Problem& problem, const project::Project& project,
                                 const project::Index& index) {
    const std::string& where = problem.where;
    const auto space = where.rfind(' ');
    if (space == std::string::npos) return {};
    const std::string id = where.substr(space + 1);
    std::vector<project::Id> nodes;
    if (speaksOf(where, "top event")) {
        if (const project::TopEvent* top = index.top(id)) nodes.push_back(top->node.id);
        return nodes;
    }
    const bool mode = speaksOf(where, "failure mode");
    if (mode || speaksOf(where, "component")) {
        for (const project::Event& event : project.events) {
            const project::FailureMode* const used = index.mode(event.mode);
            if (used && (mode ? used->id : used->component) == id) nodes.push_back(event.id);
        }
        return nodes;
    }
    if (index.gate(id) || index.event(id)) nodes.push_back(id);
    return nodes;
}

} // namespace cutwater::editor
