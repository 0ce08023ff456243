// SPDX-License-Identifier: GPL-3.0-or-later
// The few distribution functions that the estimates and tests of this folder stand on. Relative
// error below 1e-12. Preconditions: probabilities strictly between 0 and 1, parameters above 0.
#pragma once

namespace cutwater::evidence {

// x with P(X <= x) = p; X chi-square with `freedom` degrees of freedom.
double chiSquareQuantile(double p, double freedom);
// P(X > x), and P(X <= x) with its own digits.
double chiSquareTail(double x, double freedom);
double chiSquareBelow(double x, double freedom);
// X gamma with density ~ x^(shape-1) exp(-x).
double gammaQuantile(double p, double shape);
// X beta with density ~ x^(a-1) (1-x)^(b-1).
double betaQuantile(double p, double a, double b);
// P(X >= count); X binomial, `trials` each with chance p. count 0: 1.
double binomialTail(unsigned count, unsigned trials, double p);
// P(X > z); X standard normal.
double normalTail(double z);

} // namespace cutwater::evidence
