// SPDX-License-Identifier: GPL-3.0-or-later
// Colours and lines of plots. Each series also has a line or hatching of its own.
#pragma once

#include <QBrush>
#include <QPalette>
#include <QPen>

namespace cutwater::editor {

QPen curvePen(std::size_t series, const QPalette& palette);
QBrush barBrush(std::size_t series, const QPalette& palette);
// Black on white, for papers.
QPalette paperPalette();

} // namespace cutwater::editor
