// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/insert.h"

#include <algorithm>
#include <fmt/format.h>

namespace cutwater::project::edits {

namespace {

// What an event is besides its name, in words; empty where it is nothing else.
std::string factsOf(const Project& project, const Event& event) {
    if (!event.mode.empty()) return "is failure mode " + event.mode + " of the plant";
    if (event.model != FailureModel()) return "has a failure model of its own";
    if (event.kind == EventKind::house || event.kind == EventKind::conditioning)
        return fmt::format("is a {} event", word(event.kind));
    const auto isIt = [&](const Reference& each) { return each.id == event.id; };
    for (const CommonCauseGroup& group : project.commonCauses)
        if (std::any_of(group.members.begin(), group.members.end(), isIt))
            return "belongs to common-cause group " + group.id;
    for (const Assessment& assessment : project.assessments)
        for (const ForcedEvent& forced : assessment.forced)
            if (isIt(forced.event)) return "is set in assessment " + assessment.id;
    for (const Gate& gate : project.gates)
        if (gate.condition.id == event.id) return "is the condition of gate " + gate.id;
    return {};
}

} // namespace

std::optional<Problem> openParent(Tree& tree, const Id& parent) {
    if (parent.empty() || tree.gate(parent)) return {};
    const Event* event = tree.event(parent);
    if (!event) return noSuchNode(parent);
    if (const std::string facts = factsOf(tree.project, *event); !facts.empty())
        return refuse(
            fmt::format("{} {} and so can have nothing below it", tree.words(parent), facts),
            "put a gate above it, or take that away first");
    Gate gate;
    gate.id = event->id;
    gate.name = event->name;
    gate.remark = event->remark;
    gate.line = event->line;
    gate.kept = event->kept;
    tree.replaceEvent(parent, std::move(gate));
    return {};
}

std::optional<Problem> putIn(Tree& tree, const Place& place, const Id& node) {
    if (!tree.exists(node)) return noSuchNode(node);
    if (place.parent.empty()) {
        for (const TopEvent& each : tree.project.tops)
            if (each.node.id == node)
                return refuse(fmt::format("{} is a top event already", tree.words(node)),
                              "look for it among the trees");
        TopEvent top;
        top.id = tree.newTopId();
        top.name = tree.gate(node) ? tree.gate(node)->name : tree.event(node)->name;
        top.node.id = node;
        auto& tops = tree.project.tops;
        tops.insert(tops.begin() + static_cast<std::ptrdiff_t>(std::min(place.row, tops.size())),
                    std::move(top));
        return {};
    }
    Gate* gate = tree.gate(place.parent);
    if (!gate) return noSuchNode(place.parent);
    if (tree.reaches(node, place.parent))
        return refuse(node == place.parent
                          ? fmt::format("{} cannot stand below itself", tree.words(node))
                          : fmt::format("{} stands above {} and would stand below itself",
                                        tree.words(node), tree.words(place.parent)),
                      "choose another place");
    if (place.row == kCondition) {
        if (!tree.event(node))
            return refuse(
                fmt::format("{} is a gate, and a condition is an event", tree.words(node)),
                "choose an event");
        if (gate->kind != GateKind::inhibit || !gate->condition.id.empty())
            return refuse(fmt::format("{} takes no condition", tree.words(place.parent)),
                          "make it an inhibit gate without a condition first");
        gate->condition.id = node;
        return {};
    }
    const bool isThere = gate->condition.id == node ||
                         std::any_of(gate->inputs.begin(), gate->inputs.end(),
                                     [&](const Reference& each) { return each.id == node; });
    if (isThere)
        return refuse(
            fmt::format("{} stands below {} already", tree.words(node), tree.words(place.parent)),
            "choose another place");
    const std::size_t row = std::min(place.row, gate->inputs.size());
    gate->inputs.insert(gate->inputs.begin() + static_cast<std::ptrdiff_t>(row), {node, {}});
    return {};
}

std::optional<Problem> takeOut(Tree& tree, const Use& use) {
    const auto gone = [&] {
        return refuse(fmt::format("{} is not where it was", tree.words(use.node)),
                      "choose it once more");
    };
    if (use.parent.empty()) {
        if (use.row == kLoose) return tree.exists(use.node) ? std::nullopt : std::optional(gone());
        auto& tops = tree.project.tops;
        if (use.row >= tops.size() || tops[use.row].node.id != use.node) return gone();
        const Id id = tops[use.row].id;
        const auto entries =
            std::count_if(tree.project.log.begin(), tree.project.log.end(),
                          [&](const LogEntry& each) { return each.topEvent == id; });
        if (entries > 0)
            return refuse(fmt::format("{} {} of the log {} of top event {}", entries,
                                      entries == 1 ? "entry" : "entries",
                                      entries == 1 ? "speaks" : "speak", id),
                          "change the log first");
        tops.erase(tops.begin() + static_cast<std::ptrdiff_t>(use.row));
        return {};
    }
    Gate* gate = tree.gate(use.parent);
    if (!gate) return gone();
    if (use.row == kCondition) {
        if (gate->condition.id != use.node) return gone();
        gate->condition = {};
        return {};
    }
    if (use.row >= gate->inputs.size() || gate->inputs[use.row].id != use.node) return gone();
    gate->inputs.erase(gate->inputs.begin() + static_cast<std::ptrdiff_t>(use.row));
    return {};
}

} // namespace cutwater::project::edits
