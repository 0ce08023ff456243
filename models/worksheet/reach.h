// SPDX-License-Identifier: GPL-3.0-or-later
// Which trees hold which events. Private to the folder.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <vector>

namespace cutwater::worksheet {

// Positions in project.events of all events below `node`, ascending, itself included where it is
// one. No recursion.
std::vector<std::size_t> eventsBelow(const project::Project& project, const project::Index& index,
                                     const project::Id& node);

// For each failure mode (by position) the top events (by position, ascending) in whose tree it is.
std::vector<std::vector<std::size_t>> topsOfModes(const project::Project& project,
                                                  const project::Index& index);

} // namespace cutwater::worksheet
