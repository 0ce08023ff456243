// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/whole_table.h"

#include "models/worksheet/import.h"

#include <fmt/format.h>

namespace cutwater::worksheet {

project::Outcome<project::Project> projectOfTable(const std::string& text) {
    ImportWish wish;
    wish.makeComponents = true;
    auto import = importRows({}, text, wish);
    if (!import) return import.problems();
    project::Problems problems;
    for (const ImportRow& row : import->rows)
        if (!row.taken)
            problems.push_back(
                {project::Severity::error, fmt::format("a row cannot be taken: {}", row.why),
                 "mend the row, or take the table in part with import-rows", "table", row.line});
    if (!problems.empty()) return problems;
    return std::move(import->project);
}

} // namespace cutwater::worksheet
