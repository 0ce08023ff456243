// SPDX-License-Identifier: GPL-3.0-or-later
// Boxes and lines of a fault tree: rows and places from Graphviz' dot, right-angled lines of our
// own.
#pragma once

#include "plugins/sdk/interfaces.h"

namespace cutwater::graphviz {

// Values: "node-gap" (points between boxes of a row, standard 8) and "row-gap" (points between
// rows, standard 26; grows where many lines need it). Boxes of one row have their upper edges in
// line. Ends: failed for a circle or wrong sizes, overLimit for more than 5000 boxes, cancelled.
sdk::Answer<sdk::LayoutGraph> place(const sdk::LayoutGraph& graph, const sdk::Values& values,
                                    const sdk::Job& job);

} // namespace cutwater::graphviz
