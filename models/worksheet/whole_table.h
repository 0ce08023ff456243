// SPDX-License-Identifier: GPL-3.0-or-later
// A table as a project of its own.
#pragma once

#include "models/project/project.h"

#include <string>

namespace cutwater::worksheet {

// Components of the tags that stand in the table, and their failure modes. One row that cannot be
// taken fails the whole, and every such row is a problem with its line: importRows() takes tables
// in part.
project::Outcome<project::Project> projectOfTable(const std::string& text);

} // namespace cutwater::worksheet
