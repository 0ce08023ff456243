// SPDX-License-Identifier: GPL-3.0-or-later
// Fussell-Vesely by its full definition, which needs the sets one by one.
#pragma once

#include "models/reliability/importance.h"

#include <span>
#include <vector>

namespace cutwater::reliability {

// Fills in `fussellVesely` of all entries, or of none where the formula is not coherent or the cost
// is above the wish. `top` is the top's probability. False: the limits stopped it.
bool addFussellVesely(const logic::Solution& solution, std::span<const double> q, double top,
                      const ImportanceWish& wish, std::vector<EventImportance>& entries);

} // namespace cutwater::reliability
