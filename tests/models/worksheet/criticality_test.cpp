// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/criticality.h"
#include "tests/models/worksheet/boilers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace cutwater::worksheet {

using namespace project;
using test::number;
using ::testing::HasSubstr;

namespace {

Frequency frequencyOf(const Project& p, const char* id) {
    const Index index(p);
    return FrequencyBook(p, index).of(*index.mode(id));
}

std::size_t positionOf(const Project& p, const char* id) {
    for (std::size_t i = 0; i < p.modes.size(); ++i)
        if (p.modes[i].id == id) return i;
    return p.modes.size();
}

} // namespace

// 8000 h of the calendar hold 4000 firing hours and 2000 starts: in 8760 h there are 4380 and 2190.
TEST(WorksheetFrequency, FollowsTheClockOfThePart) {
    const Project p = test::boilers();
    EXPECT_NEAR(*frequencyOf(p, "electrodes.fouled").perYear, 1e-3 * 2190, 1e-12);
    EXPECT_NEAR(*frequencyOf(p, "electrodes.worn").perYear, 1e-4 * 4380, 1e-12);
    EXPECT_NEAR(*frequencyOf(p, "pump-a.stops").perYear, 1e-5 * 8760, 1e-12);
    EXPECT_FALSE(frequencyOf(p, "electrodes.worn").assumed);
}

TEST(WorksheetFrequency, SaysWhatItTookForGranted) {
    Project p = test::boilers();
    p.exposures.clear();
    const Frequency worn = frequencyOf(p, "electrodes.worn");
    EXPECT_NEAR(*worn.perYear, 1e-4 * 8760, 1e-12);
    EXPECT_TRUE(worn.assumed);
    EXPECT_THAT(worn.how, HasSubstr("fire all year"));
    const Frequency fouled = frequencyOf(p, "electrodes.fouled");
    EXPECT_FALSE(fouled.perYear);
    EXPECT_THAT(fouled.how, HasSubstr("how many starts"));
    test::mode(p, "pump-a.stops").model.clock = Clock::unstated;
    EXPECT_TRUE(frequencyOf(p, "pump-a.stops").assumed);
    EXPECT_THAT(frequencyOf(p, "diode-a.open").how, HasSubstr("no failure model"));
}

TEST(WorksheetFrequency, ReadsMeanTimesAndWeibullLives) {
    Project p = test::boilers();
    FailureMode& mode = test::mode(p, "pump-a.stops");
    mode.model.set(Role::rate, number(2, Unit::years));
    EXPECT_NEAR(*frequencyOf(p, "pump-a.stops").perYear, 0.5, 1e-12);
    mode.model = {};
    mode.model.kind = ModelKind::weibull;
    mode.model.clock = Clock::calendarHour;
    mode.model.set(Role::shape, number(1));
    mode.model.set(Role::scale, number(8760, Unit::hours));
    // Shape 1 is a constant rate: the mean life is the scale.
    EXPECT_NEAR(*frequencyOf(p, "pump-a.stops").perYear, 1, 1e-12);
    mode.model.set(Role::shape, number(2));
    // Gamma(1.5) = sqrt(pi)/2.
    EXPECT_NEAR(*frequencyOf(p, "pump-a.stops").perYear, 2 / std::sqrt(std::acos(-1.0)), 1e-12);
}

// beta alpha lambda_p t against shares of one item rate, and against a rate of the mode's own.
TEST(Criticality, IsTheProductInEitherForm) {
    Project p = test::boilers();
    p.worksheet.operatingTime = number(20, Unit::hours);
    p.components[8].failureRate = number(7.2e-6, Unit::perHour); // diode-a
    FailureMode& diode = test::mode(p, "diode-a.open");
    diode.ratio = number(0.3);
    diode.effectChance = number(0.5);
    ASSERT_EQ(p.components[8].id, "diode-a");
    const Index index(p);
    const FrequencyBook book(p, index);
    const auto all = criticalitiesOf(p, index, book);
    EXPECT_NEAR(*all[positionOf(p, "diode-a.open")].number, 0.5 * 0.3 * 7.2e-6 * 20, 1e-18);
    EXPECT_EQ(all[positionOf(p, "diode-a.open")].level, 'A');
    const Criticality& pump = all[positionOf(p, "pump-a.stops")];
    EXPECT_NEAR(*pump.number, 1e-5 * 20, 1e-16);
    EXPECT_FALSE(pump.betaGiven);
    EXPECT_EQ(pump.alpha, 1.0); // the only mode of its item
}

TEST(Criticality, SumsOfOneSeverityAreTheItems) {
    Project p = test::boilers();
    const Index index(p);
    const FrequencyBook book(p, index);
    const auto modes = criticalitiesOf(p, index, book);
    const auto items = itemCriticalities(p, index, modes);
    double ofModes = 0, ofItems = 0;
    for (const auto& one : modes)
        ofModes += one.number.value_or(0);
    for (const auto& one : items)
        ofItems += one.number;
    EXPECT_NEAR(ofItems, ofModes, 1e-12);
    for (const ItemCriticality& item : items) {
        if (p.components[item.component].id != "electrodes") continue;
        EXPECT_EQ(item.modes, 2u);
        EXPECT_NEAR(item.number, 1e-3 * 2190 + 1e-4 * 4380, 1e-12);
        EXPECT_EQ(item.share, 1.0);
    }
}

TEST(Criticality, LevelsAreSharesOfTheItem) {
    EXPECT_EQ(criticalityLevel(0.21), 'A');
    EXPECT_EQ(criticalityLevel(0.20), 'B');
    EXPECT_EQ(criticalityLevel(0.10), 'C');
    EXPECT_EQ(criticalityLevel(0.01), 'D');
    EXPECT_EQ(criticalityLevel(0.001), 'E');
}

// Properties: worked-out shares of an item add up to 1; the number is linear in beta and in t.
TEST(Criticality, PropertiesOfRandomPlants) {
    std::mt19937 random(7);
    for (int round = 0; round < 50; ++round) {
        Project p;
        Component item;
        item.id = "item";
        p.components = {item};
        const int count = 1 + static_cast<int>(random() % 6);
        for (int i = 0; i < count; ++i) {
            FailureMode mode;
            mode.id = "m" + std::to_string(i);
            mode.component = "item";
            mode.model.kind = ModelKind::mission;
            mode.model.clock = Clock::calendarHour;
            mode.model.set(Role::rate, number((1 + random() % 1000) * 1e-8, Unit::perHour));
            p.modes.push_back(mode);
        }
        const auto numbers = [&] {
            const Index index(p);
            return criticalitiesOf(p, index, FrequencyBook(p, index));
        };
        const auto before = numbers();
        double alpha = 0;
        for (const auto& one : before)
            alpha += *one.alpha;
        EXPECT_NEAR(alpha, 1, 1e-12);
        p.worksheet.operatingTime = number(3, Unit::years);
        for (FailureMode& mode : p.modes)
            mode.effectChance = number(0.25);
        const auto after = numbers();
        for (std::size_t i = 0; i < after.size(); ++i)
            EXPECT_NEAR(*after[i].number, 0.75 * *before[i].number, 1e-15);
    }
}

} // namespace cutwater::worksheet
