// SPDX-License-Identifier: GPL-3.0-or-later
// The one place that talks to Graphviz.
#pragma once

#include "plugins/graphviz-layout/layers.h"

#include <vector>

namespace cutwater::graphviz {

// The x of the centre of each slot, points; leftmost edge at 0. Slots of one row stand `gap` points
// apart or more. Graphviz is not thread-safe: calls wait for each other. Writes nothing to stdout
// or stderr.
project::Outcome<std::vector<double>> placeInRows(const Layers& layers, double gap);

} // namespace cutwater::graphviz
