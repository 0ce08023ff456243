// SPDX-License-Identifier: GPL-3.0-or-later
// What of a project one tree stands on, so that a half-typed gate elsewhere does not silence it.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <string>
#include <vector>

namespace cutwater::editor {

// The top event, everything below `node`, and the failure modes, components and shared numbers that
// it uses. Where an id stands twice both are in it, so that validate() finds what it finds in the
// whole. Linear time, no recursion; circles and missing ids are no obstacle.
project::Project treePart(const project::Project& project, const project::Id& node);

// The nodes of the tree that a problem speaks of: the gate or event itself, the node of a top
// event, the events that use a failure mode or a part. Empty where it is about something else.
std::vector<project::Id> nodesOf(const project::Problem& problem, const project::Project& project,
                                 const project::Index& index);

} // namespace cutwater::editor
