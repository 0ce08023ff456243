// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/find_cells.h"

namespace cutwater::editor {

namespace {

Qt::CaseSensitivity caseOf(const CellSearch& search) {
    return search.matchCase ? Qt::CaseSensitive : Qt::CaseInsensitive;
}

} // namespace

bool isFound(const QString& cell, const CellSearch& search) {
    if (search.wholeCell) return cell.compare(search.text, caseOf(search)) == 0;
    return !search.text.isEmpty() && cell.contains(search.text, caseOf(search));
}

int placesIn(const QString& cell, const CellSearch& search) {
    if (search.wholeCell) return isFound(cell, search) ? 1 : 0;
    return search.text.isEmpty() ? 0 : static_cast<int>(cell.count(search.text, caseOf(search)));
}

QString replaced(const QString& cell, const CellSearch& search, const QString& by) {
    if (!isFound(cell, search)) return cell;
    if (search.wholeCell) return by;
    return QString(cell).replace(search.text, by, caseOf(search));
}

QModelIndexList foundCells(const GridModel& grid, const CellSearch& search) {
    QModelIndexList found;
    if (search.text.isEmpty() && !search.wholeCell) return found;
    for (int line = 0; line < grid.rowCount(); ++line) {
        if (grid.isGroup(line)) continue;
        const auto row = static_cast<std::size_t>(grid.rowAt(line));
        for (int section = 0; section < grid.columnCount(); ++section) {
            const int place = grid.shownColumns()[static_cast<std::size_t>(section)];
            if (isFound(grid.sheet().text(row, place, grid.figures()), search))
                found.push_back(grid.index(line, section));
        }
    }
    return found;
}

QModelIndexList foundCells(const GridModel& grid, const CellSearch& search,
                           const QModelIndexList& among) {
    QModelIndexList found;
    if (search.text.isEmpty() && !search.wholeCell) return found;
    for (const QModelIndex& cell : among)
        if (cell.isValid() && !grid.isGroup(cell.row()) &&
            isFound(cell.data(Qt::EditRole).toString(), search))
            found.push_back(cell);
    return found;
}

} // namespace cutwater::editor
