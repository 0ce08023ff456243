// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/arrange.h"

#include "models/project/edits/insert.h"

#include <algorithm>
#include <fmt/format.h>
#include <tuple>

namespace cutwater::project::edits {

namespace {

// From the last row to the first, so that taking one out does not move the others.
std::vector<Use> fromBehind(std::vector<Use> uses) {
    std::stable_sort(uses.begin(), uses.end(), [](const Use& a, const Use& b) {
        return std::tie(b.row, b.parent, b.node) < std::tie(a.row, a.parent, a.node);
    });
    uses.erase(std::unique(uses.begin(), uses.end()), uses.end());
    return uses;
}

std::string aboutOf(Tree& tree, const std::vector<Use>& uses) {
    return uses.size() == 1 ? tree.name(uses.front().node) : fmt::format("{} items", uses.size());
}

} // namespace

Result removeUses(const Project& project, const std::vector<Use>& uses) {
    if (uses.empty()) return refuse("nothing is chosen", "choose an event or a gate");
    Tree tree(project);
    const std::string about = aboutOf(tree, uses);
    std::vector<Id> candidates;
    for (const Use& use : fromBehind(uses)) {
        if (const auto problem = takeOut(tree, use)) return *problem;
        candidates.push_back(use.node);
    }
    eraseUnused(tree.project, candidates);
    const Use& first = uses.front();
    std::vector<Id> touched; // what stands there now, or what stood above
    Tree after(tree.project);
    if (!first.parent.empty()) {
        const Gate* gate = after.gate(first.parent);
        if (gate && !gate->inputs.empty())
            touched.push_back(gate->inputs[std::min(first.row, gate->inputs.size() - 1)].id);
        else if (gate)
            touched.push_back(gate->id);
    }
    return after.done("Delete %1", about, std::move(touched));
}

Result moveUses(const Project& project, const std::vector<Use>& uses, const Place& place) {
    if (uses.empty()) return refuse("nothing is chosen", "choose an event or a gate");
    Tree tree(project);
    const std::string about = aboutOf(tree, uses);
    if (const auto problem = openParent(tree, place.parent)) return *problem;
    Place at = place;
    if (at.row == kLast) {
        const Gate* gate = tree.gate(place.parent);
        at.row = gate ? gate->inputs.size() : tree.project.tops.size();
    }
    const std::size_t target = at.row;
    std::vector<TopEvent> kept; // top events moved among themselves keep what they say
    auto& tops = tree.project.tops;
    for (const Use& use : fromBehind(uses)) {
        if (use.parent.empty() && place.parent.empty() && use.row < tops.size()) {
            kept.push_back(tops[use.row]);
            tops.erase(tops.begin() + static_cast<std::ptrdiff_t>(use.row));
        } else if (const auto problem = takeOut(tree, use)) {
            return *problem;
        }
        if (use.parent == place.parent && use.row < target && target < kLoose) --at.row;
    }
    std::vector<Id> touched;
    for (const Use& use : uses) {
        const auto top = std::find_if(kept.begin(), kept.end(), [&](const TopEvent& each) {
            return each.node.id == use.node;
        });
        if (top != kept.end())
            tops.insert(tops.begin() + static_cast<std::ptrdiff_t>(std::min(at.row, tops.size())),
                        *top);
        else if (const auto problem = putIn(tree, at, use.node))
            return *problem;
        if (at.row < kLoose) ++at.row;
        touched.push_back(use.node);
    }
    return tree.done("Move %1", about, std::move(touched));
}

Result reorder(const Project& project, const Use& use, int steps) {
    Tree tree(project);
    const auto turn = [&](auto& list) -> std::optional<Problem> {
        const auto row = static_cast<std::ptrdiff_t>(use.row);
        const std::ptrdiff_t to = row + steps;
        if (use.row >= list.size()) return noSuchNode(use.node);
        if (to < 0 || to >= static_cast<std::ptrdiff_t>(list.size()))
            return refuse(fmt::format("{} is the {} one already", tree.words(use.node),
                                      to < 0 ? "first" : "last"),
                          "move it to another gate");
        auto begin = list.begin();
        if (to < row)
            std::rotate(begin + to, begin + row, begin + row + 1);
        else
            std::rotate(begin + row, begin + row + 1, begin + to + 1);
        return {};
    };
    std::optional<Problem> problem;
    if (Gate* gate = tree.gate(use.parent))
        problem = turn(gate->inputs);
    else if (use.parent.empty())
        problem = turn(tree.project.tops);
    else
        problem = noSuchNode(use.parent);
    if (problem) return *problem;
    const std::string about = tree.name(use.node);
    return tree.done(steps < 0 ? "Move %1 up" : "Move %1 down", about, {use.node});
}

Result insertGateAbove(const Project& project, const std::vector<Use>& uses, GateKind kind,
                       const std::string& name) {
    if (uses.empty()) return refuse("nothing is chosen", "choose what the new gate shall hold");
    Tree tree(project);
    const Id parent = uses.front().parent;
    for (const Use& use : uses)
        if (use.parent != parent || use.row >= kLoose)
            return refuse("what is chosen does not stand below one gate",
                          "choose events and gates that stand side by side");
    Gate made;
    made.id = tree.newNodeId(name.empty() ? "gate" : name);
    made.name = name;
    made.kind = kind;
    if (kind == GateKind::vote) made.k = uses.size() > 1 ? 2 : 1;
    std::vector<Use> inOrder = fromBehind(uses);
    std::reverse(inOrder.begin(), inOrder.end());
    for (const Use& use : inOrder)
        made.inputs.push_back({use.node, {}});
    const Id id = made.id;
    const std::size_t row = inOrder.front().row;
    const std::string about = aboutOf(tree, uses);
    tree.addGate(std::move(made));
    if (parent.empty()) {
        if (inOrder.size() > 1 || row >= tree.project.tops.size() ||
            tree.project.tops[row].node.id != uses.front().node)
            return refuse("a gate cannot stand above several top events",
                          "choose one top event, or move them below one gate");
        tree.project.tops[row].node.id = id;
    } else {
        for (const Use& use : fromBehind(uses))
            if (const auto problem = takeOut(tree, use)) return *problem;
        if (const auto problem = putIn(tree, {parent, row}, id)) return *problem;
    }
    return tree.done("Put a gate above %1", about, {id});
}

Result dissolveGate(const Project& project, const Id& id) {
    Tree tree(project);
    const Gate* gate = tree.gate(id);
    if (!gate)
        return tree.event(id) ? refuse(fmt::format("{} is an event", tree.words(id)),
                                       "choose a gate, or delete the event")
                              : noSuchNode(id);
    std::vector<Reference> inputs = gate->inputs;
    if (!gate->condition.id.empty()) inputs.push_back(gate->condition);
    const std::string about = tree.name(id);
    for (TopEvent& top : tree.project.tops) {
        if (top.node.id != id) continue;
        if (inputs.size() != 1)
            return refuse(
                fmt::format("{} is a top event with {} inputs", tree.words(id), inputs.size()),
                "a tree has one beginning: leave one input first");
        top.node.id = inputs.front().id;
    }
    for (Gate& parent : tree.project.gates) {
        if (parent.id == id) continue;
        for (std::size_t row = 0; row < parent.inputs.size(); ++row) {
            if (parent.inputs[row].id != id) continue;
            std::vector<Reference> fresh;
            for (const Reference& input : inputs)
                if (std::none_of(parent.inputs.begin(), parent.inputs.end(),
                                 [&](const Reference& each) { return each.id == input.id; }))
                    fresh.push_back(input);
            const auto at =
                parent.inputs.erase(parent.inputs.begin() + static_cast<std::ptrdiff_t>(row));
            parent.inputs.insert(at, fresh.begin(), fresh.end());
            break;
        }
    }
    std::erase_if(tree.project.gates, [&](const Gate& each) { return each.id == id; });
    std::vector<Id> touched;
    std::vector<Id> candidates;
    for (const Reference& input : inputs) {
        touched.push_back(input.id);
        candidates.push_back(input.id);
    }
    eraseUnused(tree.project, candidates); // of a gate that nothing used
    return tree.done("Dissolve %1", about, std::move(touched));
}

} // namespace cutwater::project::edits
