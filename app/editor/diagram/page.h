// SPDX-License-Identifier: GPL-3.0-or-later
// Page: what the diagram shows, as a value made in the worker: the whole tree as far as it is
// unfolded, or one printed sheet. Lengths in the drawing's units, y downwards.
#pragma once

#include "app/drawing/box_drawing.h"
#include "app/drawing/picture.h"
#include "app/drawing/symbols.h"
#include "app/drawing/unfold.h"

#include <memory>
#include <string>
#include <vector>

namespace cutwater::editor {

inline constexpr std::size_t kNoBox = drawing::kNoItem;

struct PageBox {
    project::Id node;
    project::Id parent; // the gate above; empty at the root
    int input = -1;     // position among the parent's inputs; -1: the root or a condition
    // Who it is from layout to layout: node, parent and how often it stood there before.
    std::string key;
    bool isGate = false;
    bool transfer = false; // it is drawn at another place
    bool beside = false;   // the condition of an inhibit gate
    bool foldable = false, folded = false;
    drawing::SymbolKind symbol = drawing::SymbolKind::basic;
    drawing::BoxWords words;
    std::string title;       // name, tag and id
    std::string description; // kind and connections in words, for screen readers and tips
    drawing::Spot at;        // middle of its upper edge
    double textHeight = 0, height = 0;
    std::size_t owner = kNoBox;      // the parent's box
    std::vector<std::size_t> inputs; // boxes, left to right
    std::size_t condition = kNoBox;
    int sheet = 0; // of a transfer on a sheet: where it is drawn
};

struct PageLine {
    std::size_t upper = 0, lower = 0; // boxes
    bool toCondition = false;
    std::vector<drawing::Spot> route;
};

struct Page {
    std::vector<PageBox> boxes; // a parent comes before its inputs
    std::vector<PageLine> lines;
    drawing::Box extent;
    std::string family; // of the font that texts were measured with
    // A printed sheet: its number, and border, legend and title block on the paper.
    int number = 0, count = 0; // 0: not a sheet
    std::string title;
    std::shared_ptr<const drawing::Picture> frame;
    double frameScale = 1;     // from points on the paper to the drawing's units
    drawing::Spot frameOrigin; // of the paper's corner
};

// The frame around a box's text and symbol.
drawing::Box frameOf(const PageBox& box);

} // namespace cutwater::editor
