// SPDX-License-Identifier: GPL-3.0-or-later
// Projects made by chance, for round trips: any field may have any value that the types allow,
// sense or not. The same seed gives the same project.
#pragma once

#include "models/project/project.h"

#include <cstdint>

namespace cutwater::test {

// `size` is about how many things of each kind there are; `kept` adds what a newer file would say.
project::Project randomProject(std::uint32_t seed, int size, bool kept);

} // namespace cutwater::test
