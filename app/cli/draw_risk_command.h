// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater draw-risk FILE`: the risk matrix as SVG or PNG.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command drawRiskCommand();

} // namespace cutwater::cli
