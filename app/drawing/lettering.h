// SPDX-License-Identifier: GPL-3.0-or-later
// Lettering: the font of a drawing, how wide its texts are, and how they break into lines.
#pragma once

#include "models/project/problem.h"

#include <functional>
#include <string>
#include <vector>

namespace cutwater::drawing {

// Width in points of a line of UTF-8 text in a size of `size` points.
using Measure = std::function<double(const std::string& words, double size, bool bold)>;

struct Lettering {
    std::string family;
    Measure measure;
};

// Looks for a plain font that can be printed. Needs a QGuiApplication. Problem: no font is there
// (then every letter would come out as a box).
project::Outcome<Lettering> findLettering();

// Breaks a text at spaces and after - / _ . : and, where a word is wider than a line, inside it.
// White space is folded. What does not go into `most` lines ends with an ellipsis.
std::vector<std::string> wrap(const std::string& text, double width, std::size_t most, double size,
                              bool bold, const Measure& measure);

} // namespace cutwater::drawing
