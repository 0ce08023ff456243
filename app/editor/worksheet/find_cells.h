// SPDX-License-Identifier: GPL-3.0-or-later
// Find and replace: which cells hold a text, and what they say with another one in its place.
#pragma once

#include "app/editor/worksheet/grid_model.h"

#include <QModelIndexList>
#include <QString>

namespace cutwater::editor {

struct CellSearch {
    QString text;
    bool wholeCell = false;
    bool matchCase = false;
};

bool isFound(const QString& cell, const CellSearch& search);
int placesIn(const QString& cell, const CellSearch& search);
QString replaced(const QString& cell, const CellSearch& search, const QString& by);

// Every cell that is seen, or only those of `among` (in the order given).
QModelIndexList foundCells(const GridModel& grid, const CellSearch& search);
QModelIndexList foundCells(const GridModel& grid, const CellSearch& search,
                           const QModelIndexList& among);

} // namespace cutwater::editor
