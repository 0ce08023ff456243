// SPDX-License-Identifier: GPL-3.0-or-later
// Tree: a snapshot of the project, read once for the diagram. Made in the worker, then never
// changed: any thread may read it.
#pragma once

#include "app/drawing/unfold.h"
#include "models/project/index.h"

#include <memory>
#include <set>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace cutwater::editor {

struct Tree {
    std::shared_ptr<const project::Project> project;
    project::Index index;
    project::TopEvent top; // made up where a gate is looked at
    drawing::Unfolded unfolded;
    std::unordered_map<std::string_view, std::size_t> home;  // of each node: where it is drawn
    std::unordered_map<std::string_view, std::size_t> times; // how often it stands in the tree
    std::vector<std::size_t> eventsBelow; // of each item: boxes of events in what is drawn below

    explicit Tree(std::shared_ptr<const project::Project> snapshot)
        : project(std::move(snapshot)), index(*project) {}
    const drawing::Item& item(std::size_t i) const { return unfolded.items[i]; }
    std::size_t homeOf(const project::Id& node) const; // kNoItem where it is not in the tree
    bool isHomeGate(std::size_t i) const;              // drawn here, with inputs below it
    // Whether `node` is `below` or stands somewhere below it. No recursion.
    bool reaches(const project::Id& above, const project::Id& node) const;
};

// `top` is a top event, or a gate or an event. Problems: it is not there, over kMaxItems.
project::Outcome<std::shared_ptr<const Tree>>
makeTree(std::shared_ptr<const project::Project> project, const project::Id& top);

} // namespace cutwater::editor
