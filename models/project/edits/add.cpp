// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/add.h"

#include "models/project/edits/insert.h"

#include <algorithm>
#include <fmt/format.h>

namespace cutwater::project::edits {

Result addEvent(const Project& project, const Place& place, const std::string& name) {
    if (name.find_first_not_of(" \t\n") == std::string::npos)
        return refuse("the new event has no text", "type what fails");
    Tree tree(project);
    if (const auto problem = openParent(tree, place.parent)) return *problem;
    const Id id = tree.newNodeId(name);
    if (place.parent.empty()) {
        Gate gate;
        gate.id = id;
        gate.name = name;
        tree.addGate(std::move(gate));
    } else {
        Event event;
        event.id = id;
        event.name = name;
        if (place.row == kCondition) event.kind = EventKind::conditioning;
        tree.addEvent(std::move(event));
    }
    if (const auto problem = putIn(tree, place, id)) return *problem;
    const std::string about = tree.name(id);
    return tree.done("Add %1", about, {id});
}

Result shareNode(const Project& project, const Place& place, const Id& node) {
    Tree tree(project);
    if (const auto problem = openParent(tree, place.parent)) return *problem;
    if (const auto problem = putIn(tree, place, node)) return *problem;
    const std::string about = tree.name(node);
    return tree.done("Use %1 once more", about, {node});
}

Result useMode(const Project& project, const Place& place, const Id& modeId) {
    const auto mode = std::find_if(project.modes.begin(), project.modes.end(),
                                   [&](const FailureMode& each) { return each.id == modeId; });
    if (mode == project.modes.end())
        return refuse(fmt::format("the plant has no failure mode {}", modeId),
                      "choose one that is there");
    const auto event = std::find_if(project.events.begin(), project.events.end(),
                                    [&](const Event& each) { return each.mode == modeId; });
    if (event != project.events.end()) return shareNode(project, place, event->id);
    if (place.parent.empty())
        return refuse("a failure mode is not a tree", "type the top event first");

    Tree tree(project);
    if (const auto problem = openParent(tree, place.parent)) return *problem;
    const auto component =
        std::find_if(project.components.begin(), project.components.end(),
                     [&](const Component& each) { return each.id == mode->component; });
    Event made;
    made.mode = modeId;
    if (component != project.components.end())
        made.name = component->name.empty() ? component->tag : component->name;
    made.name += (made.name.empty() ? "" : " ") + mode->name;
    made.id = tree.newNodeId(made.name);
    const Id id = made.id;
    tree.addEvent(std::move(made));
    if (const auto problem = putIn(tree, place, id)) return *problem;
    const std::string about = tree.name(id);
    return tree.done("Use failure mode %1", about, {id});
}

Result separate(const Project& project, const Use& use) {
    Tree tree(project);
    const Gate* shared = tree.gate(use.node);
    if (!shared) {
        return tree.event(use.node)
                   ? refuse(fmt::format("{} is one event, and the same wherever it is used",
                                        tree.words(use.node)),
                            "add another event where another failure is meant")
                   : noSuchNode(use.node);
    }
    if (countUses(project)[use.node] < 2)
        return refuse(fmt::format("{} is used once only", tree.words(use.node)),
                      "there is nothing to separate");
    // Copies of the gates below it, each once.
    std::unordered_map<Id, Id> copies;
    std::vector<Id> left{use.node}, order;
    while (!left.empty()) {
        const Id id = left.back();
        left.pop_back();
        const Gate* gate = tree.gate(id);
        if (!gate || copies.contains(id)) continue;
        Gate copy = *gate;
        copy.id = tree.newNodeId(id);
        copies[id] = copy.id;
        order.push_back(copy.id);
        for (const Reference& input : gate->inputs)
            left.push_back(input.id);
        tree.addGate(std::move(copy));
    }
    for (const Id& id : order)
        for (Reference& input : tree.gate(id)->inputs)
            if (const auto copy = copies.find(input.id); copy != copies.end())
                input.id = copy->second;
    const Id made = copies[use.node];
    const std::string about = tree.name(use.node);
    if (use.parent.empty()) {
        if (use.row >= tree.project.tops.size() || tree.project.tops[use.row].node.id != use.node)
            return noSuchNode(use.node);
        tree.project.tops[use.row].node.id = made;
    } else {
        if (const auto problem = takeOut(tree, use)) return *problem;
        if (const auto problem = putIn(tree, {use.parent, use.row}, made)) return *problem;
    }
    return tree.done("Separate %1", about, {made});
}

} // namespace cutwater::project::edits
