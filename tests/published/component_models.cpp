// SPDX-License-Identifier: GPL-3.0-or-later
// Component models. Formulas: NUREG/CR-2300 (1983) and IEC 61025:2006, from memory. All numbers
// derived.
#include "models/reliability/event_model.h"
#include "tests/oracle/solved.h"
#include "tests/published/small_tree.h"

#include <cmath>
#include <functional>
#include <limits>

namespace cutwater::published {
namespace {

using namespace reliability;
using oracle::near;

constexpr double kForEver = std::numeric_limits<double>::infinity();

TEST(ComponentModels, Mission) { // 5.1, 5.2
    EXPECT_NEAR(missionUnreliability(1e-4, 100), 0.00995016625083, 1e-12);
    EXPECT_NEAR(missionUnreliability(1e-5, 8760), 0.0838727456554, 1e-12);
}

TEST(ComponentModels, Repairable) { // 5.3 to 5.5: rate 1e-3, repair rate 0.1 per hour
    const std::pair<double, double> rows[] = {{1, 9.51158090239e-4},
                                              {10, 6.29486158840e-3},
                                              {50, 9.83753135202e-3},
                                              {100, 9.90058337074e-3}};
    for (const auto& [time, wanted] : rows)
        EXPECT_TRUE(near(repairableUnavailability(1e-3, 10, time), wanted, 1e-11)) << time << " h";
    EXPECT_NEAR(repairableUnavailability(1e-3, 10, kForEver), 0.00990099009901, 1e-12);
    EXPECT_NEAR(repairableUnavailability(1e-4, 8, kForEver), 7.99360511591e-4, 1e-12);
}

TEST(ComponentModels, RepairableAgreesWithSteppingItsDifferentialEquation) {
    // dq/dt = rate (1 - q) - q / repair, classical Runge-Kutta.
    const double rate = 1e-3, repair = 10, step = 0.01;
    const auto slope = [=](double q) { return rate * (1 - q) - q / repair; };
    double q = 0;
    for (int i = 0; i < 1000; ++i) {
        const double k1 = slope(q), k2 = slope(q + step / 2 * k1), k3 = slope(q + step / 2 * k2),
                     k4 = slope(q + step * k3);
        q += step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    EXPECT_TRUE(near(repairableUnavailability(rate, repair, 10), q, 1e-11));
}

TEST(ComponentModels, TestedMean) { // 5.6 to 5.9
    struct Row {
        double rate, interval, exact, usual;
    };
    const Row rows[] = {{1e-6, 8760, 0.00436723836, 0.00438},
                        {1e-5, 8760, 0.0425485655782, 0.0438},
                        {1e-4, 8760, 0.333841742, 0.438},
                        {5e-6, 4380, 0.0108705007, 0.01095}};
    for (const Row& row : rows) {
        EXPECT_NEAR(testedMeanUnavailability(row.rate, row.interval), row.exact, 1e-9);
        // The usual approximation, rate x interval / 2, is always too high.
        EXPECT_TRUE(near(row.rate * row.interval / 2, row.usual, 1e-12));
        EXPECT_LT(testedMeanUnavailability(row.rate, row.interval), row.usual);
    }
    // At 1e-4/h it is 31 % too high.
    EXPECT_NEAR(0.438 / testedMeanUnavailability(1e-4, 8760), 1.31, 0.005);
}

TEST(ComponentModels,
     TestedCycle) { // 5.10, 5.11: 1e-5/h, every 720 h, test 1.5 h out of service, repair 19 h
    const TestedPart part{
        .rate = 1e-5, .interval = 720, .testDuration = 1.5, .repair = 19, .coverage = 1};
    EXPECT_NEAR(testedCycleUnavailability(part), 0.00585072983, 1e-9);
    // The three terms that are usually added up, rate x interval / 2 + test / interval + rate x
    // repair, are near it and above.
    const double usual = 1e-5 * 720 / 2 + 1.5 / 720 + 1e-5 * 19;
    EXPECT_NEAR(usual, 0.00587333, 5e-9);
    EXPECT_GT(usual, testedCycleUnavailability(part));
}

// Mean over a test interval of the exact probability of a voted group, with Simpson's rule.
double averageOf(const SmallTree& tree, const std::function<std::vector<double>(double)>& chances,
                 double interval) {
    constexpr int kSteps = 2000;
    double total = 0;
    for (int i = 0; i <= kSteps; ++i) {
        const int weight = i == 0 || i == kSteps ? 1 : i % 2 == 1 ? 4 : 2;
        total += weight * tree.solution().probability(chances(interval * i / kSteps)).occurs;
    }
    return total / 3 / kSteps;
}

// n parts of which `k` failed ones are too many.
SmallTree failed(int k, int n) {
    SmallTree tree;
    std::vector<logic::Literal> parts;
    for (int i = 0; i < n; ++i)
        parts.push_back(tree.event("P" + std::to_string(i), 0.1));
    tree.solve(tree.atLeast(k, parts));
    return tree;
}

TEST(ComponentModels, AveragesOverATestInterval) { // 1e-5/h, 8760 h, all tested together
    constexpr double rate = 1e-5, interval = 8760, load = rate * interval;
    struct Row {
        const char* voting;
        int failedParts, parts;
        double exact, usual, printed;
    };
    const Row rows[] = {{"1oo2", 2, 2, 0.00239652526, load * load / 3, 0.00255792},
                        {"1oo3", 3, 3, 1.5141734963e-4, load * load * load / 4, 1.6805534e-4},
                        {"2oo3", 2, 3, 0.00688674108, load * load, 0.00767376},
                        {"2oo2", 1, 2, 0.0827006059, load, 0.0876}};
    for (const Row& row : rows) {
        SCOPED_TRACE(row.voting);
        const SmallTree tree = failed(row.failedParts, row.parts);
        const auto together = [&row](double t) {
            return std::vector<double>(static_cast<std::size_t>(row.parts),
                                       missionUnreliability(rate, t));
        };
        EXPECT_TRUE(near(averageOf(tree, together, interval), row.exact, 1e-7));
        EXPECT_TRUE(near(row.usual, row.printed, 1e-7));
        EXPECT_LT(row.exact, row.usual);
        // The product of the means is less than the mean of the product: parts that are tested at
        // the same time are down at the same time.
        if (row.failedParts == row.parts) {
            EXPECT_GT(row.exact,
                      std::pow(testedMeanUnavailability(rate, interval), row.parts) * 1.2);
        }
    }
}

TEST(ComponentModels,
     StaggeredTests) { // as above, 1oo2, the second part tested half an interval later
    constexpr double rate = 1e-5, interval = 8760;
    const SmallTree tree = failed(2, 2);
    // The two halves of the interval are alike with the parts exchanged: one half is enough, and
    // nothing jumps inside it.
    const auto staggered = [](double t) {
        return std::vector<double>{missionUnreliability(rate, t),
                                   missionUnreliability(rate, t + interval / 2)};
    };
    EXPECT_TRUE(near(averageOf(tree, staggered, interval / 2), 0.00151733613, 1e-7));
    EXPECT_TRUE(near(5 * std::pow(rate * interval, 2) / 24, 0.0015987, 1e-6));
    EXPECT_LT(0.00151733613, 0.0015987);
}

} // namespace
} // namespace cutwater::published
