// SPDX-License-Identifier: GPL-3.0-or-later
// One planned sheet: the layout plug-in places its boxes, then everything is drawn.
#pragma once

#include "app/drawing/box_drawing.h"
#include "app/drawing/diagram.h"
#include "app/drawing/plan.h"
#include "app/drawing/sheet_frame.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace cutwater::drawing {

inline constexpr double kSmallestScale = kSmallestType / kTextSize;
inline constexpr double kLargestScale = 1.25; // a small tree is not blown up further

// What all sheets of a diagram have in common.
struct SheetSet {
    const project::Index& index;
    const Wishes& wishes;
    const Lettering& lettering;
    const Plan& plan;
    const std::vector<Label>& labels; // of each item
    PlanSizes sizes;
    double paperWidth = 0, paperHeight = 0;
    const SheetFrame& frame;
    FrameWords words; // sheet number and title are filled in
    // Of each node: the sheets with transfer symbols that point to it.
    std::map<project::Id, std::vector<int>> usedOn;
    std::map<project::Id, std::size_t> homeOf; // of each node: the item that is the node itself
};

// Sheets that point to each node, and where each node is drawn itself.
void crossReference(SheetSet& set);

// Where the layout plug-in put the boxes of a sheet. Without the conditions: they stand beside.
struct PlacedSheet {
    sdk::LayoutGraph graph;
    std::vector<std::size_t> boxOf; // of each layout node: position in the planned sheet's boxes
    double textHeight = 0;          // of the boxes' text part
    double scale = 1;               // that fits it to the paper
};

sdk::Answer<PlacedSheet> placeSheet(const SheetSet& set, std::size_t sheet,
                                    const sdk::Layout& layout, const sdk::Job& job);

Sheet drawSheet(const SheetSet& set, std::size_t sheet, const PlacedSheet& placed);

} // namespace cutwater::drawing
