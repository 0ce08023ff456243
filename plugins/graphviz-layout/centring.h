// SPDX-License-Identifier: GPL-3.0-or-later
// dot is content with a parent anywhere between its children; a reader likes it in the middle.
#pragma once

#include "plugins/graphviz-layout/layers.h"

#include <vector>

namespace cutwater::graphviz {

// Moves parents over the middle of their inputs as far as their neighbours in the row allow. Order
// and gaps are kept; nothing leaves the width that is there.
std::vector<double> centreParents(const Layers& layers, double gap, std::vector<double> x);

} // namespace cutwater::graphviz
