// SPDX-License-Identifier: GPL-3.0-or-later
// Fragment: a part of a tree on its way to another place or another project. It is a small project
// itself: its top events are what was copied, in order; with what they need of the plant.
#pragma once

#include "models/project/edits/changed.h"
#include "models/project/edits/place.h"

#include <vector>

namespace cutwater::project::edits {

// The nodes with all that is below them, their failure modes, the components of these with what
// they are part of, and the shared parameters. Refused where a node is missing.
Outcome<Project> copyNodes(const Project& project, const std::vector<Id>& nodes);

// Puts what was copied to the place. Gates, and events that stand alone, come as new ones with ids
// of their own. What is the same fact is not doubled: components, parameters and failure modes that
// the project has already are used, and so is the event that is such a failure mode.
Result paste(const Project& project, const Project& fragment, const Place& place);

} // namespace cutwater::project::edits
