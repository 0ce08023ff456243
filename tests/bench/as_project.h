// SPDX-License-Identifier: GPL-3.0-or-later
// An instance as a project, such as a user's file would hold it.
#pragma once

#include "tests/bench/families.h"

#include "models/project/project.h"

namespace bench {

// Events "E1" ..., gates "G1" ..., one top event "T1". Precondition: no negated inputs, no
// exclusive or, no constants.
cutwater::project::Project asProject(const Instance& instance);

} // namespace bench
