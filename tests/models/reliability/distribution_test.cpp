// SPDX-License-Identifier: GPL-3.0-or-later
// Distributions and the random numbers that they are drawn with. Percentiles against Boost.Math.
#include "models/reliability/distribution.h"

#include "models/reliability/uncertainty_random.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/gamma.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace cutwater::reliability {
namespace {

double relative(double got, double wanted) {
    return std::abs(got - wanted) / std::abs(wanted);
}

const std::vector<double> kPercentages{1e-15,  1e-9,     1e-6,     1e-4,     0.01, 0.05,
                                       0.2,    0.49,     0.51,     0.7,      0.95, 0.99,
                                       0.9999, 1 - 1e-6, 1 - 1e-9, 1 - 1e-13};

TEST(Distribution, NormalPercentiles) {
    const boost::math::normal normal;
    for (const double p : kPercentages)
        EXPECT_LT(relative(normalQuantile(p), boost::math::quantile(normal, p)), 2e-14) << p;
    EXPECT_EQ(normalQuantile(0.5), 0);
    EXPECT_NEAR(normalQuantile(0.95), kZ95, 1e-15);
    EXPECT_LT(relative(normalQuantile(1e-300), -37.0471), 1e-6);
}

TEST(Distribution, GammaDrawsAreItsPercentiles) {
    for (const double shape : {0.2, 0.5, 1.0, 1.5, 2.5, 30.0, 1000.0}) {
        const project::Gamma gamma{shape, 1250.0};
        const Sampler draw(gamma);
        const boost::math::gamma_distribution<double> reference(shape, 1 / 1250.0);
        for (double p = 0.00013; p < 1; p += 0.00371)
            EXPECT_LT(relative(draw(p), boost::math::quantile(reference, p)), 1e-7)
                << shape << " " << p;
        for (const double p : kPercentages) {
            const double wanted = boost::math::quantile(reference, p);
            EXPECT_LT(relative(draw(p), wanted), 1e-7) << shape << " " << p;
            EXPECT_LT(relative(quantile(gamma, p), wanted), 1e-11) << shape << " " << p;
        }
    }
}

TEST(Distribution, BetaDrawsAreItsPercentiles) {
    const std::pair<double, double> shapes[] = {{0.5, 0.5}, {0.5, 100.5}, {1.24, 189075},
                                                {21, 8},    {3, 0.4},     {1, 1}};
    for (const auto& [alpha, beta] : shapes) {
        const project::Beta distribution{alpha, beta};
        const Sampler draw(distribution);
        const boost::math::beta_distribution<double> reference(alpha, beta);
        for (double p = 0.0007; p < 1; p += 0.0093) {
            const double wanted = boost::math::quantile(reference, p);
            EXPECT_LT(relative(draw(p), wanted), 1e-7) << alpha << " " << beta << " " << p;
            EXPECT_LT(relative(quantile(distribution, p), wanted), 1e-10)
                << alpha << " " << beta << " " << p;
        }
    }
}

TEST(Distribution, VerySmallShapesNeitherThrowNorMakeNonsense) {
    const Sampler draw(project::Gamma{0.001, 1.0});
    EXPECT_GE(draw(1e-10), 0);
    EXPECT_LT(draw(1e-10), 1e-300);
    EXPECT_GT(draw(0.9999), 0.01);
    EXPECT_TRUE(std::isfinite(Sampler(project::Beta{0.001, 0.001})(0.5)));
}

TEST(Distribution, TriangularAndUniform) {
    const project::Triangular triangle{1, 2, 5};
    const Sampler draw(triangle);
    for (const double p : {0.01, 0.2, 0.25, 0.3, 0.8, 0.999}) { // by its distribution function
        const double x = draw(p);
        const double below = x < 2 ? (x - 1) * (x - 1) / (4 * 1) : 1 - (5 - x) * (5 - x) / (4 * 3);
        EXPECT_NEAR(below, p, 1e-14);
        EXPECT_EQ(x, quantile(triangle, p));
    }
    EXPECT_DOUBLE_EQ(Sampler(project::Uniform{2, 6})(0.25), 3);
    const project::Triangular upright{1, 1, 2}; // the mode at an end
    EXPECT_NEAR(Sampler(upright)(0.75), 1.5, 1e-15);
}

TEST(Distribution, MomentsAgreeWithTheirPercentiles) {
    const project::Distribution all[] = {project::Lognormal{1e-3, 3}, project::Gamma{1.5, 70080},
                                         project::Beta{2, 30}, project::Uniform{1, 4},
                                         project::Triangular{0, 1, 5}};
    for (const project::Distribution& distribution : all) {
        // Midpoint sums over the percentages, for mean and variance.
        const int steps = 200'000;
        double sum = 0, squares = 0;
        const Sampler draw(distribution);
        for (int i = 0; i < steps; ++i) {
            const double x = draw((i + 0.5) / steps);
            sum += x;
            squares += x * x;
        }
        sum /= steps;
        EXPECT_LT(relative(sum, mean(distribution)), 1e-4);
        EXPECT_LT(relative(std::sqrt(squares / steps - sum * sum), standardDeviation(distribution)),
                  5e-3);
    }
}

// Known answers of the generator's authors (kat_vectors of Random123), from memory.
TEST(RandomNumbers, PhiloxKnownAnswers) {
    using Four = std::array<std::uint32_t, 4>;
    EXPECT_EQ(philox({0, 0, 0, 0}, {0, 0}), (Four{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}));
    EXPECT_EQ(philox({~0u, ~0u, ~0u, ~0u}, {~0u, ~0u}),
              (Four{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd}));
    EXPECT_EQ(philox({0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}, {0xa4093822, 0x299f31d0}),
              (Four{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1}));
}

TEST(RandomNumbers, AreEvenAndApart) {
    const int samples = 200'000;
    double sum = 0, product = 0;
    for (int i = 0; i < samples; ++i) {
        const double a = uniform(5, 1, static_cast<std::uint64_t>(i));
        const double b = uniform(5, 2, static_cast<std::uint64_t>(i));
        ASSERT_TRUE(a > 0 && a < 1);
        sum += a;
        product += (a - 0.5) * (b - 0.5);
    }
    EXPECT_NEAR(sum / samples, 0.5, 4 * std::sqrt(1 / 12.0 / samples));
    EXPECT_NEAR(product / samples, 0, 4 / 12.0 / std::sqrt(samples));
    EXPECT_NE(uniform(5, 1, 0), uniform(6, 1, 0));
}

TEST(RandomNumbers, PermutationsHitEveryPlaceOnce) {
    for (const std::uint32_t size : {1u, 2u, 3u, 10u, 100u, 1000u, 4096u, 10'000u}) {
        const Permutation permutation(3, 7, 1, size);
        std::set<std::uint32_t> seen;
        for (std::uint32_t i = 0; i < size; ++i)
            seen.insert(permutation(i));
        EXPECT_EQ(seen.size(), size);
        EXPECT_LT(*seen.rbegin(), size);
    }
    // Two inputs' permutations have nothing to do with each other (rank correlation).
    const std::uint32_t size = 20'000;
    const Permutation a(3, 7, 1, size), b(3, 8, 1, size);
    double product = 0, own = 0;
    for (std::uint32_t i = 0; i < size; ++i) {
        const auto centred = [size](std::uint32_t place) { return (place + 0.5) / size - 0.5; };
        product += centred(a(i)) * centred(b(i));
        own += centred(a(i)) * centred(i);
    }
    EXPECT_NEAR(product / size * 12, 0, 4 / std::sqrt(size));
    EXPECT_NEAR(own / size * 12, 0, 4 / std::sqrt(size));
}

} // namespace
} // namespace cutwater::reliability
