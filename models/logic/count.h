// SPDX-License-Identifier: GPL-3.0-or-later
// Count: how many sets there are, which may be far more than a machine could list.
#pragma once

#include <string>

namespace cutwater::logic {

__extension__ typedef unsigned __int128 UInt128;

// Exact up to 2^128 - 1; beyond that `saturated`, and `value` is a lower bound.
struct Count {
    UInt128 value = 0;
    bool saturated = false;
    bool operator==(const Count&) const = default;
};

Count operator+(const Count& a, const Count& b);
Count operator*(const Count& a, const Count& b);

// "252"; "more than 340282366920938463463374607431768211455" where saturated.
std::string toDecimal(const Count& count);
// The nearest double, for figures such as "1.3e12".
double toDouble(const Count& count);

} // namespace cutwater::logic
