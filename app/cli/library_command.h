// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater library [TYPE]` lists component types or shows one; `cutwater library-news FILE` says
// where the libraries have moved on since components were taken.
#pragma once

#include "app/cli/command.h"

namespace cutwater::cli {

Command libraryCommand();
Command libraryNewsCommand();

} // namespace cutwater::cli
