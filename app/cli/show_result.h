// SPDX-License-Identifier: GPL-3.0-or-later
// A Result in the format that was asked for, to where it was asked for.
#pragma once

#include "app/cli/command.h"
#include "app/results/render.h"

namespace cutwater::cli {

// Returns an exit code; --table with an unknown id is a usage error that names the nearest one.
int showResult(sdk::Result result, const results::Origin& origin, Context& context);

} // namespace cutwater::cli
