// SPDX-License-Identifier: GPL-3.0-or-later
// IEC 61508-6 Annex B, first edition (2000). Seen: the function's total is sensors + logic + final
// elements; tables B.2 to B.5 are for six months, one, two and ten years and take 8 h to restore.
// The formulas and the printed cells are from memory. In these tables the heading is the *total*
// rate, half of it dangerous; the 2010 edition heads them with the dangerous rate.
#include "models/reliability/safety_function.h"

#include <cmath>
#include <gtest/gtest.h>

namespace cutwater::published {
namespace {

using namespace reliability;

constexpr double kHalfYear = 4380, kYear = 8760;

double onDemand(Voting voting, double interval, double rate, double coverage, double beta = 0) {
    ChannelData channel;
    channel.rate = rate;
    channel.coverage = coverage;
    channel.beta = beta;
    channel.interval = interval;
    return safetyFigures(voting, channel).onDemand;
}

// Within half a unit of the last of `digits` printed ones.
void expectPrinted(double got, double printed, int digits) {
    const double unit = std::pow(10, std::floor(std::log10(printed)) - digits + 1);
    EXPECT_NEAR(got, printed, unit / 2 * (1 + 1e-9)) << printed;
}

TEST(SafetyFunction, TableForSixMonths) { // 5.12a .. 5.12h
    struct Cell {
        double rate, coverage;
        Voting voting;
        double beta, printed, recomputed;
    };
    const Cell cells[] = {{1e-7, 0, Voting::oneOfOne, 0, 1.1e-4, 1.099e-4},
                          {1e-7, 0.6, Voting::oneOfOne, 0, 4.4e-5, 4.420e-5},
                          {1e-7, 0.9, Voting::oneOfOne, 0, 1.1e-5, 1.135e-5},
                          {1e-7, 0.99, Voting::oneOfOne, 0, 1.5e-6, 1.495e-6},
                          {1e-7, 0, Voting::oneOfTwo, 0.02, 2.2e-6, 2.213e-6},
                          {1e-7, 0, Voting::oneOfTwo, 0.10, 1.1e-5, 1.100e-5},
                          {1e-6, 0, Voting::oneOfTwo, 0.02, 2.4e-5, 2.353e-5},
                          {1e-6, 0, Voting::oneOfTwo, 0.10, 1.1e-4, 1.112e-4}};
    for (const Cell& cell : cells) {
        const double got = onDemand(cell.voting, kHalfYear, cell.rate, cell.coverage, cell.beta);
        expectPrinted(got, cell.recomputed, 4);
        expectPrinted(got, cell.printed, 2);
    }
}

TEST(SafetyFunction, DerivedCellsForOneYear) { // 5.12i .. 5.12n
    using enum Voting;
    expectPrinted(onDemand(oneOfOne, kYear, 1e-5, 0), 2.194e-2, 4);
    expectPrinted(onDemand(twoOfTwo, kYear, 1e-5, 0), 4.388e-2, 4);
    expectPrinted(onDemand(oneOfTwo, kYear, 1e-5, 0, 0.02), 1.056e-3, 4);
    expectPrinted(onDemand(oneOfTwo, kYear, 1e-5, 0, 0.10), 2.714e-3, 4);
    expectPrinted(onDemand(oneOfTwo, kYear, 1e-5, 0, 0.20), 4.799e-3, 4);
    expectPrinted(onDemand(twoOfThree, kYear, 1e-5, 0, 0.02), 2.290e-3, 4);
    expectPrinted(onDemand(twoOfThree, kYear, 1e-5, 0, 0.10), 3.755e-3, 4);
    expectPrinted(onDemand(twoOfThree, kYear, 1e-5, 0, 0.20), 5.621e-3, 4);
    expectPrinted(onDemand(twoOfThree, kYear, 5e-6, 0.6, 0.10), 5.065e-4, 4);
    expectPrinted(onDemand(oneOfTwo, kYear, 1e-6, 0.9, 0.10), 2.218e-5, 4);
    expectPrinted(onDemand(twoOfThree, kYear, 1e-6, 0.9, 0.10), 2.230e-5, 4);
    expectPrinted(onDemand(oneOfTwoDiagnosed, kYear, 1e-6, 0.9, 0.10), 2.218e-5, 4);
    expectPrinted(onDemand(oneOfOne, kYear, 1e-6, 0.99), 2.590e-5, 4);
    expectPrinted(onDemand(twoOfThree, kYear, 1e-6, 0.99, 0.20), 4.786e-6, 4);
}

// The annex's worked example for low demand, all from memory.
TEST(SafetyFunction, WorkedExampleForLowDemand) { // 5.12p .. 5.12t
    using enum Voting;
    ChannelData sensor;
    sensor.rate = 5e-6;
    sensor.coverage = 0.9;
    sensor.beta = 0.2;
    sensor.betaDetected = 0.1;
    const SafetyFigures sensors = safetyFigures(twoOfThree, sensor);
    EXPECT_NEAR(sensors.channelDown, 446, 0.5);
    EXPECT_NEAR(sensors.groupDown, 300, 0.5);
    expectPrinted(sensors.onDemand, 2.252e-4, 4);
    expectPrinted(sensors.onDemand, 2.3e-4, 2);

    // Does not agree: recomputed 4.869e-6, which would print as 4.9e-6. The 4.8e-6 is recalled, not
    // read, so the memory is the first suspect; the figure changes the sum in no printed digit.
    const double logic = onDemand(oneOfTwoDiagnosed, kYear, 1e-5, 0.99, 0.02);
    expectPrinted(logic, 4.869e-6, 4);
    EXPECT_GT(std::abs(logic - 4.8e-6), 0.05e-6);
    EXPECT_LT(std::abs(logic - 4.8e-6), 0.1e-6);

    const double valve = onDemand(oneOfOne, kYear, 5e-6, 0.6);
    const double vent = onDemand(oneOfOne, kYear, 1e-5, 0.6);
    expectPrinted(valve, 4.400e-3, 4);
    expectPrinted(vent, 8.800e-3, 4);
    const double whole = sensors.onDemand + logic + valve + vent;
    expectPrinted(whole, 1.343e-2, 4);
    expectPrinted(whole, 1.3e-2, 2);
    EXPECT_EQ(levelOnDemand(whole), 1);
}

TEST(SafetyFunction, BandsOfTheStandard) { // IEC 61508-1 tables 2 and 3, from memory
    EXPECT_EQ(levelOnDemand(0.1), 0);
    EXPECT_EQ(levelOnDemand(0.0999), 1);
    EXPECT_EQ(levelOnDemand(1e-2), 1); // "at least 1e-2, less than 1e-1"
    EXPECT_EQ(levelOnDemand(9.99e-3), 2);
    EXPECT_EQ(levelOnDemand(5e-4), 3);
    EXPECT_EQ(levelOnDemand(5e-5), 4);
    EXPECT_EQ(levelOnDemand(5e-7), 4);
    EXPECT_EQ(levelPerHour(1e-5), 0);
    EXPECT_EQ(levelPerHour(2e-6), 1);
    EXPECT_EQ(levelPerHour(2e-7), 2);
    EXPECT_EQ(levelPerHour(2e-8), 3);
    EXPECT_EQ(levelPerHour(2e-9), 4);
}

} // namespace
} // namespace cutwater::published
