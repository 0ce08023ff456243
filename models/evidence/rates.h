// SPDX-License-Identifier: GPL-3.0-or-later
// Rates and probabilities from counts. Exposure is whatever the count was watched over, hours or
// starts or demands; rates come out per one of them.
#pragma once

#include <cstddef>

namespace cutwater::evidence {

struct Estimate {
    double mean = 0; // best single figure
    double low = 0, high = 0;
};

// One-sided bounds on the rate of a Poisson count at `confidence` (0..1, exclusive), after a fixed
// exposure > 0: chi2(C; 2n+2) / (2T) and chi2(1-C; 2n) / (2T) (NIST/SEMATECH e-Handbook 8.4.5.1).
// The lower one is 0 where nothing was counted; the upper one is then -ln(1-C) / T.
double rateUpperBound(std::size_t count, double exposure, double confidence);
double rateLowerBound(std::size_t count, double exposure, double confidence);
// n/T between the two bounds; `coverage` 0.9 takes each at 0.95.
Estimate countedRate(std::size_t count, double exposure, double coverage);

// Posterior with the prior that claims to know nothing (Jeffreys; NASA/SP-2009-569 section 4.2):
// Gamma(n + 0.5, T), mean (n + 0.5) / T, with the interval that leaves half of 1 - coverage on each
// side.
Estimate jeffreysRate(std::size_t count, double exposure, double coverage);
// Beta(x + 0.5, n - x + 0.5), mean (x + 0.5) / (n + 1), for `failures` in `demands`; failures <=
// demands, demands > 0.
Estimate jeffreysProbability(std::size_t failures, std::size_t demands, double coverage);

// Has it become worse? Chance of at least `after` of all events falling into the second exposure if
// the rate had not changed (exact binomial, one-sided). Exposures > 0.
double chanceOfSuchAnIncrease(std::size_t before, double exposureBefore, std::size_t after,
                              double exposureAfter);

} // namespace cutwater::evidence
