// SPDX-License-Identifier: GPL-3.0-or-later
// --help: everything is read off the declarations, so that it cannot say what is not so.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command helpCommand();

// The page that `cutwater --help` shows.
std::string generalHelp(const sdk::Host& host);
// The page of one command or analysis.
std::string helpFor(const Command& command);
// One option with its type, range and standard, and its sentence below.
std::string optionHelp(const sdk::Parameter& parameter);

} // namespace cutwater::cli
