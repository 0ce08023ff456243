// SPDX-License-Identifier: GPL-3.0-or-later
// Criticality, the risk priority number, and the IMO risk indices.
#include "models/worksheet/criticality.h"
#include "models/worksheet/risk_matrix.h"
#include "models/worksheet/scales.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace cutwater::worksheet {

namespace {

void expectClose(double value, double expected) {
    EXPECT_NEAR(value, expected, 1e-9 * std::abs(expected));
}

project::Quantity number(double value, project::Unit unit = project::Unit::number) {
    project::Quantity quantity;
    quantity.value = value;
    quantity.unit = unit;
    return quantity;
}

} // namespace

// MIL-STD-1629A (1980), task 102: Cm = beta alpha lambda_p t, Cr the sum within one severity class
// (formula read in secondary lecture copies). lambda_p 7.2e-6 per hour, t 20 h, beta 0.5; alpha
// 0.3, 0.2 and 0.5. Values derived from the formula.
TEST(MilStd1629A, CriticalityNumbers) {
    expectClose(criticalityNumber(0.5, 0.3, 7.2e-6, 20), 2.16e-5);
    expectClose(criticalityNumber(0.5, 0.2, 7.2e-6, 20), 1.44e-5);
    expectClose(criticalityNumber(0.5, 0.5, 7.2e-6, 20), 3.6e-5);
}

TEST(MilStd1629A, ItemCriticalityBySeverityClass) {
    project::Project p;
    project::Component item;
    item.id = "item";
    item.failureRate = number(7.2e-6, project::Unit::perHour);
    p.components = {item};
    const std::pair<double, const char*> modes[] = {{0.3, "II"}, {0.2, "II"}, {0.5, "IV"}};
    for (const auto& [alpha, severity] : modes) {
        project::FailureMode mode;
        mode.id = "m" + std::to_string(p.modes.size());
        mode.component = "item";
        mode.severity = severity;
        mode.ratio = number(alpha);
        mode.effectChance = number(0.5);
        p.modes.push_back(mode);
    }
    p.worksheet.operatingTime = number(20, project::Unit::hours);
    const project::Index index(p);
    const FrequencyBook book(p, index);
    const auto numbers = criticalitiesOf(p, index, book);
    expectClose(*numbers[0].number, 2.16e-5);
    expectClose(*numbers[1].number, 1.44e-5);
    expectClose(*numbers[2].number, 3.6e-5);
    const auto items = itemCriticalities(p, index, numbers);
    ASSERT_EQ(items.size(), 2u);
    EXPECT_EQ(items[0].severity, "II");
    expectClose(items[0].number, 3.6e-5);
    EXPECT_EQ(items[1].severity, "IV");
    expectClose(items[1].number, 3.6e-5);
}

// Task 102: levels by the mode's share of the item, A above 0.20 ... E below 0.001. From memory.
TEST(MilStd1629A, LevelsOfProbability) {
    const std::pair<double, char> levels[] = {
        {0.3, 'A'}, {0.15, 'B'}, {0.05, 'C'}, {0.005, 'D'}, {0.0005, 'E'}};
    for (const auto& [share, level] : levels)
        EXPECT_EQ(criticalityLevel(share), level);
}

// IEC 60812: RPN = S x O x D (from memory). On scales of 1 to 10: 120 distinct products, so 880 of
// the numbers from 1 to 1000 cannot occur (enumerated).
TEST(Iec60812, RiskPriorityNumbers) {
    std::set<int> products;
    for (int s = 1; s <= 10; ++s)
        for (int o = 1; o <= 10; ++o)
            for (int d = 1; d <= 10; ++d)
                products.insert(*riskPriorityNumber(s, o, d));
    EXPECT_EQ(products.size(), 120u);
    EXPECT_EQ(*products.begin(), 1);
    EXPECT_EQ(*products.rbegin(), 1000);
    EXPECT_EQ(riskPriorityNumber(9, 2, 5), 90);
    EXPECT_EQ(riskPriorityNumber(3, 6, 5), 90);
    EXPECT_FALSE(riskPriorityNumber(9, {}, 5));
}

// IMO MSC-MEPC.2/Circ.12/Rev.2 (9 April 2018), appendix 4: frequency and severity index. Read.
TEST(ImoFormalSafetyAssessment, Indices) {
    const project::RiskMatrix matrix = imoMatrix();
    struct Level {
        int index;
        const char* word;
        double value;
    };
    for (const Level& level : {Level{7, "Frequent", 10}, Level{5, "Reasonably probable", 0.1},
                               Level{3, "Remote", 1e-3}, Level{1, "Extremely remote", 1e-5}}) {
        const auto* found = levelOf(matrix.frequencies, level.index);
        ASSERT_NE(found, nullptr);
        EXPECT_EQ(found->word, level.word);
        EXPECT_EQ(found->value, level.value);
        EXPECT_EQ(indexOf(matrix.frequencies, level.value)->index, level.index);
        expectClose(std::log10(level.value) + 6, level.index); // FI = log10 F + 6
    }
    for (const Level& level : {Level{1, "Minor", 0.01}, Level{2, "Significant", 0.1},
                               Level{3, "Severe", 1}, Level{4, "Catastrophic", 10}}) {
        const auto* found = levelOf(matrix.severities, level.index);
        ASSERT_NE(found, nullptr);
        EXPECT_EQ(found->word, level.word);
        EXPECT_EQ(found->value, level.value);
        EXPECT_EQ(severityIndex(matrix, level.word), level.index);
        expectClose(std::log10(level.value) + 3, level.index); // SI = log10 S + 3
    }
    // FI 7 "once a month" is 12 a year, rounded to 10 by the source; FI 1 is one in 20 years x 5000
    // ships.
    EXPECT_EQ(indexOf(matrix.frequencies, 12)->index, 7);
    EXPECT_EQ(indexOf(matrix.frequencies, 1.0 / (20 * 5000))->index, 1);
}

// The same: RI = FI + SI; the printed check FI 3, SI 2 gives 5. The other sums are derived.
TEST(ImoFormalSafetyAssessment, RiskIndexIsTheSum) {
    const project::RiskMatrix matrix = imoMatrix();
    EXPECT_EQ(indexOf(matrix.frequencies, 1e-3)->index + *severityIndex(matrix, "significant"), 5);
    EXPECT_EQ(matrix.frequencies.size(), 7u);
    EXPECT_EQ(matrix.severities.size(), 4u);
    for (int fi = 1; fi <= 7; ++fi)
        EXPECT_NE(levelOf(matrix.frequencies, fi), nullptr);
    EXPECT_TRUE(matrix.bands.empty()); // the source names no limit of the index
}

} // namespace cutwater::worksheet
