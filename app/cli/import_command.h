// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater import-rows FILE TABLE`: a table from a spreadsheet into the worksheet, with a preview.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command importCommand();

} // namespace cutwater::cli
