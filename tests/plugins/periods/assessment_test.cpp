// SPDX-License-Identifier: GPL-3.0-or-later
// The plant under an assessment: its events forced, said loudly, never said to be acceptable.
#include "tests/plugins/periods/timed_plant.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace plants;
using testing::HasSubstr;

namespace {

project::Project bridged() { // twoPumps() with pump-a out of service, and a second one for nothing
    project::Project plant = twoPumps();
    project::Assessment out;
    out.id = "A1";
    out.name = "pump A opened up";
    out.forced = {{{"pump-a", {}}, true, {}}, {{"panel", {}}, false, {}}};
    out.duration = quantity(2, project::Unit::days);
    out.measures = {"pump B watched"};
    project::Assessment empty;
    empty.id = "A2";
    plant.assessments = {out, empty};
    return plant;
}

sdk::Values under(const char* id) {
    sdk::Values values;
    values.set("assessment", std::string(id));
    return values;
}

} // namespace

TEST(UnderAnAssessment, EventsAreForcedAndEveryAnalysisSaysSo) {
    for (const char* analysis : {"probability", "cut-sets", "path-sets", "single-failures",
                                 "importance", "sensitivity", "over-time"}) {
        SCOPED_TRACE(analysis);
        const auto got = ask(analysis, bridged(), under("A1"));
        ASSERT_TRUE(got.content) << got.problems.at(0).what;
        EXPECT_THAT(got.content->title, HasSubstr("NOT the normal state: under assessment A1"));
        const std::string warnings = notes(*got.content, sdk::NoteKind::warning);
        EXPECT_THAT(warnings, HasSubstr("pump-a taken as certain; panel taken as impossible"));
        EXPECT_THAT(warnings, HasSubstr("holds for 48 h"));
        EXPECT_THAT(warnings, HasSubstr("pump B watched"));
        EXPECT_THAT(warnings, HasSubstr("does not say that a bypass is acceptable"));
        EXPECT_THAT(notes(*got.content, sdk::NoteKind::caution), HasSubstr("Do not bridge"));
    }
    EXPECT_NEAR(number(table(*ask("probability", bridged(), under("A1")).content, "top-events"), 0,
                       "probability"),
                0.2, 1e-15); // pump B alone
    EXPECT_NEAR(
        number(table(*ask("probability", bridged()).content, "top-events"), 0, "probability"),
        0.069, 1e-15);
}

TEST(UnderAnAssessment, ComparedWithTheNormalState) {
    const auto got = ask("probability", bridged(), under("A1"));
    ASSERT_TRUE(got.content);
    const sdk::Table& compared = table(*got.content, "compared");
    ASSERT_EQ(compared.rows.size(), 1u);
    EXPECT_NEAR(number(compared, 0, "normal"), 0.069, 1e-15);
    EXPECT_NEAR(number(compared, 0, "under"), 0.2, 1e-15);
    EXPECT_NEAR(number(compared, 0, "times"), 0.2 / 0.069, 1e-12);
    EXPECT_EQ(std::get<std::int64_t>(cell(compared, 0, "singles-normal")), 1); // the panel
    EXPECT_EQ(std::get<std::int64_t>(cell(compared, 0, "singles-under")), 1);
    const sdk::Table& became = table(*got.content, "became-single");
    ASSERT_EQ(became.rows.size(), 1u);
    EXPECT_EQ(text(became, 0, "event"), "pump-b");
    const auto normal = ask("probability", bridged());
    ASSERT_TRUE(normal.content);
    for (const sdk::Table& one : normal.content->tables)
        EXPECT_NE(one.id, "compared");
}

TEST(UnderAnAssessment, WithoutDurationOrMeasuresItSaysThat) {
    const auto got = ask("probability", bridged(), under("A2"));
    ASSERT_TRUE(got.content);
    const std::string warnings = notes(*got.content, sdk::NoteKind::warning);
    EXPECT_THAT(warnings, HasSubstr("states no duration"));
    EXPECT_THAT(warnings, HasSubstr("states no compensating measure"));
    EXPECT_THAT(warnings, HasSubstr("it forces no event"));
}

TEST(UnderAnAssessment, AnUnknownOneIsNamedWithTheNearest) {
    const auto got = ask("probability", bridged(), under("A3"));
    ASSERT_FALSE(got.content);
    EXPECT_THAT(got.problems.at(0).what, HasSubstr("no assessment 'A3'"));
    EXPECT_THAT(got.problems[0].remedy, HasSubstr("A1"));
}
