// SPDX-License-Identifier: GPL-3.0-or-later
// The whole worksheet as a table of texts, in all columns and in the order of the file.
#pragma once

#include "models/worksheet/columns.h"

#include <string>
#include <vector>

namespace cutwater::worksheet {

// What of the worksheet is meant, and in which order. Empty: all.
struct SheetPart {
    std::vector<project::Id> rows; // failure modes
    std::vector<const Column*> columns;
};

// "a,b,c" and one id a line, as parameters of plug-ins have them; what is unknown is left out.
SheetPart partOf(const std::string& columnIds, const std::string& rowIds);
std::vector<const Row*> rowsOf(const Sheet& sheet, const SheetPart& part);
std::vector<const Column*> columnsOf(const SheetPart& part);

// One heading for each column: its id, with the unit in brackets where it has one. What
// importRows() reads back gives the same project.
std::string sheetAsText(const project::Project& project, char separator,
                        const SheetPart& part = {});

} // namespace cutwater::worksheet
