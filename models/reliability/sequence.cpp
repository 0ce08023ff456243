// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/sequence.h"

#include <cmath>

namespace cutwater::reliability {

namespace {

// Below this the closed forms subtract nearly equal numbers and their power series are used.
constexpr double kSeriesBelow = 1.0;
constexpr int kSeriesTerms = 24; // 1/25! is far below the last digit of a double

} // namespace

double priorityAnd(double rateFirst, double rateSecond, double time) {
    if (rateFirst == 0 || rateSecond == 0 || time == 0) return 0;
    if (std::isinf(time)) return rateFirst / (rateFirst + rateSecond);
    const double a = rateFirst * time;
    const double b = rateSecond * time;
    if (a + b >= kSeriesBelow) // the formula of the header with its two large terms taken together
        return (a * -std::expm1(-b) + b * std::exp(-b) * std::expm1(-a)) / (a + b);
    // b * sum over n >= 1 of (-1)^(n+1) ((a+b)^n - b^n) / (n+1)!; the difference of the powers
    // grows by a recurrence without subtraction.
    double difference = a; // (a+b)^n - b^n
    double power = b;      // b^n
    double factorial = 2;  // (n+1)!
    double sum = 0;
    for (int n = 1; n <= kSeriesTerms; ++n) {
        sum += (n % 2 == 1 ? difference : -difference) / factorial;
        difference = (a + b) * difference + a * power;
        power *= b;
        factorial *= n + 2;
    }
    return b * sum;
}

double standbyPair(double rate, double dormancy, double time) {
    const double x = rate * time;
    if (!(x > 0)) return 0;
    if (std::isinf(x)) return 1;
    if (x >= kSeriesBelow) {
        // After the first failure, at (1 + dormancy) rate, the other one works alone.
        const double waiting = dormancy * x;
        const double mean = waiting == 0 ? 1.0 : -std::expm1(-waiting) / waiting;
        return 1 - std::exp(-x) * (1 + x * mean);
    }
    // exp(-x) x sum over n >= 1 of x^n / (n+1)! (1 - (-dormancy)^n): no term is negative.
    double power = x;
    double minusDormancy = -dormancy;
    double factorial = 2;
    double sum = 0;
    for (int n = 1; n <= kSeriesTerms; ++n) {
        sum += power / factorial * (1 - minusDormancy);
        power *= x;
        minusDormancy *= -dormancy;
        factorial *= n + 2;
    }
    return std::exp(-x) * x * sum;
}

} // namespace cutwater::reliability
