// SPDX-License-Identifier: GPL-3.0-or-later
// NIST/SEMATECH e-Handbook 8.2.3.4 and 8.4.5.2: test definitions and unbiased estimates seen there;
// the ten repair times and the published figures of the case are from memory.
#include "models/evidence/trend.h"
#include "tests/oracle/solved.h"

#include <cmath>
#include <gmock/gmock.h>

namespace cutwater::evidence {
namespace {

using oracle::near;
using ::testing::HasSubstr;

const std::vector<double> kRepairs{5,   40,  43,  175,  389,
                                   712, 747, 795, 1299, 1478}; // h, from memory

Trend trend(const std::vector<double>& times, double end, Stopping stopping) {
    const auto outcome = trendOf(times, end, stopping);
    if (outcome) return *outcome;
    ADD_FAILURE() << project::toSentence(outcome.problems().front());
    return {};
}

TEST(Trend, Reversals) { // 33, from memory; the tie 35/35 does not count
    EXPECT_EQ(reversals({5, 35, 3, 132, 214, 323, 35, 48, 504, 179}), 33u);
    EXPECT_EQ(reversals({}), 0u);
    EXPECT_EQ(reversals({2, 2, 2}), 0u);
    EXPECT_EQ(reversals({1, 2, 3}), 3u);
}

TEST(Trend, StoppedAtATime) {
    const Trend got = trend(kRepairs, 1500, Stopping::atTime);
    EXPECT_NEAR(got.statistic, 37.23, 0.005);           // from memory
    EXPECT_TRUE(near(got.statistic, 37.2280815, 1e-7)); // derived
    EXPECT_EQ(got.degreesOfFreedom, 20u);
    EXPECT_NEAR(got.powerLawChanceBetter, 0.01098636, 1e-7); // derived
    EXPECT_TRUE(near(got.powerLawChanceWorse, 1 - got.powerLawChanceBetter, 1e-12));
    EXPECT_TRUE(near(got.laplace, -1.326949183, 1e-7));     // derived
    EXPECT_NEAR(got.laplaceChanceBetter, 0.09226275, 1e-7); // derived
    EXPECT_NEAR(1 - got.unbiased.shape, 0.516, 0.0005);     // growth slope, from memory
    EXPECT_NEAR(1 - got.unbiased.shape, 0.516494021, 1e-8); // derived
    EXPECT_NEAR(got.unbiased.shape, 0.483505979, 1e-8);
    EXPECT_NEAR(got.unbiased.scale, 0.291300269, 1e-8);
    EXPECT_NEAR(got.unbiased.timeBetweenAtEnd, 310.23, 0.005);           // from memory
    EXPECT_TRUE(near(got.unbiased.timeBetweenAtEnd, 310.2340124, 1e-7)); // derived
    // Plain maximum likelihood (MIL-HDBK-189C from memory), derived.
    EXPECT_NEAR(got.plain.shape, 0.537228866, 1e-8);
    EXPECT_NEAR(got.plain.scale, 0.196658216, 1e-8);
    EXPECT_TRUE(near(got.plain.intensityAtEnd, 0.00358152577, 1e-8));
    EXPECT_TRUE(near(got.plain.timeBetweenAtEnd, 279.2106111, 1e-8));
    EXPECT_NEAR(got.shapeLow, 0.29146846, 1e-7); // two-sided 90 %, derived
    EXPECT_NEAR(got.shapeHigh, 0.84372956, 1e-7);
    // The power-law test sees the improvement at 5 %, Laplace does not.
    EXPECT_LT(got.powerLawChanceBetter, 0.05);
    EXPECT_GT(got.laplaceChanceBetter, 0.05);
}

TEST(Trend, StoppedAtTheLastFailure) { // derived
    const Trend got = trend(kRepairs, 1478, Stopping::atFailure);
    EXPECT_TRUE(near(got.statistic, 36.9325758, 1e-8));
    EXPECT_EQ(got.degreesOfFreedom, 18u);
    EXPECT_TRUE(near(got.laplace, -1.910959078, 1e-8));
    EXPECT_NEAR(got.plain.shape, 0.541527353, 1e-8);
    EXPECT_NEAR(got.unbiased.shape, 0.433221882, 1e-8);
}

TEST(Trend, ElectrodesOfTheDemoGetWorse) { // invented log; check values derived
    const std::vector<double> hours{843,  1583, 2414, 3311, 4312, 5209, 5689, 6099, 6429,
                                    6765, 7103, 7389, 7636, 7857, 8039, 8208, 8351, 8507};
    const Trend got = trend(hours, 8572, Stopping::atTime);
    EXPECT_NEAR(got.laplace, 2.7238, 5e-5);
    EXPECT_NEAR(got.plain.shape, 1.9215, 5e-5);
    EXPECT_NEAR(got.unbiased.shape, 1.8148, 5e-5);
    EXPECT_NEAR(got.statistic, 18.7349, 5e-5);
    EXPECT_NEAR(got.plain.intensityAtEnd, 0.004035, 5e-7);
    EXPECT_LT(got.laplaceChanceWorse, 0.005);
    EXPECT_LT(got.powerLawChanceWorse, 0.01);
    EXPECT_GT(got.shapeLow, 1);
}

TEST(Trend, NoTrendInEvenTimes) {
    std::vector<double> times;
    for (int i = 1; i <= 20; ++i)
        times.push_back(100.0 * i - 50);
    const Trend got = trend(times, 2000, Stopping::atTime);
    EXPECT_NEAR(got.laplace, 0, 1e-12);
    EXPECT_NEAR(got.plain.shape, 1, 0.1);
    EXPECT_GT(got.powerLawChanceWorse, 0.2);
    EXPECT_GT(got.powerLawChanceBetter, 0.2);
}

TEST(Trend, SaysWhatIsWrongWithTheTimes) {
    const auto sentence = [](const std::vector<double>& times, double end,
                             Stopping stopping = Stopping::atTime) {
        const auto outcome = trendOf(times, end, stopping);
        return outcome ? "a trend" : project::toSentence(outcome.problems().front());
    };
    EXPECT_EQ(sentence({1, 2}, 10),
              "error: there are 2 failures, too few to see a trend; wait for at least 3.");
    EXPECT_THAT(sentence({1, 3, 2}, 10), HasSubstr("failure 3 at 2 comes before the one at 3"));
    EXPECT_THAT(sentence({0, 3, 4}, 10), HasSubstr("failure 1 at 0 is not between"));
    EXPECT_THAT(sentence({1, 3, 11}, 10), HasSubstr("failure 3 at 11 is not between"));
    EXPECT_THAT(sentence({1, std::nan(""), 3}, 10), HasSubstr("failure 2"));
    EXPECT_THAT(sentence({1, 2, 3}, -1), HasSubstr("ends at -1"));
    EXPECT_THAT(sentence({1, 2, 3}, 10, Stopping::atFailure),
                HasSubstr("end with the last failure"));
    EXPECT_THAT(sentence({10, 10, 10}, 10), HasSubstr("fall on the end"));
}

} // namespace
} // namespace cutwater::evidence
