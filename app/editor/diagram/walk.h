// SPDX-License-Identifier: GPL-3.0-or-later
// Walk: where the arrow keys lead from a box.
#pragma once

#include "app/editor/diagram/page.h"

namespace cutwater::editor {

enum class Direction { up, down, left, right };

// kNoBox where nothing lies in that direction. Up and down follow the lines; left and right go to
// the neighbours in the row, whoever their parent is.
std::size_t walk(const Page& page, std::size_t from, Direction direction);

} // namespace cutwater::editor
