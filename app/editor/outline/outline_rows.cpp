// SPDX-License-Identifier: GPL-3.0-or-later
// OutlineModel: rows after a change, and the way to a row.
#include "app/editor/outline/outline_node.h"

#include <algorithm>
#include <set>

namespace cutwater::editor {

void OutlineModel::update() {
    if (m_project == m_session.project()) return;
    dropDraft();
    take();
    // From the top; a row that goes takes those below it along.
    std::vector<Node*> left{m_root.get()};
    bool leavesChanged = false;
    while (!left.empty()) {
        Node* node = left.back();
        left.pop_back();
        if (!node->fetched) {
            if (hasInputs(*node)) continue;
            node->fetched = true; // it lost all its inputs before anybody looked
            leavesChanged = true;
            continue;
        }
        updateChildren(*node);
        for (const auto& child : node->children)
            left.push_back(child.get());
        if (!node->children.empty())
            emit dataChanged(indexOf(*node->children.front()),
                             indexOf(*node->children.back(), columnCount_ - 1));
    }
    if (leavesChanged) emit layoutChanged();
}

void OutlineModel::updateChildren(Node& node) {
    const auto wanted = wantedBelow(node);
    auto& children = node.children;
    const auto is = [](const Node& child, const Wanted& what) {
        return child.kind == what.kind && child.id == what.id;
    };
    const bool same =
        wanted.size() == children.size() &&
        std::equal(wanted.begin(), wanted.end(), children.begin(),
                   [&](const Wanted& what, const auto& child) { return is(*child, what); });
    if (same) return;
    const QModelIndex parent = indexOf(node);

    std::multiset<std::pair<Kind, std::string_view>> stay;
    for (const Wanted& what : wanted)
        stay.emplace(what.kind, what.id);
    for (std::size_t row = 0; row < children.size();) {
        const auto found = stay.find({children[row]->kind, children[row]->id});
        if (found != stay.end()) {
            stay.erase(found);
            ++row;
            continue;
        }
        const int at = static_cast<int>(row);
        beginRemoveRows(parent, at, at);
        children.erase(children.begin() + at);
        endRemoveRows();
    }
    for (std::size_t row = 0; row < wanted.size(); ++row) {
        const auto here = children.begin() + static_cast<std::ptrdiff_t>(row);
        const int at = static_cast<int>(row);
        if (row < children.size() && is(**here, wanted[row])) continue;
        const auto later = std::find_if(here, children.end(),
                                        [&](const auto& child) { return is(*child, wanted[row]); });
        if (later != children.end()) {
            const int from = static_cast<int>(later - children.begin());
            beginMoveRows(parent, from, from, parent, at);
            std::rotate(here, later, later + 1);
            endMoveRows();
        } else {
            auto made = make(node, wanted[row]);
            beginInsertRows(parent, at, at);
            children.insert(here, std::move(made));
            endInsertRows();
        }
    }
}

QModelIndex OutlineModel::reveal(const Spot& spot) {
    // Upwards by the shortest way to the start of a tree, then down by it.
    std::unordered_map<std::string_view, std::string_view> below; // from a gate towards the spot
    std::vector<std::string_view> level;
    const auto findRoot = [&](std::string_view id) -> Node* {
        for (const auto& child : m_root->children)
            if (child->id == id) return child.get();
        return nullptr;
    };
    std::string_view start;
    if (!spot.parent.empty()) {
        const auto parents = m_parents.find(spot.node);
        if (parents != m_parents.end() && std::find(parents->second.begin(), parents->second.end(),
                                                    spot.parent) != parents->second.end()) {
            below[spot.parent] = spot.node;
            level.push_back(spot.parent);
        }
    }
    if (level.empty()) level.push_back(spot.node);
    Node* at = nullptr;
    for (std::size_t i = 0; i < level.size(); ++i) {
        start = level[i];
        if ((at = findRoot(start))) break;
        const auto parents = m_parents.find(start);
        if (parents == m_parents.end()) continue;
        for (const std::string_view parent : parents->second)
            if (parent != spot.node && below.emplace(parent, start).second) level.push_back(parent);
    }
    if (!at) return {};
    while (at && at->id != spot.node) {
        const auto next = below.find(at->id);
        if (next == below.end()) return {};
        if (!at->fetched) fetchMore(indexOf(*at));
        Node* child = nullptr;
        for (const auto& each : at->children)
            if (each->id == next->second) child = each.get();
        at = child;
    }
    return at ? indexOf(*at) : QModelIndex();
}

} // namespace cutwater::editor
