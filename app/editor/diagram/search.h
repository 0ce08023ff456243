// SPDX-License-Identifier: GPL-3.0-or-later
// Search in a tree: by id, name, tag and failure mode.
#pragma once

#include "app/editor/diagram/tree.h"

#include <string>
#include <vector>

namespace cutwater::editor {

// Nodes that contain every word of `text`, upper and lower case alike, in the order of the tree.
// Those whose id is the text itself come first. Empty text: none.
std::vector<project::Id> findNodes(const Tree& tree, const std::string& text);

} // namespace cutwater::editor
