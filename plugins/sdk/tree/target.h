// SPDX-License-Identifier: GPL-3.0-or-later
// Which top events an analysis is asked about, and the parameters that most tree analyses share.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"
#include "plugins/sdk/interfaces.h"

#include <string>
#include <vector>

namespace cutwater::sdk::tree {

struct Target {
    project::Id id;   // of the top event, or of the gate or event that was named itself
    project::Id node; // where the tree starts
    std::string name;
    int line = 0;
};

// `wish` empty: all top events of the project, in its order. Otherwise the top event with this id
// or, where there is none, the gate or event. Problems: no such thing; no top event at all.
project::Outcome<std::vector<Target>> targetsOf(const project::Project& project,
                                                const project::Index& index,
                                                const std::optional<std::string>& wish);

// "top": the ids of the project's top events are offered where a project is given.
Parameter topParameter(const project::Project* project);
// "mission", in hours: for models that have no mission time of their own.
Parameter missionParameter();

// The event's name; where it has none its component and failure mode, or at least its id.
std::string readableName(const project::Index& index, const project::Event& event);

} // namespace cutwater::sdk::tree
