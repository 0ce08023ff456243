// SPDX-License-Identifier: GPL-3.0-or-later
// Diagram: a fault tree as numbered sheets that can be printed. Values in, values out.
#pragma once

#include "app/drawing/box_drawing.h"
#include "app/drawing/lettering.h"
#include "app/drawing/picture.h"
#include "app/drawing/symbols.h"
#include "app/drawing/unfold.h"
#include "plugins/sdk/interfaces.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace cutwater::drawing {

// Printed type is never smaller than this, points.
inline constexpr double kSmallestType = 6.5;

enum class Paper { a4, a3 };
enum class Orientation {
    automatic, // the one that needs fewer sheets
    portrait,
    landscape,
};

struct Wishes {
    Paper paper = Paper::a4;
    Orientation orientation = Orientation::automatic;
    std::map<project::Id, std::string> values; // short texts at events or gates: "2.1e-04"
    std::string valuesRemark;                  // what they are, for the legend
    std::set<project::Id> marked;              // drawn heavy and with a dot: a cut set
    std::size_t maxSheets = 500;
};

// One box of a sheet, for whoever must find it again.
struct DrawnBox {
    project::Id node;
    ItemRole role = ItemRole::itself;
    bool transfer = false; // shown as a transfer symbol
    bool beside = false;   // the condition of an inhibit gate
    SymbolKind symbol = SymbolKind::basic;
    int sheet = 0;           // of a transfer: the sheet where the node is drawn
    std::vector<int> usedOn; // of the node itself: sheets with transfer symbols that point here
    Box place;               // on the paper
    std::string group;       // id of its group in the picture

    // For whoever draws it again, as an editor does: in the drawing's units before it is fitted to
    // the paper.
    Spot at;                      // middle of its upper edge
    BoxWords words;               // but for `marked`
    std::string title;            // its whole name
    std::size_t parent = kNoItem; // position in the sheet's boxes; none for the root
};

// A line from a gate to one of its inputs or to its condition, in the drawing's units.
struct DrawnLine {
    std::size_t upper = 0, lower = 0; // positions in the sheet's boxes
    std::vector<Spot> route;
};

struct Sheet {
    int number = 1; // from 1
    project::Id root;
    bool continued = false;      // its root is a gate's continuation
    double scale = 1;            // from the drawing's units to points
    Spot origin;                 // where the drawing's corner lies on the paper
    double textHeight = 0;       // of the boxes' text part, in the drawing's units
    std::vector<DrawnBox> boxes; // a parent comes before its inputs
    std::vector<DrawnLine> lines;
    Picture picture;
};

struct Diagram {
    project::Id top;
    std::vector<Sheet> sheets;
};

// `top` is one of the project's top events, or one made up for a gate. Ends: failed (a node is
// missing, the layout failed), overLimit (more than maxSheets; the sentence says what to do),
// cancelled. No recursion.
sdk::Answer<Diagram> draw(const project::Project& project, const project::TopEvent& top,
                          const Wishes& wishes, const Lettering& lettering,
                          const sdk::Layout& layout, const sdk::Job& job);

} // namespace cutwater::drawing
