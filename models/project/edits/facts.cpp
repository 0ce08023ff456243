// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/facts.h"

#include "models/project/edits/insert.h"

#include <algorithm>
#include <fmt/format.h>

namespace cutwater::project::edits {

namespace {

Problem notAnEvent(Tree& tree, const Id& id) {
    return tree.gate(id) ? refuse(fmt::format("{} is a gate", tree.words(id)), "choose an event")
                         : noSuchNode(id);
}

} // namespace

Result rename(const Project& project, const Id& node, const std::string& name) {
    if (name.find_first_not_of(" \t\n") == std::string::npos)
        return refuse("the text is empty", "type what fails, or delete the item");
    Tree tree(project);
    Event* event = tree.event(node);
    Gate* gate = tree.gate(node);
    if (!event && !gate) return noSuchNode(node);
    std::string& text = event ? event->name : gate->name;
    for (TopEvent& top : tree.project.tops)
        if (top.node.id == node && (top.name == text || top.name.empty())) top.name = name;
    text = name;
    const std::string about = tree.name(node);
    return tree.done("Rename to %1", about, {node});
}

Result setGateKind(const Project& project, const Id& node, GateKind kind) {
    Tree tree(project);
    if (!tree.exists(node)) return noSuchNode(node);
    if (const auto problem = openParent(tree, node)) return *problem;
    Gate& gate = *tree.gate(node);
    if (gate.kind != kind) {
        gate.kind = kind;
        gate.k.reset();
        if (kind == GateKind::vote) gate.k = gate.inputs.size() > 1 ? 2 : 1;
        if (kind != GateKind::inhibit && !gate.condition.id.empty()) {
            gate.inputs.push_back(gate.condition);
            gate.condition = {};
        }
        if (kind == GateKind::inhibit && gate.condition.id.empty()) {
            const auto condition =
                std::find_if(gate.inputs.begin(), gate.inputs.end(), [&](const Reference& each) {
                    const Event* event = tree.event(each.id);
                    return event && event->kind == EventKind::conditioning;
                });
            if (condition != gate.inputs.end()) {
                gate.condition = *condition;
                gate.inputs.erase(condition);
            }
        }
    }
    const std::string about = tree.name(node);
    return tree.done(fmt::format("Make %1 a gate of the kind {}", word(kind)), about, {node});
}

Result setK(const Project& project, const Id& node, int k) {
    Tree tree(project);
    Gate* gate = tree.gate(node);
    if (!gate)
        return tree.event(node)
                   ? refuse(fmt::format("{} is an event", tree.words(node)), "choose a gate")
                   : noSuchNode(node);
    const auto size = static_cast<long>(gate->inputs.size());
    if (k < 1 || k > std::max(size, 1L))
        return refuse(
            fmt::format("{} has {} inputs and cannot need {} of them", tree.words(node), size, k),
            fmt::format("choose a number from 1 to {}", std::max(size, 1L)));
    if (!gate->condition.id.empty()) gate->inputs.push_back(std::move(gate->condition));
    gate->condition = {};
    gate->kind = GateKind::vote;
    gate->k = k;
    const std::string about = tree.name(node);
    return tree.done(fmt::format("Let %1 need {} of its inputs", k), about, {node});
}

Result setEventKind(const Project& project, const Id& node, EventKind kind) {
    Tree tree(project);
    if (const Gate* gate = tree.gate(node)) {
        if (!gate->inputs.empty() || !gate->condition.id.empty())
            return refuse(fmt::format("{} is a gate with inputs", tree.words(node)),
                          "take the inputs away first, or choose a kind of gate");
        Event event;
        event.id = gate->id;
        event.name = gate->name;
        event.remark = gate->remark;
        event.line = gate->line;
        event.kept = gate->kept;
        tree.replaceGate(node, std::move(event));
    }
    Event* event = tree.event(node);
    if (!event) return noSuchNode(node);
    event->kind = kind;
    if (kind != EventKind::house) event->state = false;
    const std::string about = tree.name(node);
    return tree.done(fmt::format("Make %1 an event of the kind {}", word(kind)), about, {node});
}

Result setState(const Project& project, const Id& id, bool state) {
    Tree tree(project);
    Event* event = tree.event(id);
    if (!event) return notAnEvent(tree, id);
    if (event->kind != EventKind::house)
        return refuse(fmt::format("{} is no house event", tree.words(id)),
                      "make it a house event first");
    event->state = state;
    const std::string about = tree.name(id);
    return tree.done(state ? "Set %1 to true" : "Set %1 to false", about, {id});
}

Result setMode(const Project& project, const Id& id, const Id& mode) {
    Tree tree(project);
    Event* event = tree.event(id);
    if (!event) return notAnEvent(tree, id);
    const std::string about = tree.name(id);
    if (!mode.empty()) {
        const bool exists = std::any_of(project.modes.begin(), project.modes.end(),
                                        [&](const FailureMode& each) { return each.id == mode; });
        if (!exists)
            return refuse(fmt::format("the plant has no failure mode {}", mode),
                          "choose one that is there");
        for (const Event& each : project.events)
            if (each.mode == mode && each.id != id)
                return refuse(fmt::format("{} is that failure mode already", tree.words(each.id)),
                              "use that event once more instead of a second one: it is the same "
                              "failure");
        event->model = {};
    }
    event->mode = mode;
    return tree.done(mode.empty() ? "Take the failure mode from %1" : "Give %1 a failure mode",
                     about, {id});
}

Result setModel(const Project& project, const Id& id, const FailureModel& model) {
    Tree tree(project);
    Event* event = tree.event(id);
    if (!event) return notAnEvent(tree, id);
    if (event->mode.empty()) {
        event->model = model;
    } else {
        auto& modes = tree.project.modes;
        const auto mode = std::find_if(modes.begin(), modes.end(), [&](const FailureMode& each) {
            return each.id == event->mode;
        });
        if (mode == modes.end())
            return refuse(fmt::format("the plant has no failure mode {}", event->mode),
                          "choose one that is there");
        mode->model = model;
    }
    const std::string about = tree.name(id);
    return tree.done("Change the failure model of %1", about, {id});
}

Result setRemark(const Project& project, const Id& node, const std::string& remark) {
    Tree tree(project);
    if (Event* event = tree.event(node))
        event->remark = remark;
    else if (Gate* gate = tree.gate(node))
        gate->remark = remark;
    else
        return noSuchNode(node);
    const std::string about = tree.name(node);
    return tree.done("Change the remark of %1", about, {node});
}

Result makeTop(const Project& project, const Id& node) {
    Tree tree(project);
    if (const auto problem = putIn(tree, {}, node)) return *problem;
    const std::string about = tree.name(node);
    return tree.done("Make %1 a top event", about, {node});
}

Result setTopFacts(const Project& project, const TopEvent& facts) {
    Tree tree(project);
    TopEvent* top = tree.top(facts.id);
    if (!top)
        return refuse(fmt::format("there is no top event {}", facts.id),
                      "choose one that is there");
    top->name = facts.name;
    top->operatingMode = facts.operatingMode;
    top->severity = facts.severity;
    top->endEffects = facts.endEffects;
    top->asked = facts.asked;
    top->remark = facts.remark;
    const Id node = top->node.id;
    return tree.done("Change top event %1", facts.id, {node});
}

Result setProjectFacts(const Project& project, const Project& facts) {
    Tree tree(project);
    Project& made = tree.project;
    made.name = facts.name;
    made.plant = facts.plant;
    made.description = facts.description;
    made.revision = facts.revision;
    made.date = facts.date;
    made.preparedBy = facts.preparedBy;
    made.checkedBy = facts.checkedBy;
    made.operatingMode = facts.operatingMode;
    made.rules = facts.rules;
    made.assumptions = facts.assumptions;
    made.cautions = facts.cautions;
    return tree.done("Change the facts of the project", {});
}

} // namespace cutwater::project::edits
