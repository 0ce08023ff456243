// SPDX-License-Identifier: GPL-3.0-or-later
// A plant to edit: B1 (FP-1 with its SEAL, FP-2) and PS; FP-1 supplies FP-2, is at the end of one
// connection and on the way of another, stands in the log, and its mode is the event `pump`.
#pragma once

#include "tests/models/project/edits/small_tree.h"

#include <memory>
#include <utility>

namespace cutwater::test {

inline Component part(const char* id, const char* name, const char* parent) {
    Component component;
    component.id = component.tag = id;
    component.name = name;
    component.parent = parent;
    return component;
}

inline Project smallPlant() {
    Project project;
    project.components = {part("B1", "boiler", ""), part("FP-1", "fuel pump", "B1"),
                          part("SEAL", "shaft seal", "FP-1"), part("FP-2", "fuel pump", "B1"),
                          part("PS", "power supply", "")};
    project.components[3].suppliedBy = {{"FP-1", {}}};
    FailureMode mode;
    mode.id = "FP-1.stops";
    mode.component = "FP-1";
    mode.name = "stops";
    mode.model.kind = ModelKind::probability;
    Quantity chance;
    chance.value = 0.25;
    chance.unit = Unit::number;
    mode.model.set(Role::probability, chance);
    project.modes = {mode};
    Connection feed;
    feed.id = "feed";
    feed.medium = "230 V AC";
    feed.from = "PS";
    feed.to = "FP-1";
    Connection through = feed;
    through.id = "through";
    through.to = "FP-2";
    through.through = {{"FP-1", {}}};
    project.connections = {feed, through};
    project.events = {smallEvent("pump", "")};
    project.events[0].mode = "FP-1.stops";
    LogEntry entry;
    entry.id = "L1";
    entry.date = "2026-01-02";
    entry.component = "FP-1";
    entry.mode = "FP-1.stops";
    entry.found = "bearing seized";
    project.log = {entry};
    Exposure exposure;
    exposure.component = "FP-1";
    exposure.from = "2025-01-01";
    exposure.to = "2025-12-31";
    exposure.calendarHours = 8760;
    project.exposures = {exposure};
    return project;
}

template <typename P>
auto* partOf(P& project, const Id& id) {
    const auto found = std::find_if(project.components.begin(), project.components.end(),
                                    [&](const Component& each) { return each.id == id; });
    return found == project.components.end() ? nullptr : &*found;
}

inline const FailureMode* modeOf(const Project& project, const Id& id) {
    const auto found = std::find_if(project.modes.begin(), project.modes.end(),
                                    [&](const FailureMode& each) { return each.id == id; });
    return found == project.modes.end() ? nullptr : &*found;
}

inline std::vector<Id> partsOf(const Project& project, const Id& parent) {
    std::vector<Id> ids;
    for (const Component& each : project.components)
        if (each.parent == parent) ids.push_back(each.id);
    return ids;
}

} // namespace cutwater::test
