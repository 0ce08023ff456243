// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/folds.h"

#include <deque>

namespace cutwater::editor {

using drawing::kNoItem;

namespace {

// The gate whose inputs show the spot; kNoItem where it is the root or not in the tree.
std::size_t gateOver(const Tree& tree, const Spot& spot) {
    const std::size_t parent = spot.parent.empty() ? kNoItem : tree.homeOf(spot.parent);
    if (parent != kNoItem) return parent;
    const std::size_t home = tree.homeOf(spot.node);
    return home == kNoItem ? kNoItem : tree.item(home).parent;
}

// Items that must be open so that the spots are seen.
std::set<std::size_t> above(const Tree& tree, const std::vector<Spot>& spots) {
    std::set<std::size_t> result;
    for (const Spot& spot : spots) {
        std::size_t at = gateOver(tree, spot);
        while (at != kNoItem && result.insert(at).second)
            at = tree.item(at).parent;
    }
    return result;
}

} // namespace

Folds settleFolds(const Tree& tree, const Folds& folds, const std::vector<Spot>& open,
                  std::size_t most) {
    const std::set<std::size_t> wanted = above(tree, open);
    Folds result = folds;
    std::size_t shown = 1;
    std::deque<std::size_t> waiting{0};
    std::vector<bool> closed(tree.unfolded.items.size(), false); // for lack of room
    const auto inputsOf = [&](std::size_t i) {
        return tree.item(i).children.size() + (tree.item(i).condition != kNoItem ? 1 : 0);
    };
    for (const std::size_t i : wanted) {
        if (shown + inputsOf(i) > std::max(most, kMostVisible)) continue;
        shown += inputsOf(i);
        result.erase(tree.item(i).node);
    }
    while (!waiting.empty()) {
        const std::size_t i = waiting.front();
        waiting.pop_front();
        if (!tree.isHomeGate(i)) continue;
        const project::Id& node = tree.item(i).node;
        const bool isOpen = wanted.contains(i) && !result.contains(node);
        if (!isOpen) {
            if (result.contains(node)) continue;
            if (shown + inputsOf(i) > most) {
                closed[i] = true;
                continue;
            }
            shown += inputsOf(i);
        }
        waiting.insert(waiting.end(), tree.item(i).children.begin(), tree.item(i).children.end());
    }
    for (std::size_t i = 0; i < closed.size(); ++i) { // a parent comes before its children
        const std::size_t parent = tree.item(i).parent;
        if (parent != kNoItem && closed[parent]) closed[i] = true;
        if (closed[i] && tree.isHomeGate(i)) result.insert(tree.item(i).node);
    }
    return result;
}

Folds revealed(const Tree& tree, Folds folds, const std::vector<Spot>& spots) {
    for (const std::size_t i : above(tree, spots))
        folds.erase(tree.item(i).node);
    return folds;
}

bool isHidden(const Tree& tree, const Folds& folds, const Spot& spot) {
    for (std::size_t i = gateOver(tree, spot); i != kNoItem; i = tree.item(i).parent)
        if (folds.contains(tree.item(i).node)) return true;
    return false;
}

std::vector<project::Id> gatesBelow(const Tree& tree, const project::Id& gate) {
    std::vector<project::Id> gates;
    const std::size_t home = tree.homeOf(gate);
    if (home == kNoItem) return gates;
    std::vector<std::size_t> open{home};
    while (!open.empty()) {
        const std::size_t i = open.back();
        open.pop_back();
        if (!tree.isHomeGate(i)) continue;
        gates.push_back(tree.item(i).node);
        open.insert(open.end(), tree.item(i).children.begin(), tree.item(i).children.end());
    }
    return gates;
}

} // namespace cutwater::editor
