// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater draw FILE`: fault trees on sheets that can be printed, as SVG, PDF or PNG.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command drawCommand();

} // namespace cutwater::cli
