// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater convert FILE OUT`: between the project file and the formats of exchange plug-ins.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command convertCommand();

} // namespace cutwater::cli
