// SPDX-License-Identifier: GPL-3.0-or-later
// Paints drawings made of paths and one-line texts, as those of the trees are. Text stays text: the
// general painter of the toolkit turns every letter into an outline, and a report of a plant into
// hundreds of megabytes.
#pragma once

#include <QByteArray>

class QPainter;

namespace cutwater::paper_report {

// In the drawing's own units. False where something else is in it: then nothing was painted.
bool paintDrawing(QPainter& painter, const QByteArray& svg);

} // namespace cutwater::paper_report
