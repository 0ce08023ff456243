// SPDX-License-Identifier: GPL-3.0-or-later
// Notes that hold for every analysis of a tree: what was assumed, and where that is not so.
#pragma once

#include "plugins/sdk/tree/figures.h"

namespace cutwater::sdk::tree {

// What holds without numbers, too: order of failures ignored, always or never true, not coherent.
// `side`: which of the two the solutions are of.
void addTreeNotes(std::vector<Note>& notes, const std::vector<Solved>& all, Side side);

// Numbers: independence, common causes that are not yet counted, the project's own assumptions.
void addFigureNotes(std::vector<Note>& notes, const project::Project& project,
                    const FigureBook& book);

} // namespace cutwater::sdk::tree
