// SPDX-License-Identifier: GPL-3.0-or-later
// Closed forms where the order of failures counts: two parts only.
#pragma once

namespace cutwater::reliability {

// Chance that A fails before B and both before `time`: constant rates per hour, no repair.
// (1-exp(-lB t)) - lB/(lA+lB) (1-exp(-(lA+lB) t)); t infinite: lA/(lA+lB).
double priorityAnd(double rateFirst, double rateSecond, double time);

// Chance that both of two equal parts have failed by `time` where the standby one fails at
// `dormancy` (0 cold .. 1 hot) times the rate while it waits; switching is perfect.
double standbyPair(double rate, double dormancy, double time);

} // namespace cutwater::reliability
