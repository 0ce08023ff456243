// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater new FILE`: a small valid project to start from.
#pragma once

#include "app/cli/command.h"
#include "models/project/project.h"

namespace cutwater::cli {

Command newCommand();

// The project that it writes: one machine, three ways to fail, one top event, no numbers: those are
// the user's to find.
project::Project firstProject(const std::string& name);

} // namespace cutwater::cli
