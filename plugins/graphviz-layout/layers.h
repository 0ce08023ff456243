// SPDX-License-Identifier: GPL-3.0-or-later
// Layers: a graph cut into rows. An edge that passes a row gets a stop there, so that the row keeps
// room for its line and no line runs through a box.
#pragma once

#include "plugins/sdk/interfaces.h"

#include <cstddef>
#include <vector>

namespace cutwater::graphviz {

inline constexpr std::size_t kMaxNodes = 5000;
inline constexpr std::size_t kMaxSlots = 40000; // boxes and stops together

// One stretch of an edge, from a row to the next one.
struct Segment {
    std::size_t upper = 0, lower = 0; // slots
    std::size_t edge = 0; // the first edge that runs here; its twins run in the same line
    bool operator==(const Segment&) const = default;
};

struct Layers {
    std::size_t boxes = 0;              // slots below this number are the graph's nodes
    std::vector<int> row;               // of each slot, 0 is on top
    std::vector<double> width;          // of each slot, points
    std::vector<Segment> segments;      // of one parent together, in the order of its inputs
    std::vector<std::size_t> firstTwin; // of each edge: the edge with the same ends that is drawn
    int rows = 0;
};

// A box stands in the row below its lowest parent. Problems: sizes that are no positive numbers,
// edges to nowhere, a circle (named), more than kMaxNodes or kMaxSlots. Linear, no recursion.
project::Outcome<Layers> makeLayers(const sdk::LayoutGraph& graph);

} // namespace cutwater::graphviz
