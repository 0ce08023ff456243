// SPDX-License-Identifier: GPL-3.0-or-later
// Putting a node in and taking it out: what the edits of the tree share. Private to the folder.
#pragma once

#include "models/project/edits/tree.h"

#include <optional>

namespace cutwater::project::edits {

// Why `place` cannot take inputs, if so. An event that is no more than a name is made a gate.
std::optional<Problem> openParent(Tree& tree, const Id& parent);

// Puts an existing node at the place; openParent() was asked before. Problem: a circle, or it is
// there already.
std::optional<Problem> putIn(Tree& tree, const Place& place, const Id& node);

// Takes the use away; the node itself stays. Problem: the use is not there (any more), or entries
// of the log speak of the top event.
std::optional<Problem> takeOut(Tree& tree, const Use& use);

} // namespace cutwater::project::edits
