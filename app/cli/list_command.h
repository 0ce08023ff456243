// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater list`: what the program can do; `cutwater list FILE`: what can be asked about a
// project.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command listCommand();

} // namespace cutwater::cli
