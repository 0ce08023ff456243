// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/periods/timed_plant.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace plants;
using testing::HasSubstr;

namespace {

project::Project uncertain() { // pump-a lognormal 0.1, EF 3; panel uniform 0.04..0.06
    project::Project plant = twoPumps();
    plant.events[0].model.numbers[0].quantity.uncertainty = project::Lognormal{0.1, 3};
    plant.events[2].model.numbers[0].quantity.uncertainty = project::Uniform{0.04, 0.06};
    return plant;
}

double topAt(double a, double b, double panel) {
    return 1 - (1 - panel) * (1 - a * b);
}

} // namespace

TEST(SensitivityPlugin, RanksTheSwings) {
    const auto answer = ask("sensitivity", uncertain());
    ASSERT_TRUE(answer.content);
    const sdk::Table& swings = table(*answer.content, "swings");
    ASSERT_EQ(swings.rows.size(), 2u);
    EXPECT_EQ(text(swings, 0, "number"), "pump-a@probability");
    EXPECT_NEAR(number(swings, 0, "top-at-low"), topAt(0.1 / 3, 0.2, 0.05), 1e-12);
    EXPECT_NEAR(number(swings, 0, "top-at-high"), topAt(0.3, 0.2, 0.05), 1e-12);
    EXPECT_EQ(text(swings, 1, "number"), "panel@probability");
    EXPECT_NEAR(number(swings, 1, "low-value"), 0.041, 1e-15);
    EXPECT_NEAR(number(swings, 1, "top-at-high"), topAt(0.1, 0.2, 0.059), 1e-12);
    ASSERT_EQ(answer.content->series.size(), 2u); // two bars for each number
    EXPECT_EQ(answer.content->series[0].labels, answer.content->series[1].labels);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                HasSubstr("1 numbers have no distribution"));
}

TEST(SensitivityPlugin, MovesTheOthersByAFactorWhereWished) {
    sdk::Values values;
    values.set("factor", 2.0);
    const auto answer = ask("sensitivity", uncertain(), values);
    ASSERT_TRUE(answer.content);
    const sdk::Table& swings = table(*answer.content, "swings");
    ASSERT_EQ(swings.rows.size(), 3u);
    EXPECT_EQ(text(swings, 1, "number"), "pump-b@probability");
    EXPECT_NEAR(number(swings, 1, "top-at-high"), topAt(0.1, 0.4, 0.05), 1e-12);
}
