// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures on a painter: pages of a PDF (vectors, with the font inside) and PNG images. Needs a
// QGuiApplication; the offscreen platform will do.
#pragma once

#include "app/drawing/picture.h"
#include "models/project/problem.h"

#include <string>
#include <vector>

class QPainter;
class QPainterPath;

namespace cutwater::drawing {

inline constexpr int kMinDpi = 30, kMaxDpi = 600;

// Draws with `perPoint` device units to a point, the picture's corner at the device's corner.
void paint(QPainter& painter, const Picture& picture, double perPoint);

// For whoever paints often, as an editor does: the outline of a path, and of letters, in points.
QPainterPath outlineOf(const Path& path);
QPainterPath outlineOf(const Text& text, const std::string& family);

// One page a picture, each in its own size. `title` is the document's.
project::Outcome<std::string> toPdf(const std::vector<Picture>& pictures, const std::string& title);

// dpi: kMinDpi to kMaxDpi. Problem: out of range, or no memory for the image.
project::Outcome<std::string> toPng(const Picture& picture, int dpi);

} // namespace cutwater::drawing
