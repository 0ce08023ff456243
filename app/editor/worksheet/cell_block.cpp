// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/cell_block.h"

#include <QCoreApplication>

#include <algorithm>

namespace cutwater::editor {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::CellBlock)
};

QString shown(const GridModel& grid, int line, int section) {
    return grid.index(line, section).data(Qt::EditRole).toString();
}

class Planner {
public:
    explicit Planner(const GridModel& grid) : m_grid(grid) {}

    void put(int line, int section, const QString& text) {
        const SheetColumn& column = m_grid.columnAt(section);
        if (!column.isTyped()) {
            const QModelIndex index = m_grid.index(line, section);
            // What was copied from here and what a spreadsheet rounded are no loss.
            if (text.isEmpty() || text == index.data(Qt::EditRole).toString() ||
                text == index.data(Qt::DisplayRole).toString())
                return;
            const auto row = static_cast<std::size_t>(m_grid.rowAt(line));
            plan.notTaken.push_back({m_grid.idAt(line), rowWords(m_grid.sheet(), row), column.title,
                                     text,
                                     Words::tr("this column is worked out, or belongs to "
                                               "the plant page")});
            return;
        }
        plan.cells.push_back({m_grid.idAt(line), column.id, text.toStdString()});
    }

    CellPlan plan;

private:
    const GridModel& m_grid;
};

std::vector<int> linesFrom(const GridModel& grid, int first, std::size_t count) {
    std::vector<int> lines;
    for (int line = first; line < grid.rowCount() && lines.size() < count; ++line)
        if (!grid.isGroup(line)) lines.push_back(line);
    return lines;
}

} // namespace

QString rowWords(const SheetData& data, std::size_t row) {
    return QStringLiteral("%1: %2").arg(data.text(row, sheetColumn("component"), {}),
                                        data.text(row, sheetColumn("mode"), {}));
}

CellPlan planPaste(const GridModel& grid, const TextBlock& block, const std::vector<int>& lines,
                   const std::vector<int>& sections) {
    Planner planner(grid);
    if (block.empty() || lines.empty() || sections.empty()) return {};
    qsizetype widest = 0;
    for (const QStringList& row : block)
        widest = std::max(widest, row.size());
    const auto height = block.size(), width = static_cast<std::size_t>(widest);
    // The choice is filled where the block fits into it as often as one likes.
    const bool tiles = lines.size() % height == 0 && sections.size() % width == 0;
    std::vector<int> toLines = lines, toSections = sections;
    if (!tiles) {
        toLines = linesFrom(grid, lines.front(), height);
        toSections.clear();
        for (std::size_t i = 0; i < width; ++i)
            if (const int section = sections.front() + static_cast<int>(i);
                section < grid.columnCount())
                toSections.push_back(section);
    }
    for (std::size_t i = 0; i < toLines.size(); ++i) {
        const QStringList& row = block[i % height];
        for (std::size_t k = 0; k < toSections.size(); ++k)
            if (const auto at = static_cast<qsizetype>(k % width); at < row.size())
                planner.put(toLines[i], toSections[k], row[at]);
    }
    if (tiles) return std::move(planner.plan);
    for (std::size_t i = 0; i < height; ++i) {
        const bool below = i >= toLines.size();
        for (std::size_t k = 0; k < static_cast<std::size_t>(block[i].size()); ++k) {
            const QString& text = block[i][static_cast<qsizetype>(k)];
            const bool beside = k >= toSections.size();
            if ((!below && !beside) || text.isEmpty()) continue;
            planner.plan.notTaken.push_back(
                {{},
                 Words::tr("row %1 of what was pasted").arg(i + 1),
                 beside ? Words::tr("column %1 of what was pasted").arg(k + 1)
                        : grid.columnAt(toSections[k]).title,
                 text,
                 below ? Words::tr("there is no row left below: make rows first, or import a table")
                       : Words::tr("there is no column left on the right")});
        }
    }
    return std::move(planner.plan);
}

CellPlan planFillDown(const GridModel& grid, const std::vector<int>& lines,
                      const std::vector<int>& sections) {
    Planner planner(grid);
    if (lines.empty()) return {};
    int from = lines.front();
    std::size_t first = 1;
    if (lines.size() == 1) {
        first = 0;
        for (--from; from >= 0 && grid.isGroup(from);)
            --from;
        if (from < 0) return {};
    }
    for (const int section : sections) {
        const QString text = shown(grid, from, section);
        if (!grid.columnAt(section).isTyped()) continue; // nothing to fill there
        for (std::size_t i = first; i < lines.size(); ++i)
            planner.put(lines[i], section, text);
    }
    return std::move(planner.plan);
}

CellPlan planSame(const GridModel& grid, const QModelIndexList& cells, const QString& text) {
    Planner planner(grid);
    for (const QModelIndex& cell : cells)
        if (!grid.isGroup(cell.row())) planner.put(cell.row(), cell.column(), text);
    return std::move(planner.plan);
}

TextBlock textsOf(const GridModel& grid, const std::vector<int>& lines,
                  const std::vector<int>& sections) {
    TextBlock block;
    for (const int line : lines) {
        if (grid.isGroup(line)) continue;
        QStringList row;
        for (const int section : sections)
            row.append(shown(grid, line, section));
        block.push_back(row);
    }
    return block;
}

} // namespace cutwater::editor
