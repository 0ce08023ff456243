// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/unfold.h"

#include <fmt/format.h>

#include <string_view>
#include <unordered_set>

namespace cutwater::drawing {
namespace {

using project::Outcome;
using project::Problem;

Problem missing(const Item& item, const Unfolded& before) {
    Problem problem;
    problem.what = fmt::format("'{}' is neither an event nor a gate", item.node);
    problem.remedy = "add it, or remove the reference to it";
    if (item.parent != kNoItem) {
        const project::Gate* parent = before.items[item.parent].gate;
        problem.where = "gate " + parent->id;
        problem.line = parent->line.number;
    }
    return problem;
}

Problem tooLarge(const project::Id& node) {
    Problem problem;
    problem.what = fmt::format("the tree below {} has more than {} boxes", node, kMaxItems);
    problem.remedy = "draw parts of it: name a lower gate as the top";
    return problem;
}

} // namespace

Outcome<Unfolded> unfold(const project::Index& index, const project::Id& node) {
    Unfolded result;
    std::unordered_set<std::string_view> drawn;
    const auto add = [&](const project::Id& id, std::size_t parent) {
        Item item;
        item.node = id;
        item.parent = parent;
        result.items.push_back(std::move(item));
        return result.items.size() - 1;
    };
    std::vector<std::size_t> open{add(node, kNoItem)};
    while (!open.empty()) {
        const std::size_t at = open.back();
        open.pop_back();
        {
            Item& item = result.items[at];
            item.gate = index.gate(item.node);
            if (!item.gate) item.event = index.event(item.node);
            if (!item.gate && !item.event) return missing(item, result);
            const std::string_view id = item.gate ? item.gate->id : item.event->id;
            if (!drawn.insert(id).second) item.role = ItemRole::reference;
            if (item.role == ItemRole::reference || !item.gate) continue;
        }
        const project::Gate& gate = *result.items[at].gate;
        if (result.items.size() + gate.inputs.size() > kMaxItems) return tooLarge(node);
        for (const project::Reference& input : gate.inputs) {
            const std::size_t child = add(input.id, at);
            result.items[at].children.push_back(child);
        }
        const std::vector<std::size_t>& children = result.items[at].children;
        open.insert(open.end(), children.rbegin(), children.rend());
        if (gate.condition.id.empty()) continue;
        // The condition stands higher than the inputs, so it is read before them.
        const std::size_t condition = add(gate.condition.id, at);
        result.items[at].condition = condition;
        result.items[condition].beside = true;
        open.push_back(condition);
    }
    return result;
}

} // namespace cutwater::drawing
