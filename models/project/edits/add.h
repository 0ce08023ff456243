// SPDX-License-Identifier: GPL-3.0-or-later
// New nodes, and nodes used once more.
#pragma once

#include "models/project/edits/changed.h"
#include "models/project/edits/place.h"

namespace cutwater::project::edits {

// A new basic event of that name; where the place is among the top events a new or gate with a top
// event. Refused where the parent is an event that is more than a name (it has a failure mode, a
// model, a common-cause group), and where the name is empty.
Result addEvent(const Project& project, const Place& place, const std::string& name);

// The node is used at one more place: one shared subtree. Refused where it would stand below
// itself, and where it is an input of that gate already.
Result shareNode(const Project& project, const Place& place, const Id& node);

// The event that is this failure mode of the plant: the one that there is already, or a new one.
Result useMode(const Project& project, const Place& place, const Id& mode);

// A place of its own for the shared node: a copy of it, and of the gates below it; events stay
// shared, for they are the same failures. Refused where it is used once only.
Result separate(const Project& project, const Use& use);

} // namespace cutwater::project::edits
