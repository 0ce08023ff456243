// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/evidence/distributions.h"
#include "models/evidence/rates.h"
#include "tests/oracle/solved.h"

#include <cmath>

namespace cutwater::evidence {
namespace {

using oracle::near;

// Chi-square bounds on a Poisson rate in units of 1/T; the formulas are in NIST/SEMATECH e-Handbook
// 8.4.5.1 (seen), the table is derived: percentiles by bisection at 25 digits.
TEST(Rates, ChiSquareBounds) {
    struct Row {
        std::size_t count;
        double up50, up60, up90, up95, up99, low90, low95;
    };
    const Row rows[] = {
        {0, 0.69314718, 0.91629073, 2.3025851, 2.9957323, 4.6051702, 0, 0},
        {1, 1.6783470, 2.0223132, 3.8897202, 4.7438645, 6.6383521, 0.10536052, 0.051293294},
        {2, 2.6740603, 3.1053786, 5.3223203, 6.2957936, 8.4059469, 0.53181161, 0.35536151},
        {3, 3.6720607, 4.1752627, 6.6807831, 7.7536565, 10.045118, 1.1020653, 0.81769145},
        {4, 4.6709089, 5.2366181, 7.9935896, 9.1535190, 11.604626, 1.7447696, 1.3663184},
        {5, 5.6701612, 6.2919190, 9.2746739, 10.513035, 13.108484, 2.4325910, 1.9701496}};
    for (const Row& row : rows) {
        SCOPED_TRACE(row.count);
        EXPECT_TRUE(near(rateUpperBound(row.count, 1, 0.50), row.up50, 1e-7));
        EXPECT_TRUE(near(rateUpperBound(row.count, 1, 0.60), row.up60, 1e-7));
        EXPECT_TRUE(near(rateUpperBound(row.count, 1, 0.90), row.up90, 1e-7));
        EXPECT_TRUE(near(rateUpperBound(row.count, 1, 0.95), row.up95, 1e-7));
        EXPECT_TRUE(near(rateUpperBound(row.count, 1, 0.99), row.up99, 1e-7));
        EXPECT_TRUE(near(rateLowerBound(row.count, 1, 0.90), row.low90, 1e-7));
        EXPECT_TRUE(near(rateLowerBound(row.count, 1, 0.95), row.low95, 1e-7));
        // Exposure divides; a two-sided 90 % interval takes the 95 % columns.
        const Estimate estimate = countedRate(row.count, 250, 0.9);
        EXPECT_TRUE(near(estimate.mean, static_cast<double>(row.count) / 250, 1e-15));
        EXPECT_TRUE(near(estimate.low, row.low95 / 250, 1e-7));
        EXPECT_TRUE(near(estimate.high, row.up95 / 250, 1e-7));
    }
    // Without failures the upper bound is -ln(1-C)/T.
    EXPECT_TRUE(near(rateUpperBound(0, 7, 0.8), -std::log(0.2L) / 7, 1e-12));
}

TEST(Rates, BoundsAreThoseOfThePoissonDistribution) {
    // At the upper bound so few are seen with the chance 1-C, at the lower so many; summed
    // directly.
    for (const std::size_t count : {1u, 4u, 20u}) {
        const double up = rateUpperBound(count, 1, 0.95), low = rateLowerBound(count, 1, 0.95);
        long double atMost = 0, fewer = 0, term = std::exp(-static_cast<long double>(up));
        for (std::size_t k = 0; k <= count; ++k, term *= static_cast<long double>(up) / k)
            atMost += term;
        term = std::exp(-static_cast<long double>(low));
        for (std::size_t k = 0; k < count;) {
            fewer += term;
            term *= static_cast<long double>(low) / ++k;
        }
        EXPECT_TRUE(near(0.05, atMost, 1e-10));
        EXPECT_TRUE(near(0.05, 1 - fewer, 1e-10));
    }
}

TEST(Rates, FactorsOnTheMeanTimeBetweenFailures) { // two-sided 90 %, derived
    struct Row {
        std::size_t count;
        double low, high;
    };
    for (const Row& row : {Row{1, 0.2107986, 19.495726},
                           {2, 0.31767242, 5.6280715},
                           {5, 0.47560006, 2.5378784},
                           {10, 0.5895455, 1.8431801}}) {
        const Estimate estimate = countedRate(row.count, 1, 0.9);
        EXPECT_TRUE(near(estimate.mean / estimate.high, row.low, 1e-7)) << row.count;
        EXPECT_TRUE(near(estimate.mean / estimate.low, row.high, 1e-7)) << row.count;
    }
}

// The priors are in NASA/SP-2009-569 section 4.2 (seen), the numbers derived.
TEST(Rates, Jeffreys) {
    const Estimate none = jeffreysRate(0, 1000, 0.9);
    EXPECT_TRUE(near(none.mean, 5e-4, 1e-12));
    EXPECT_NEAR(none.low, 1.96607e-6, 5.1e-12); // as far as it is printed
    EXPECT_TRUE(near(none.high, 1.9207294e-3, 1e-7));
    const Estimate two = jeffreysRate(2, 1e5, 0.9);
    EXPECT_TRUE(near(two.mean, 2.5e-5, 1e-12));
    EXPECT_TRUE(near(two.low, 5.7273811e-6, 1e-7));
    EXPECT_TRUE(near(two.high, 5.5352488e-5, 1e-7));
    const Estimate noDemand = jeffreysProbability(0, 100, 0.9);
    EXPECT_TRUE(near(noDemand.mean, 0.0049504950, 1e-7));
    EXPECT_TRUE(near(noDemand.low, 1.9611417e-5, 1e-7));
    EXPECT_TRUE(near(noDemand.high, 0.018976888, 1e-7));
    const Estimate oneDemand = jeffreysProbability(1, 50, 0.9);
    EXPECT_TRUE(near(oneDemand.mean, 0.0294117647, 1e-7));
    EXPECT_TRUE(near(oneDemand.low, 0.0035299785, 1e-7));
    EXPECT_TRUE(near(oneDemand.high, 0.075538816, 1e-7));
}

// The invented demo: 6 foulings in 5,479 h before the fuel of 2025-06-10, 12 in 3,093 h after it.
TEST(Rates, TheFuelMadeItWorse) {
    EXPECT_TRUE(near(chanceOfSuchAnIncrease(6, 5479, 12, 3093), 0.00815, 1e-3)); // derived, rounded
    // The same by adding the binomial terms.
    const long double p = 3093.0L / (5479 + 3093);
    long double sum = 0;
    for (int k = 12; k <= 18; ++k)
        sum += std::exp(std::lgamma(19.0L) - std::lgamma(k + 1.0L) - std::lgamma(19.0L - k) +
                        k * std::log(p) + (18 - k) * std::log1p(-p));
    EXPECT_TRUE(near(chanceOfSuchAnIncrease(6, 5479, 12, 3093), sum, 1e-11));
    EXPECT_NEAR(6 / 5479.0, 0.001095, 5e-7);
    EXPECT_NEAR(12 / 3093.0, 0.003880, 5e-7);
    // Nothing after it is no sign of anything.
    EXPECT_EQ(chanceOfSuchAnIncrease(6, 100, 0, 50), 1);
    EXPECT_EQ(chanceOfSuchAnIncrease(0, 100, 0, 50), 1);
}

TEST(Rates, ImpulseLines) { // the invented demo: plugged 3 times in 13,800 boiler hours
    EXPECT_NEAR(countedRate(3, 8572 + 5228, 0.9).mean, 2.2e-4, 5e-6);
}

TEST(Distributions, NormalTail) {
    EXPECT_TRUE(near(normalTail(0), 0.5L, 1e-15));
    EXPECT_NEAR(normalTail(1.6448536269514722), 0.05, 1e-12);
    EXPECT_GT(normalTail(30), 0); // keeps its digits far out
}

} // namespace
} // namespace cutwater::evidence
