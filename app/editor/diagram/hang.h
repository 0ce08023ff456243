// SPDX-License-Identifier: GPL-3.0-or-later
// Hangs boxes below each other while a page is composed.
#pragma once

#include "app/editor/diagram/page.h"

#include <string>
#include <unordered_map>

namespace cutwater::editor {

// How often each node has been put below each parent so far.
using Times = std::unordered_map<std::string, int>;

// Ties the box that comes next on the page to its owner, and gives it its parent and its key. The
// answer is how often the node stood there before. Precondition: node, owner and beside are set.
int hang(PageBox& box, Page& page, Times& times);

} // namespace cutwater::editor
