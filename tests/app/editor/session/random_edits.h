// SPDX-License-Identifier: GPL-3.0-or-later
// Edits by chance, of every kind; the same seed gives the same ones. Some are refused.
#pragma once

#include "app/editor/session/session.h"

#include <random>

namespace cutwater::test {

// One edit that fits `project` as it is now.
editor::Edit randomEdit(const project::Project& project, std::mt19937& random);

} // namespace cutwater::test
