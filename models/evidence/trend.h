// SPDX-License-Identifier: GPL-3.0-or-later
// Does it fail more and more often, or less and less? Tests and growth model: NIST/SEMATECH
// e-Handbook 8.2.3.4 and 8.4.5.2; plain maximum likelihood as in MIL-HDBK-189C (from memory).
#pragma once

#include "models/project/problem.h"

#include <cstddef>
#include <vector>

namespace cutwater::evidence {

// When the watching ended decides how many of the times are free: it must be said, not guessed.
enum class Stopping {
    atTime,    // at a time of its own, after the last failure
    atFailure, // with the last failure
};

// Intensity scale x shape x t^(shape-1): shape below 1 gets better, above 1 gets worse.
struct PowerLaw {
    double shape = 0, scale = 0;
    double intensityAtEnd = 0;   // failures per unit of time, now
    double timeBetweenAtEnd = 0; // 1 / intensityAtEnd
};

struct Trend {
    std::size_t failures = 0;
    double end = 0; // of the watching
    Stopping stopping = Stopping::atTime;

    // Laplace: mean of the times against the middle of the watching, in standard deviations; above
    // 0 is worse. The chances are one-sided: of a value at least as far out that way with no trend.
    double laplace = 0;
    double laplaceChanceWorse = 0, laplaceChanceBetter = 0;

    // Power law: 2 x sum of ln(end / time), chi-square with no trend; small is worse.
    double statistic = 0;
    std::size_t degreesOfFreedom = 0;
    double powerLawChanceWorse = 0, powerLawChanceBetter = 0;

    PowerLaw plain;    // maximum likelihood, shape n / sum
    PowerLaw unbiased; // shape (n-1) / sum, or (n-2) / sum where stopped at a failure
    double shapeLow = 0, shapeHigh = 0; // two-sided 90 % for the shape
};

// `times` since the watching began, ascending, each above 0 and at most `end`; ties are allowed.
// With Stopping::atFailure the last one is the end. Problems: fewer than 3 failures (a trend cannot
// be seen), times out of range or out of order.
project::Outcome<Trend> trendOf(const std::vector<double>& times, double end, Stopping stopping);

// Reversals: pairs of gaps of which the later one is strictly longer. With no trend half of all
// pairs; more means better.
std::size_t reversals(const std::vector<double>& gaps);

} // namespace cutwater::evidence
