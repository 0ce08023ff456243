// SPDX-License-Identifier: GPL-3.0-or-later
// A picture as SVG 1.1: text stays text, every group has its id, its title and its description.
#pragma once

#include "app/drawing/picture.h"

#include <string>

namespace cutwater::drawing {

// Deterministic. Characters that XML forbids become U+FFFD.
std::string toSvg(const Picture& picture);

} // namespace cutwater::drawing
