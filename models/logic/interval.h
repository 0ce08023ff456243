// SPDX-License-Identifier: GPL-3.0-or-later
// Interval: what is known of a probability.
#pragma once

namespace cutwater::logic {

struct Interval {
    double lower = 0, upper = 1;
    bool exact() const { return lower == upper; }
};

} // namespace cutwater::logic
