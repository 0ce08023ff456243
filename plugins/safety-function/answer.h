// SPDX-License-Identifier: GPL-3.0-or-later
// Formulas and tree side by side, and what neither of them says.
#pragma once

#include "plugins/safety-function/from_tree.h"
#include "plugins/safety-function/request.h"

namespace cutwater::safety_function_plugin {

void addFormulas(sdk::Result& result, const Request& request);
void addTree(sdk::Result& result, const project::Project& project, const Request& request,
             const TreeFigures& figures);
// The table that addFormulas and addTree fill.
sdk::Table figureTable();
sdk::Table bandTable();
// Notes that hold for every check.
void addScope(std::vector<sdk::Note>& notes);

} // namespace cutwater::safety_function_plugin
