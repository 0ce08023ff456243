// SPDX-License-Identifier: GPL-3.0-or-later
// Out of the tables and back into them.
#pragma once

#include "models/logic/bdd.h"
#include "models/logic/diagram.h"
#include "models/logic/zdd.h"

#include <vector>

namespace cutwater::logic {

// What the roots reach, children before parents.
Forest extract(const Bdd& bdd, const std::vector<Edge>& roots, std::uint32_t levels,
               Budget& budget);
Families extract(const Zdd& zdd, Family root, Budget& budget);

// The roots' edges in the table.
std::vector<Edge> putBack(const Forest& forest, Bdd& bdd);
Edge putBack(const Diagram& diagram, Bdd& bdd);

} // namespace cutwater::logic
