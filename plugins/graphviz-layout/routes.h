// SPDX-License-Identifier: GPL-3.0-or-later
// Right-angled lines between rows of boxes. All lines of one parent share a bar; bars of different
// parents never lie on each other, and lines of different parents never share a stretch.
#pragma once

#include "plugins/graphviz-layout/layers.h"

#include <vector>

namespace cutwater::graphviz {

// The gap below one row: where each of its lines goes.
struct Channel {
    std::vector<std::size_t> segments; // positions in layers.segments
    std::vector<double> port;          // of each of them: x where it meets the lower slot
    std::vector<int> lane;             // of each of them: 0 is on top; -1: straight down
    int lanes = 0;
};

// `x` is the centre of each slot. One channel for each row but the last.
std::vector<Channel> planChannels(const Layers& layers, std::vector<double> x);

} // namespace cutwater::graphviz
