// SPDX-License-Identifier: GPL-3.0-or-later
// Parts of the plant on their way to another place or another project.
#pragma once

#include "models/project/edits/changed.h"
#include "models/project/edits/plant.h"

#include <vector>

namespace cutwater::project::edits {

// The components with all below them, their failure modes, the supply between them and the shared
// parameters, as a small project. A failure mode alone comes with its component, which has no
// parent then and no other modes.
Outcome<Project> copyParts(const Project& project, const std::vector<Id>& ids);

// New components and modes with ids of their own; a tag that is there already is counted on
// ("FP-1" -> "FP-2"). Suppliers outside of what was copied stay where the project has them.
// `modesOnly`: the failure modes of the fragment become modes of `place.parent`.
Result pasteParts(const Project& project, const Project& fragment, const PartPlace& place,
                  bool modesOnly = false);

// Indented lines as parts of the plant; a line that begins with '-' or '*' is a failure mode of the
// part above it.
Project partsFromLines(std::string_view lines);

} // namespace cutwater::project::edits
