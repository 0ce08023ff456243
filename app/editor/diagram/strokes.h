// SPDX-License-Identifier: GPL-3.0-or-later
// Strokes: marks of a drawing as paths, made once and painted often, in the inks of the screen.
#pragma once

#include "app/editor/diagram/look.h"

#include <QPainterPath>

#include <optional>
#include <string>
#include <vector>

class QPainter;

namespace cutwater::editor {

struct Stroke {
    QPainterPath path;
    double width = 0; // of the line; 0: filled only
    drawing::Ink line;
    std::optional<drawing::Ink> fill;
    bool dashed = false;
    bool letters = false;
};

// Neighbouring texts in one ink become one stroke.
std::vector<Stroke> strokesOf(const std::vector<drawing::Mark>& marks, const std::string& family);

void paintStrokes(QPainter& painter, const std::vector<Stroke>& strokes, const Look& look,
                  bool letters);

} // namespace cutwater::editor
