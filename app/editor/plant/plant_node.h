// SPDX-License-Identifier: GPL-3.0-or-later
// One row of the plant. Private to PlantModel.
#pragma once

#include "app/editor/outline/typing_tree.h"
#include "app/editor/plant/plant_model.h"

#include <memory>
#include <vector>

namespace cutwater::editor {

struct PlantModel::Node {
    Node* parent = nullptr;
    Kind kind = Kind::component;
    project::Id id; // empty: the root, or the draft
    int row = 0;
    bool wanted = false; // by the filter
    std::vector<std::unique_ptr<Node>> children;

    Node() = default;
    Node(const Node&) = delete;
    Node& operator=(const Node&) = delete;
    ~Node() { takeDown(std::move(children)); }

    Node& add(Kind childKind, const project::Id& childId) {
        auto node = std::make_unique<Node>();
        node->parent = this;
        node->kind = childKind;
        node->id = childId;
        children.push_back(std::move(node));
        return *children.back();
    }

    // This one and all below it, a parent before its children.
    template <typename Do>
    void each(Do act) {
        std::vector<Node*> left{this};
        while (!left.empty()) {
            Node* node = left.back();
            left.pop_back();
            act(*node);
            for (const auto& child : node->children)
                left.push_back(child.get());
        }
    }

    // Takes away what is not wanted and has nothing wanted below it.
    void keepWanted() {
        std::vector<Node*> all;
        each([&](Node& node) { all.push_back(&node); });
        for (auto node = all.rbegin(); node != all.rend(); ++node) { // children first
            std::erase_if((*node)->children, [](const auto& child) { return !child->wanted; });
            if (!(*node)->children.empty()) (*node)->wanted = true;
        }
    }

    void number() {
        each([](Node& node) {
            for (std::size_t i = 0; i < node.children.size(); ++i)
                node.children[i]->row = static_cast<int>(i);
        });
    }

    bool sameAs(const Node& other) const {
        std::vector<std::pair<const Node*, const Node*>> left{{this, &other}};
        while (!left.empty()) {
            const auto [a, b] = left.back();
            left.pop_back();
            if (a->kind != b->kind || a->id != b->id || a->children.size() != b->children.size())
                return false;
            for (std::size_t i = 0; i < a->children.size(); ++i)
                left.emplace_back(a->children[i].get(), b->children[i].get());
        }
        return true;
    }
};

} // namespace cutwater::editor
