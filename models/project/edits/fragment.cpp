// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/fragment.h"

#include "models/project/edits/insert.h"
#include "models/project/index.h"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace cutwater::project::edits {

namespace {

using Ids = std::set<Id, std::less<>>;
using Renamed = std::unordered_map<Id, Id>; // id in the fragment -> id in the project

void noteParameters(const FailureModel& model, Ids& parameters) {
    for (const Assignment& number : model.numbers)
        if (!number.quantity.parameter.empty()) parameters.insert(number.quantity.parameter);
}

void renameParameters(FailureModel& model, const Renamed& renamed) {
    for (Assignment& number : model.numbers)
        if (const auto found = renamed.find(number.quantity.parameter); found != renamed.end())
            number.quantity.parameter = found->second;
}

template <typename Value>
const Value* find(const std::vector<Value>& values, const Id& id) {
    const auto found = std::find_if(values.begin(), values.end(),
                                    [&](const Value& each) { return each.id == id; });
    return found == values.end() ? nullptr : &*found;
}

// Takes `value` over: the project's own where it says the same, else a new one. `same` compares.
template <typename Value, typename Same>
void takeOver(std::vector<Value>& values, Value value, Renamed& renamed, Same same) {
    const Id old = value.id;
    const Value* there = find(values, old);
    if (there && same(*there, value)) return;
    value.id = uniqueId(old, [&](const Id& id) { return find(values, id) != nullptr; });
    if (value.id != old) renamed[old] = value.id;
    values.push_back(std::move(value));
}

Id renamedId(const Renamed& renamed, const Id& id) {
    const auto found = renamed.find(id);
    return found == renamed.end() ? id : found->second;
}

struct PlantNames {
    Renamed parameters, modes;
};

// The plant of the fragment into the project.
PlantNames takeOverPlant(Project& project, const Project& fragment) {
    Renamed parameters, components, modes;
    for (const Parameter& each : fragment.parameters)
        takeOver(project.parameters, each, parameters,
                 [](const Parameter& a, const Parameter& b) { return a == b; });
    for (Component each : fragment.components) {
        each.parent = renamedId(components, each.parent);
        // What supplies it may not have been copied: that is no difference.
        takeOver(project.components, std::move(each), components,
                 [](const Component& a, const Component& b) {
                     return a.tag == b.tag && a.name == b.name && a.type == b.type;
                 });
    }
    for (FailureMode each : fragment.modes) {
        each.component = renamedId(components, each.component);
        renameParameters(each.model, parameters);
        takeOver(project.modes, std::move(each), modes,
                 [](const FailureMode& a, const FailureMode& b) { return a == b; });
    }
    return {std::move(parameters), std::move(modes)};
}

} // namespace

Outcome<Project> copyNodes(const Project& project, const std::vector<Id>& nodes) {
    const Index index(project);
    Project fragment;
    fragment.name = "Copied part";
    Ids seen, modes, parameters, components;
    std::vector<Id> left;
    for (const Id& node : nodes) {
        if (!index.event(node) && !index.gate(node)) return noSuchNode(node);
        if (!seen.insert(node).second) continue;
        TopEvent top;
        top.id = "T" + std::to_string(fragment.tops.size() + 1);
        top.node.id = node;
        fragment.tops.push_back(std::move(top));
        left.push_back(node);
    }
    seen.clear();
    while (!left.empty()) {
        const Id id = left.back();
        left.pop_back();
        if (!seen.insert(id).second) continue;
        if (const Gate* gate = index.gate(id)) {
            for (const Reference& input : gate->inputs)
                left.push_back(input.id);
            if (!gate->condition.id.empty()) left.push_back(gate->condition.id);
        } else if (const Event* event = index.event(id)) {
            if (!event->mode.empty()) modes.insert(event->mode);
            noteParameters(event->model, parameters);
        }
    }
    for (const Id& id : modes) {
        const FailureMode* mode = index.mode(id);
        if (!mode) continue;
        noteParameters(mode->model, parameters);
        for (const Component* part = index.component(mode->component);
             part && components.insert(part->id).second;)
            part = index.component(part->parent);
    }
    // In the order of the project, but a component after what it is part of.
    for (const Parameter& each : project.parameters)
        if (parameters.contains(each.id)) fragment.parameters.push_back(each);
    std::vector<Id> waiting;
    Ids placed;
    for (const Component& each : project.components) {
        if (!components.contains(each.id)) continue;
        for (const Component* part = &each; part && placed.insert(part->id).second;) {
            waiting.push_back(part->id);
            part = index.component(part->parent);
        }
        for (; !waiting.empty(); waiting.pop_back()) {
            Component copy = *index.component(waiting.back());
            std::erase_if(copy.suppliedBy, [&](const Reference& supplier) {
                return !components.contains(supplier.id);
            });
            fragment.components.push_back(std::move(copy));
        }
    }
    for (const FailureMode& each : project.modes)
        if (modes.contains(each.id)) fragment.modes.push_back(each);
    for (const Event& each : project.events)
        if (seen.contains(each.id)) fragment.events.push_back(each);
    for (const Gate& each : project.gates)
        if (seen.contains(each.id)) fragment.gates.push_back(each);
    return fragment;
}

Result paste(const Project& project, const Project& fragment, const Place& place) {
    if (fragment.tops.empty())
        return refuse("there is nothing to paste", "copy an event or a gate first");
    Tree tree(project);
    if (const auto problem = openParent(tree, place.parent)) return *problem;
    const PlantNames plant = takeOverPlant(tree.project, fragment);
    Renamed nodes;
    for (Event event : fragment.events) {
        if (!event.mode.empty()) {
            event.mode = renamedId(plant.modes, event.mode);
            const auto& events = tree.project.events;
            const auto there = std::find_if(events.begin(), events.end(), [&](const Event& each) {
                return each.mode == event.mode;
            });
            if (there != events.end()) {
                nodes[event.id] = there->id;
                continue;
            }
        }
        renameParameters(event.model, plant.parameters);
        const Id old = event.id;
        event.id = uniqueId(old, [&](const Id& id) { return tree.exists(id); });
        event.line = {};
        nodes[old] = event.id;
        tree.addEvent(std::move(event));
    }
    for (const Gate& gate : fragment.gates) {
        Gate copy = gate;
        copy.id = uniqueId(gate.id, [&](const Id& id) { return tree.exists(id); });
        copy.line = {};
        nodes[gate.id] = copy.id;
        tree.addGate(std::move(copy));
    }
    for (const Gate& gate : fragment.gates) {
        Gate& copy = *tree.gate(nodes[gate.id]);
        for (Reference& input : copy.inputs)
            input = {renamedId(nodes, input.id), {}};
        if (!copy.condition.id.empty()) copy.condition = {renamedId(nodes, copy.condition.id), {}};
    }
    std::vector<Id> touched;
    Place at = place;
    for (const TopEvent& top : fragment.tops) {
        const auto node = nodes.find(top.node.id);
        if (node == nodes.end()) return noSuchNode(top.node.id);
        if (const auto problem = putIn(tree, at, node->second)) return *problem;
        if (at.row < kLoose) ++at.row;
        touched.push_back(node->second);
    }
    const std::string about =
        touched.size() == 1 ? tree.name(touched.front()) : fmt::format("{} items", touched.size());
    return tree.done("Paste %1", about, std::move(touched));
}

} // namespace cutwater::project::edits
