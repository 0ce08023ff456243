// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater take FILE TYPE ID`: a component of the library into the project.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command takeCommand();

} // namespace cutwater::cli
