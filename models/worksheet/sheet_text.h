// SPDX-License-Identifier: GPL-3.0-or-later
// The whole worksheet as a table of texts, in all columns and in the order of the file.
#pragma once

#include "models/worksheet/columns.h"

#include <string>
#include <vector>

namespace cutwater::worksheet {

// One heading for each column: its id, with the unit in brackets where it has one. What
// importRows() reads back gives the same project.
std::string sheetAsText(const project::Project& project, char separator);

} // namespace cutwater::worksheet
