// SPDX-License-Identifier: GPL-3.0-or-later
// Plan: which boxes go on which sheet, so that each sheet can be printed with type of readable
// size.
#pragma once

#include "app/drawing/unfold.h"

#include <cstddef>
#include <vector>

namespace cutwater::drawing {

// Sizes in units of the drawing before it is fitted to the paper; all boxes have one size.
struct PlanSizes {
    double boxWidth = 92, boxHeight = 90;
    double nodeGap = 8, rowGap = 26;
    double besideGap = 10;                    // between an inhibit gate and its condition
    double roomWidth = 800, roomHeight = 480; // what a sheet holds at the smallest type
};

struct PlannedBox {
    std::size_t item = 0;
    bool transfer = false; // shown as a transfer symbol here
};

struct PlannedSheet {
    std::size_t root = 0;
    std::vector<PlannedBox> boxes; // the root first; conditions stand after their gate
};

struct Plan {
    std::vector<Item> items; // with cuts and continuations
    std::vector<PlannedSheet> sheets;
    std::vector<std::size_t>
        sheetOf; // of each item: position of the sheet where it is drawn itself
};

// Width that an item takes in its row.
double widthOf(const Item& item, const PlanSizes& sizes);

// Cuts from the bottom up, so that sheets come out full: where a gate and what is below it do not
// fit, the smallest subtree whose removal is enough moves to a sheet of its own. A gate with more
// inputs than a row holds is continued. Sheets are numbered level by level from the top.
// A room that holds less than two boxes in a row or two rows is taken to hold that.
Plan planSheets(Unfolded tree, PlanSizes sizes);

} // namespace cutwater::drawing
