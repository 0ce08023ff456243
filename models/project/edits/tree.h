// SPDX-License-Identifier: GPL-3.0-or-later
// Tree: a project being edited, with its nodes found by id. Private to the folder.
#pragma once

#include "models/project/edits/changed.h"
#include "models/project/edits/ids.h"
#include "models/project/edits/place.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <utility>
#include <vector>

namespace cutwater::project::edits {

// Look-ups stay right while nodes are added through addEvent() and addGate() and while inputs
// change; not after anything was erased.
class Tree {
public:
    explicit Tree(const Project& project);

    Project project;

    Event* event(std::string_view id);
    Gate* gate(std::string_view id);
    bool exists(std::string_view id) { return event(id) || gate(id); }
    TopEvent* top(std::string_view id);

    void addEvent(Event event);
    void addGate(Gate gate);
    // The event of that id becomes this gate; the places of the others change.
    void replaceEvent(const Id& id, Gate gate);
    void replaceGate(const Id& id, Event event);

    // For sentences: its name in quotes, or its id where it has none; shortened.
    std::string words(std::string_view id);
    // The text alone, for undo names.
    std::string name(std::string_view id);

    // An id that no node has, made from words: "Pump A stops" -> "pump-a-stops", "pump-a-stops-2".
    Id newNodeId(std::string_view from);
    Id newTopId();

    // Whether `below` is `above` or stands anywhere below it.
    bool reaches(const Id& above, const Id& below);

    Changed done(std::string doing, std::string about, std::vector<Id> touched = {});

private:
    void indexAll();

    // Position in project.events (>= 0) or -1 - position in project.gates.
    std::unordered_map<std::string, std::int64_t> m_nodes;
};

Problem refuse(std::string what, std::string remedy);
Problem noSuchNode(std::string_view id);

// Every use of every node as an input, condition or top event.
std::unordered_map<std::string_view, int> countUses(const Project& project);

// What a remove took away, in words, or why it may not: see remove.h. Erases `candidates` that are
// not used any more, and what then is not used below them; `project` has lost their uses already.
void eraseUnused(Project& project, std::vector<Id> candidates);

} // namespace cutwater::project::edits
