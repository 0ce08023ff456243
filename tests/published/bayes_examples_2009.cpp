// SPDX-License-Identifier: GPL-3.0-or-later
// NASA/SP-2009-569 (2009), section 4.2: Bayesian examples; all printed figures [seen] in a machine
// reading of the text, so that figures which do not agree may be reading errors. Held: the gamma
// and beta distributions that a project's numbers may have. Examples with lognormal priors (8.2d,
// e, j, k, l, o) have no counterpart in the tool; two of their printed figures are off by a power
// of ten: a mean of 4.7e-6 for 4.689e-5 (8.2d, below the 5 % to 95 % range's middle) and a 5 %
// point of 3.5e-6 for 3.550e-8 (8.2k, it would be above the mean).
#include "models/reliability/distribution.h"
#include "tests/oracle/solved.h"

#include <algorithm>
#include <cmath>

namespace cutwater::published {
namespace {

using namespace reliability;
using oracle::near;
using project::Beta;
using project::Gamma;

void expectFigures(const project::Distribution& x, double wantedMean, double low, double high) {
    // As many digits as are given: seven.
    EXPECT_TRUE(near(mean(x), wantedMean, 5e-7));
    EXPECT_TRUE(near(quantile(x, 0.05), low, 5e-7));
    EXPECT_TRUE(near(quantile(x, 0.95), high, 5e-7));
}

TEST(BayesExamples, BetaPriorAndPosterior) { // 8.2a to c; printed to two digits
    expectFigures(Beta{1.24, 189075}, 6.558201e-6, 5.441163e-7, 1.822457e-5);
    // Two failures in 285: the second parameter is 189,075 + 285 - 2 = 189,358. The text prints
    // 189,226, which no sum of its inputs gives; its mean and percentiles are those of 189,358.
    const Beta posterior{1.24 + 2, 189075 + 285 - 2};
    EXPECT_EQ(posterior.beta, 189358);
    expectFigures(posterior, 1.711015e-5, 4.980187e-6, 3.513054e-5);
}

TEST(BayesExamples, GammaPosterior) { // 8.2f to i
    const Gamma posterior{1.6, 365000 + 200 * 24.0};
    EXPECT_EQ(posterior.rate, 369800);
    // First printed as 4.3e-9; a page later as 4.3e-6, which agrees.
    EXPECT_TRUE(near(mean(posterior), 4.326663e-6, 5e-7));
    EXPECT_TRUE(near(quantile(posterior, 0.05), 5.626933e-7, 5e-7));
    EXPECT_TRUE(near(quantile(posterior, 0.95), 1.103121e-5, 5e-7));
    EXPECT_NEAR(std::exp(-1000 * mean(posterior)), 0.995682683, 5e-10);
    EXPECT_NEAR(std::pow(369800.0 / 370800.0, 1.6), 0.995688498, 5e-10); // averaged
}

TEST(BayesExamples, GammaPosteriorOfSevenTimes) { // 8.2m, n
    const double times = 55707 + 255092 + 56776 + 111646 + 11358772.0 + 875209 + 68978;
    EXPECT_EQ(times, 12'782'180); // printed 12,782,181: one hour too many, and of no effect
    expectFigures(Gamma{1.6 + 7, 365000 + times}, 6.541327e-7, 3.352368e-7, 1.058943e-6);
}

TEST(BayesExamples, GammaByItsMedianAndItsUpperEnd) { // 8.2p to s
    const Gamma exact{0.439524, 8.8360e8};
    EXPECT_TRUE(near(quantile(exact, 0.5), 2e-10, 5e-5));
    EXPECT_TRUE(near(quantile(exact, 0.95), 2e-9, 5e-5));
    // Printed: shape about 0.6, rate about 1.2e9 h; its solver stopped early, and says so.
    const Gamma printed{0.6, 1.2e9};
    EXPECT_NEAR(quantile(printed, 0.5), 2.63e-10, 5e-13);
    EXPECT_NEAR(quantile(printed, 0.95), 1.80e-9, 5e-12);
    // Printed: no gamma has a 95 % point above about 5.8 means. 5.826 at a shape of 0.09; the very
    // highest, 5.827, is at 0.088.
    EXPECT_NEAR(quantile(Gamma{0.09, 1}, 0.95) / 0.09, 5.826, 5e-4);
    double most = 0;
    for (double shape = 0.02; shape < 1; shape += 0.001)
        most = std::max(most, quantile(Gamma{shape, 1}, 0.95) / shape);
    EXPECT_NEAR(most, 5.827, 5e-4);
    EXPECT_NEAR(quantile(Gamma{0.24, 1}, 0.99) / 0.24, 9.958, 5e-4);
    const Gamma wide{0.618149, 2200.56};
    EXPECT_TRUE(near(quantile(wide, 0.05), 3e-6, 5e-5));
    EXPECT_TRUE(near(quantile(wide, 0.95), 1e-3, 5e-5));
}

} // namespace
} // namespace cutwater::published
