// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/count.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

constexpr UInt128 kLargest = ~UInt128{0};

std::string digits(UInt128 value) {
    std::string text;
    do {
        text.push_back(static_cast<char>('0' + static_cast<int>(value % 10)));
        value /= 10;
    } while (value != 0);
    std::reverse(text.begin(), text.end());
    return text;
}

} // namespace

Count operator+(const Count& a, const Count& b) {
    UInt128 sum = 0;
    const bool overflow = __builtin_add_overflow(a.value, b.value, &sum);
    return {overflow ? kLargest : sum, overflow || a.saturated || b.saturated};
}

Count operator*(const Count& a, const Count& b) {
    if ((a.value == 0 && !a.saturated) || (b.value == 0 && !b.saturated)) return {};
    UInt128 product = 0;
    const bool overflow = __builtin_mul_overflow(a.value, b.value, &product);
    return {overflow ? kLargest : product, overflow || a.saturated || b.saturated};
}

std::string toDecimal(const Count& count) {
    return count.saturated ? "more than " + digits(count.value) : digits(count.value);
}

double toDouble(const Count& count) {
    return static_cast<double>(count.value);
}

} // namespace cutwater::logic
