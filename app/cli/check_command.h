// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater check FILE`: every problem of a project file, with its line and how to mend it.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command checkCommand();

} // namespace cutwater::cli
