// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/sheet_text.h"

#include "models/worksheet/delimited.h"

#include <fmt/format.h>

namespace cutwater::worksheet {

std::string sheetAsText(const project::Project& project, char separator) {
    const project::Index index(project);
    const Sheet sheet = sheetOf(project, index);
    std::vector<std::string> cells;
    for (const Column& column : columns())
        cells.push_back(column.unit.empty() ? std::string(column.id)
                                            : fmt::format("{} [{}]", column.id, column.unit));
    std::string text = writeRecord(cells, separator);
    for (const Row& row : sheet.rows) {
        cells.clear();
        for (const Column& column : columns()) {
            const Cell cell = column.read(sheet, row);
            const std::string words = toText(cell);
            cells.push_back(std::holds_alternative<std::string>(cell) ? harmless(words) : words);
        }
        text += writeRecord(cells, separator);
    }
    return text;
}

} // namespace cutwater::worksheet
