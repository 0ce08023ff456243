// SPDX-License-Identifier: GPL-3.0-or-later
// Pulling: orders in which what belongs together stands together.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/width.h"

namespace cutwater::logic {

// Words of a program that takes longer to pull together than that saves.
constexpr std::size_t kTooLongToPull = 20000;

struct GuessedOrder {
    Order order;
    double guess = 0; // see WidthEstimate
};

// Leaves and gates are pulled to the middle of the gates they belong to until the gates span no
// less (F. Aloul, I. Markov, K. Sakallah, "FORCE: a fast and easy-to-implement variable-ordering
// heuristic", GLSVLSI 2003; from memory). Of all the orders on the way, and of the same read
// backwards, the one with the smallest guess comes back.
GuessedOrder pulledTogether(const Program& program, const Order& start, WidthEstimate& width,
                            Budget& budget);

// The best of pulling from several starts: walked ones first, then shuffled ones (always the same).
// Where pulling ends hangs on where it begins, more than on anything else.
GuessedOrder bestPulled(const Program& program, int starts, WidthEstimate& width, Budget& budget);

} // namespace cutwater::logic
