// SPDX-License-Identifier: GPL-3.0-or-later
// Where the cells of a block go: pure functions over the grid as it is seen.
#pragma once

#include "app/editor/worksheet/grid_model.h"
#include "app/editor/worksheet/table_html.h"
#include "models/worksheet/typing.h"

#include <QString>

#include <vector>

namespace cutwater::editor {

// A cell that was not taken, as the report has it.
struct NotTaken {
    project::Id mode; // empty where no row was reached
    QString row;      // "ET-1: fouled", or which one of the block
    QString column;
    QString text;
    QString why; // a clause
};

struct CellPlan {
    std::vector<worksheet::TypedCell> cells;
    std::vector<NotTaken> notTaken; // known before anything is tried
};

// One value goes into every chosen cell. A larger block begins at the first chosen cell and goes
// as far as it reaches, over rows that are seen; where the choice is a multiple of it, it is
// repeated. Cells that cannot be typed are left out where they show the same text.
CellPlan planPaste(const GridModel& grid, const TextBlock& block, const std::vector<int>& lines,
                   const std::vector<int>& sections);

// Each chosen column gets what stands in its first chosen row; with one row chosen what stands in
// the row above it.
CellPlan planFillDown(const GridModel& grid, const std::vector<int>& lines,
                      const std::vector<int>& sections);

// Every one of these cells gets the text.
CellPlan planSame(const GridModel& grid, const QModelIndexList& cells, const QString& text);

TextBlock textsOf(const GridModel& grid, const std::vector<int>& lines,
                  const std::vector<int>& sections);

// "ET-1: fouled".
QString rowWords(const SheetData& data, std::size_t row);

} // namespace cutwater::editor
