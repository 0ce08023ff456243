// SPDX-License-Identifier: GPL-3.0-or-later
// What a heap of samples says, and how sure that is. All sums run in the order of the samples, so
// the figures are the same to the bit whoever drew them.
#pragma once

#include "models/reliability/uncertainty.h"

#include <span>
#include <vector>

namespace cutwater::reliability {

// A figure with the interval that holds the true one in 95 of 100 repetitions.
struct Estimate {
    double value = 0, low = 0, high = 0;
};

struct SampleSummary {
    std::size_t samples = 0;
    Estimate mean;
    double standardDeviation = 0;
    Estimate p5, median, p95;
    double least = 0, greatest = 0;
    // Share of the sum that the largest thousandth of the samples brings: near 1 the mean hangs on
    // a few draws and its interval is not to be trusted.
    double tailShare = 0;
};

// Mean: +- z sd / sqrt(N), plain; between the batches by Student's t with 9 degrees of freedom,
// stratified. Percentiles: by the ranks that the binomial distribution gives (distribution-free),
// plain; between the batches, stratified. Percentiles themselves are interpolated between ranks.
// Precondition: at least 100 samples; stratified: a multiple of kBatches.
SampleSummary summarise(std::span<const double> samples, Drawing drawing);

// The mean and the 95 % point of the first n samples, for ascending n up to all of them.
struct ConvergencePoint {
    std::size_t samples = 0;
    Estimate mean;
    double p95 = 0;
};
std::vector<ConvergencePoint> convergence(std::span<const double> samples, Drawing drawing);

// The p points of sorted samples, 0 < p < 1.
double percentile(std::span<const double> sorted, double p);

} // namespace cutwater::reliability
