// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater accept FILE`: puts accepted proposals for a tree into the project.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command acceptCommand();

} // namespace cutwater::cli
