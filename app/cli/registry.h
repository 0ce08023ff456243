// SPDX-License-Identifier: GPL-3.0-or-later
// The commands that are built in. Everything else that can be typed is an analysis of a plug-in.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

// In the order in which --help shows them.
const std::vector<Command>& builtInCommands();
// Null where there is none of that name.
const Command* findBuiltIn(const std::string& name);

} // namespace cutwater::cli
