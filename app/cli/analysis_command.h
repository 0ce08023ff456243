// SPDX-License-Identifier: GPL-3.0-or-later
// An analysis of a plug-in, made into a command: its declared parameters become options.
#pragma once

#include "app/cli/command.h"

#include <optional>

namespace cutwater::cli {

// A built-in command or an analysis of that name. Where there is none, or its plug-in cannot be
// used, one sentence is printed (with the nearest name) and nothing comes back.
std::optional<Command> findCommand(const std::string& name, Context& context);

} // namespace cutwater::cli
