// SPDX-License-Identifier: GPL-3.0-or-later
// The number of minimal solutions of a monotone function that BuDDy holds, found with BuDDy's own
// operations: a second opinion on our counts, by another data structure and another recursion.
#pragma once

#include "models/logic/count.h"

#include <optional>

namespace bench {

// `top` is a BDD of the running BuDDy, its variables in their natural order. Empty where BuDDy
// could not go on.
std::optional<cutwater::logic::Count> minimalSetsOf(int top);

} // namespace bench
