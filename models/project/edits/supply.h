// SPDX-License-Identifier: GPL-3.0-or-later
// The supply network edited: connections with what they run through.
#pragma once

#include "models/project/edits/changed.h"

namespace cutwater::project::edits {

// A connection of that id is changed; with an empty id a new one is made, FROM-TO.
// Refused: an end or a device that is no component; both ends the same; a device twice or an end.
Result setConnection(const Project& project, const Connection& facts);
Result removeConnection(const Project& project, const Id& connection);

} // namespace cutwater::project::edits
