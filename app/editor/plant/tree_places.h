// SPDX-License-Identifier: GPL-3.0-or-later
// TreePlaces: in which trees a failure mode stands. Made in linear time; each question walks only
// up from the events that are the mode.
#pragma once

#include "app/editor/session/session.h"

#include <cstddef>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace cutwater::editor {

class TreePlaces {
public:
    explicit TreePlaces(Snapshot project);

    // Events that are the mode, whether they are in a tree or not.
    const std::vector<project::Id>& eventsOf(std::string_view mode) const;
    // Positions of the top events in whose tree the mode is, ascending.
    const std::vector<std::size_t>& topsOf(std::string_view mode) const;

private:
    Snapshot m_project;
    std::unordered_map<std::string_view, std::vector<project::Id>> m_events;
    std::unordered_map<std::string_view, std::vector<std::string_view>> m_parents;
    std::unordered_map<std::string_view, std::vector<std::size_t>> m_topsAt;
    mutable std::unordered_map<std::string_view, std::vector<std::size_t>> m_known;
};

} // namespace cutwater::editor
