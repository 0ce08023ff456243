// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/tree.h"

#include <unordered_set>

namespace cutwater::editor {

using drawing::Item;
using drawing::ItemRole;
using drawing::kNoItem;

std::size_t Tree::homeOf(const project::Id& node) const {
    const auto found = home.find(node);
    return found == home.end() ? kNoItem : found->second;
}

bool Tree::isHomeGate(std::size_t i) const {
    return item(i).gate && item(i).role == ItemRole::itself && !item(i).children.empty();
}

bool Tree::reaches(const project::Id& above, const project::Id& node) const {
    std::unordered_set<std::string_view> seen;
    std::vector<std::string_view> open{above};
    while (!open.empty()) {
        const std::string_view at = open.back();
        open.pop_back();
        if (at == node) return true;
        if (!seen.insert(at).second) continue;
        const project::Gate* gate = index.gate(at);
        if (!gate) continue;
        for (const project::Reference& input : gate->inputs)
            open.push_back(input.id);
        if (!gate->condition.id.empty()) open.push_back(gate->condition.id);
    }
    return false;
}

project::Outcome<std::shared_ptr<const Tree>>
makeTree(std::shared_ptr<const project::Project> project, const project::Id& top) {
    auto tree = std::make_shared<Tree>(std::move(project));
    if (const project::TopEvent* found = tree->index.top(top)) {
        tree->top = *found;
    } else {
        tree->top.id = top;
        tree->top.node.id = top;
        if (const project::Gate* gate = tree->index.gate(top)) tree->top.name = gate->name;
        if (const project::Event* event = tree->index.event(top)) tree->top.name = event->name;
    }
    project::Outcome<drawing::Unfolded> unfolded = drawing::unfold(tree->index, tree->top.node.id);
    if (!unfolded) {
        project::Problems problems = unfolded.problems();
        // Here a lower gate is not named, it is chosen.
        if (problems.front().what.find("more than") != std::string::npos)
            problems.front().remedy = "choose a gate further down in the outline and make it a top "
                                      "event (Ctrl+Shift+T): its tree can be drawn";
        return problems;
    }
    tree->unfolded = std::move(*unfolded);
    const std::vector<Item>& items = tree->unfolded.items;
    tree->eventsBelow.assign(items.size(), 0);
    for (std::size_t i = items.size(); i-- > 0;) {
        const Item& item = items[i];
        ++tree->times[item.node];
        if (item.role == ItemRole::itself) tree->home[item.node] = i;
        if (item.parent == kNoItem) continue;
        tree->eventsBelow[item.parent] +=
            tree->isHomeGate(i) ? tree->eventsBelow[i] : std::size_t{1};
    }
    return std::shared_ptr<const Tree>(std::move(tree));
}

} // namespace cutwater::editor
