// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater report FILE --output OUT`: results and drawn trees as a document, by a report plug-in.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command reportCommand();

} // namespace cutwater::cli
