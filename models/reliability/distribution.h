// SPDX-License-Identifier: GPL-3.0-or-later
// Distributions of project/quantity.h in numbers: percentiles, moments, and draws for a simulation.
// The lognormal's error factor is 95 % / median with z = 1.6448536269514722 (sources that round z
// to 1.645 get a mean that is up to 0.02 % lower). Preconditions: what validate() asks for.
#pragma once

#include "models/project/quantity.h"

#include <array>
#include <memory>
#include <vector>

namespace cutwater::reliability {

constexpr double kZ95 = 1.6448536269514722; // 95 % point of the standard normal

// x with P(X <= x) = p, X standard normal; 0 < p < 1. Wichura's AS 241 (1988), relative error below
// 1e-15.
double normalQuantile(double p);
// t with P(T <= t) = p for Student's distribution, `freedom` > 0.
double studentQuantile(double p, double freedom);
// P(X <= x) and P(X > x), X standard normal, each with its own digits.
double normalBelow(double x);
double normalAbove(double x);

// ln(EF) / z.
double lognormalSigma(const project::Lognormal& distribution);

// x with P(X <= x) = p, in the quantity's own unit; 0 < p < 1. No distribution: a problem of the
// caller.
double quantile(const project::Distribution& distribution, double p);
double mean(const project::Distribution& distribution);
double standardDeviation(const project::Distribution& distribution);

// Draws quickly: a percentile of u. Lognormal, uniform and triangular by their formulas; gamma and
// beta from a table of their percentiles with the exact slopes, relative error below 1e-7. A value;
// copies share the table. Reading is safe from several threads.
class Sampler {
public:
    explicit Sampler(const project::Distribution& distribution);
    // 0 < u < 1.
    double operator()(double u) const;

private:
    enum class Kind { lognormal, uniform, triangular, logTable, oddsTable };
    struct Table; // by z = normalQuantile(u)
    Kind m_kind = Kind::uniform;
    double m_a = 0, m_b = 0, m_c = 0;
    std::shared_ptr<const Table> m_table;
};

} // namespace cutwater::reliability
