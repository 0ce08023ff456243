// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/sheet_text.h"

#include "models/worksheet/delimited.h"

#include <fmt/format.h>

#include <string_view>
#include <unordered_map>

namespace cutwater::worksheet {

namespace {

template <typename Take>
void each(std::string_view text, char between, Take take) {
    while (!text.empty()) {
        const std::size_t end = text.find(between);
        if (const std::string_view word = text.substr(0, end); !word.empty()) take(word);
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
    }
}

} // namespace

SheetPart partOf(const std::string& columnIds, const std::string& rowIds) {
    SheetPart part;
    each(columnIds, ',', [&](std::string_view id) {
        if (const Column* column = findColumn(id)) part.columns.push_back(column);
    });
    each(rowIds, '\n', [&](std::string_view id) { part.rows.emplace_back(id); });
    return part;
}

std::vector<const Row*> rowsOf(const Sheet& sheet, const SheetPart& part) {
    std::vector<const Row*> rows;
    if (part.rows.empty()) {
        for (const Row& row : sheet.rows)
            rows.push_back(&row);
        return rows;
    }
    std::unordered_map<std::string_view, const Row*> byId;
    for (const Row& row : sheet.rows)
        byId.emplace(row.facts->id, &row);
    for (const project::Id& id : part.rows)
        if (const auto found = byId.find(id); found != byId.end()) rows.push_back(found->second);
    return rows;
}

std::vector<const Column*> columnsOf(const SheetPart& part) {
    if (!part.columns.empty()) return part.columns;
    std::vector<const Column*> all;
    for (const Column& column : columns())
        all.push_back(&column);
    return all;
}

std::string sheetAsText(const project::Project& project, char separator, const SheetPart& part) {
    const project::Index index(project);
    const Sheet sheet = sheetOf(project, index);
    const auto shown = columnsOf(part);
    std::vector<std::string> cells;
    for (const Column* column : shown)
        cells.push_back(column->unit.empty() ? std::string(column->id)
                                             : fmt::format("{} [{}]", column->id, column->unit));
    std::string text = writeRecord(cells, separator);
    for (const Row* row : rowsOf(sheet, part)) {
        cells.clear();
        for (const Column* column : shown) {
            const Cell cell = column->read(sheet, *row);
            const std::string words = toText(cell);
            cells.push_back(std::holds_alternative<std::string>(cell) ? harmless(words) : words);
        }
        text += writeRecord(cells, separator);
    }
    return text;
}

} // namespace cutwater::worksheet
