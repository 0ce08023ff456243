// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/target.h"

#include <fmt/format.h>

namespace cutwater::sdk::tree {

using project::Problem;
using project::Severity;

project::Outcome<std::vector<Target>> targetsOf(const project::Project& project,
                                                const project::Index& index,
                                                const std::optional<std::string>& wish) {
    std::vector<Target> targets;
    if (!wish) {
        for (const project::TopEvent& top : project.tops)
            targets.push_back({top.id, top.node.id, top.name, top.line.number});
        if (targets.empty())
            return Problem{Severity::error, "the project has no top event",
                           "add one, or name a gate as the top", "", 0};
        return targets;
    }
    if (const project::TopEvent* top = index.top(*wish)) {
        targets.push_back({top->id, top->node.id, top->name, top->line.number});
        return targets;
    }
    if (const project::Gate* gate = index.gate(*wish)) {
        targets.push_back({gate->id, gate->id, gate->name, gate->line.number});
        return targets;
    }
    if (const project::Event* event = index.event(*wish)) {
        targets.push_back({event->id, event->id, readableName(index, *event), event->line.number});
        return targets;
    }
    std::vector<std::string> ids;
    for (const project::TopEvent& top : project.tops)
        ids.push_back(top.id);
    for (const project::Gate& gate : project.gates)
        ids.push_back(gate.id);
    const std::string near = nearest(*wish, ids);
    return Problem{Severity::error, fmt::format("there is no top event, gate or event '{}'", *wish),
                   near.empty() ? "name one of the project" : fmt::format("try '{}'", near), "", 0};
}

Parameter topParameter(const project::Project* project) {
    Parameter parameter;
    parameter.name = "top";
    parameter.type = ParameterType::topEvent;
    parameter.sentence = "the top event that is asked about, or any gate or event; without it all "
                         "top events of the project";
    if (project)
        for (const project::TopEvent& top : project->tops)
            parameter.choices.push_back(top.id);
    return parameter;
}

Parameter missionParameter() {
    Parameter parameter;
    parameter.name = "mission";
    parameter.type = ParameterType::number;
    parameter.unit = "h";
    parameter.minimum = 0;
    parameter.sentence = "mission time for the failure models that have none of their own";
    return parameter;
}

std::string readableName(const project::Index& index, const project::Event& event) {
    if (!event.name.empty()) return event.name;
    const project::FailureMode* const mode = index.mode(event.mode);
    if (!mode) return event.id;
    const project::Component* const component = index.component(mode->component);
    if (!component) return mode->name.empty() ? event.id : mode->name;
    const std::string& part = component->name.empty() ? component->tag : component->name;
    return fmt::format("{} {}", part, mode->name);
}

} // namespace cutwater::sdk::tree
