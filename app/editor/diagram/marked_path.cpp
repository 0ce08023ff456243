// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/marked_path.h"

namespace cutwater::editor {
namespace {

using drawing::Item;
using drawing::ItemRole;
using drawing::kNoItem;
using project::GateKind;

// Of each item: whether what stands there happens.
class Course {
public:
    Course(const Tree& tree, const std::set<project::Id>& marked)
        : m_tree(tree), m_occurs(tree.unfolded.items.size(), false) {
        // A reference may stand before or after its home: inputs are asked from the bottom up, as
        // often as it takes to go through the gates in an order of their own.
        std::vector<int> state(m_occurs.size(), 0); // 0 fresh, 1 open, 2 done
        std::vector<std::size_t> open{0};
        while (!open.empty()) {
            const std::size_t i = open.back();
            const Item& item = tree.item(i);
            if (state[i] == 2) {
                open.pop_back();
                continue;
            }
            if (state[i] == 1) {
                m_occurs[i] = occurs(item, marked);
                state[i] = 2;
                open.pop_back();
                continue;
            }
            state[i] = 1;
            const auto ask = [&](std::size_t child) {
                const std::size_t at = place(child);
                if (at != kNoItem && state[at] == 0) open.push_back(at);
            };
            for (const std::size_t child : item.children)
                ask(child);
            if (item.condition != kNoItem) ask(item.condition);
        }
    }

    bool at(std::size_t i) const {
        const std::size_t there = place(i);
        return there != kNoItem && m_occurs[there];
    }

    std::size_t place(std::size_t i) const {
        const Item& item = m_tree.item(i);
        return item.role == ItemRole::itself ? i : m_tree.homeOf(item.node);
    }

private:
    bool occurs(const Item& item, const std::set<project::Id>& marked) const {
        if (marked.contains(item.node)) return true;
        if (item.event) return item.event->kind == project::EventKind::house && item.event->state;
        std::size_t count = 0;
        for (const std::size_t child : item.children)
            if (at(child)) ++count;
        const std::size_t all = item.children.size();
        switch (item.gate->kind) {
        case GateKind::andGate:
        case GateKind::priorityAnd: return all > 0 && count == all;
        case GateKind::orGate: return count > 0;
        case GateKind::vote:
            return static_cast<int>(count) >= item.gate->k.value_or(static_cast<int>(all)) &&
                   count > 0;
        case GateKind::inhibit:
            return all > 0 && count == all && (item.condition == kNoItem || at(item.condition));
        case GateKind::exactlyOne: return count == 1;
        case GateKind::notGate: return count == 0;
        }
        return false;
    }

    const Tree& m_tree;
    std::vector<bool> m_occurs;
};

} // namespace

MarkedPath markedPath(const Tree& tree, const std::set<project::Id>& marked) {
    MarkedPath result;
    if (marked.empty()) return result;
    result.nodes = marked;
    const Course course(tree, marked);
    result.reachesTop = course.at(0);
    if (!result.reachesTop) return result;
    std::vector<std::size_t> open{0};
    std::vector<bool> seen(tree.unfolded.items.size(), false);
    while (!open.empty()) {
        const std::size_t i = open.back();
        open.pop_back();
        if (seen[i]) continue;
        seen[i] = true;
        const Item& item = tree.item(i);
        result.nodes.insert(item.node);
        const auto follow = [&](std::size_t child) {
            if (course.at(child)) open.push_back(course.place(child));
        };
        for (const std::size_t child : item.children)
            follow(child);
        if (item.condition != kNoItem) follow(item.condition);
    }
    return result;
}

} // namespace cutwater::editor
