// SPDX-License-Identifier: GPL-3.0-or-later
// Labels: the words in and at a box.
#pragma once

#include "app/drawing/lettering.h"
#include "app/drawing/unfold.h"
#include "models/project/index.h"

#include <string>
#include <vector>

namespace cutwater::drawing {

// Sizes in units of the drawing before it is fitted to the paper.
inline constexpr double kTextSize = 7;
inline constexpr double kLineHeight = 8.4;
inline constexpr double kBoxWidth = 92;
inline constexpr double kTextMargin = 4; // at each side of a box
inline constexpr std::size_t kNameLines = 5, kIdLines = 2;

struct Label {
    std::vector<std::string> name; // wrapped to the box
    std::vector<std::string> id;   // the id, with the tag of the component where the id lacks it
    std::string whole;             // name, tag and id in one line, for titles
    std::size_t lines() const { return name.size() + id.size(); }
};

Label labelOf(const Item& item, const project::Index& index, const Lettering& lettering);

// Height of a box's text part that holds `lines` lines.
double textHeight(std::size_t lines);

} // namespace cutwater::drawing
