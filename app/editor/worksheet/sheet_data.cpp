// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/sheet_data.h"

#include "models/worksheet/coverage.h"

#include <fmt/format.h>

namespace cutwater::editor {

namespace {

using worksheet::Cell;

template <typename T>
Cell cellOf(const std::optional<T>& value) {
    return value ? Cell(*value) : Cell();
}

} // namespace

SheetData::SheetData(Snapshot from)
    : snapshot(std::move(from)), index(*snapshot), sheet(worksheet::sheetOf(*snapshot, index)) {
    m_places.reserve(rows());
    for (std::size_t i = 0; i < rows(); ++i)
        m_places.emplace(id(i), i);
}

int SheetData::rowOf(const project::Id& id) const {
    const auto found = m_places.find(id);
    return found == m_places.end() ? -1 : static_cast<int>(found->second);
}

Cell SheetData::cell(std::size_t at, int number, const EffectFigures& figures) const {
    const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(number)];
    const worksheet::Row& row = sheet.rows[at];
    if (column.column) return column.column->read(sheet, row);
    if (column.id == "trees") {
        std::string names;
        for (const std::size_t top : row.tops)
            names += (names.empty() ? "" : ", ") + snapshot->tops[top].id;
        return names.empty() ? Cell() : Cell(names);
    }
    const auto found = figures.find(worksheet::plainEffect(row.facts->endEffect));
    if (found == figures.end()) return {};
    const EffectFigure& figure = found->second;
    if (column.id == "effect-tree") return Cell(figure.top);
    if (column.id == "effect-probability") return cellOf(figure.probability);
    if (column.id == "effect-frequency") return cellOf(figure.perYear);
    return {};
}

QString SheetData::text(std::size_t row, int column, const EffectFigures& figures) const {
    return QString::fromStdString(worksheet::toText(cell(row, column, figures)));
}

QString shownNumber(double value) {
    return QString::fromStdString(fmt::format("{:.4g}", value));
}

} // namespace cutwater::editor
