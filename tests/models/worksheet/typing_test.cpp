// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/rows.h"
#include "models/worksheet/sheet_text.h"
#include "models/worksheet/typing.h"
#include "tests/models/worksheet/boilers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace cutwater::worksheet {

using namespace project;
using ::testing::HasSubstr;
using ::testing::StartsWith;

namespace {

Typing type(const Project& p, const std::vector<TypedCell>& cells) {
    return typeInto(p, Index(p), cells);
}

std::string whyNot(const Project& p, const char* mode, std::string_view column, const char* text) {
    const Typing typing = type(p, {{mode, column, text}});
    EXPECT_TRUE(typing.changed.empty()) << column << " took " << text;
    return typing.refused.empty() ? "" : typing.refused.front().why;
}

FailureMode typed(const Project& p, const char* mode, std::string_view column, const char* text) {
    const Typing typing = type(p, {{mode, column, text}});
    EXPECT_TRUE(typing.refused.empty()) << column << ": " << typing.refused.front().why;
    return typing.changed.empty() ? FailureMode() : typing.changed.front();
}

} // namespace

TEST(Typing, TakesWhatIsGoodAndNamesTheRest) {
    const Project p = test::boilers();
    const Typing typing = type(p, {{"pump-a.stops", "severity-rating", "7"},
                                   {"pump-a.stops", "occurrence-rating", "often"},
                                   {"pump-b.stops", "severity-rating", "11"},
                                   {"pump-b.stops", "end-effect", "no feed water"},
                                   {"nothing", "mode", "x"},
                                   {"pump-a.stops", "rpn", "12"}});
    EXPECT_EQ(typing.cells, 2u);
    ASSERT_EQ(typing.changed.size(), 2u);
    EXPECT_EQ(typing.changed[0].severityRating, 7);
    EXPECT_EQ(typing.changed[1].endEffect, "no feed water");
    EXPECT_FALSE(typing.changed[1].severityRating);
    ASSERT_EQ(typing.refused.size(), 4u);
    EXPECT_EQ(typing.refused[0].cell, 1u);
    EXPECT_EQ(typing.refused[0].why, "is not a whole number from 1 to 10");
    EXPECT_EQ(typing.refused[1].cell, 2u);
    EXPECT_THAT(typing.refused[2].why, HasSubstr("a row that is not there"));
    EXPECT_THAT(typing.refused[3].why, HasSubstr("worked out"));
}

TEST(Typing, KnowsComponentsByIdTagAndName) {
    const Project p = test::boilers();
    EXPECT_EQ(typed(p, "pump-a.stops", "component", "pump-b").component, "pump-b");
    EXPECT_EQ(typed(p, "pump-a.stops", "component", " PUMP B ").component, "pump-b");
    EXPECT_THAT(whyNot(p, "pump-a.stops", "component", "pump-c"), HasSubstr("did you mean pump-"));
    EXPECT_THAT(whyNot(p, "pump-a.stops", "component", ""), HasSubstr("of a component"));
    EXPECT_THAT(whyNot(p, "pump-a.stops", "mode", " "), HasSubstr("say what fails"));
}

// An action comes before what hangs on it, wherever its column stands.
TEST(Typing, TakesTheActionFirst) {
    const Project p = test::boilers();
    const Typing typing = type(p, {{"pump-a.stops", "owner", "chief"},
                                   {"pump-a.stops", "state", "under-way"},
                                   {"pump-a.stops", "action", "new bearing"}});
    EXPECT_TRUE(typing.refused.empty());
    ASSERT_EQ(typing.changed.size(), 1u);
    ASSERT_EQ(typing.changed[0].actions.size(), 1u);
    EXPECT_EQ(typing.changed[0].actions[0].owner, "chief");
    EXPECT_THAT(whyNot(p, "pump-b.stops", "owner", "chief"), HasSubstr("type the action first"));
}

TEST(Typing, ClearsCells) {
    Project p = test::boilers();
    FailureMode& mode = test::mode(p, "pump-a.stops");
    mode.actions = {{"a", "chief", "2026-03-01", ActionState::done, "", "", {}, {}},
                    {"b", "second", "", ActionState::open, "", "", {}, {}}};
    mode.severityRating = 5;
    const FailureMode noOwner = typed(p, "pump-a.stops", "owner", "");
    EXPECT_EQ(noOwner.actions[0].owner + noOwner.actions[1].owner, "");
    EXPECT_EQ(noOwner.actions[0].due, "2026-03-01");
    EXPECT_TRUE(typed(p, "pump-a.stops", "action", "").actions.empty());
    EXPECT_FALSE(typed(p, "pump-a.stops", "severity-rating", "").severityRating);
    EXPECT_THAT(whyNot(p, "pump-a.stops", "action", "only one"), HasSubstr("there are 2 actions"));
    EXPECT_THAT(whyNot(p, "pump-b.stops", "dormant", ""), HasSubstr("found by tests only"));
}

TEST(Typing, TestsBelongToTestedModels) {
    Project p = test::boilers();
    const FailureMode weekly = typed(p, "pump-b.stops", "test-interval", "4 wk");
    EXPECT_EQ(weekly.model.find(Role::interval)->unit, Unit::weeks);
    EXPECT_EQ(weekly.model.find(Role::interval)->value, 4);
    EXPECT_EQ(typed(p, "pump-b.stops", "test-interval", "1,5").model.find(Role::interval)->value,
              1.5); // hours, as before
    EXPECT_THAT(whyNot(p, "pump-b.stops", "test-interval", "4 moons"), HasSubstr("4 wk"));
    EXPECT_THAT(whyNot(p, "pump-b.stops", "test-interval", "-4 wk"), HasSubstr("above 0"));
    EXPECT_THAT(whyNot(p, "pump-a.stops", "test-interval", "4 wk"), HasSubstr("is tested"));
    EXPECT_THAT(whyNot(p, "pump-a.stops", "last-test", "2026-01-01"), HasSubstr("is tested"));
    EXPECT_EQ(typed(p, "pump-b.stops", "last-test", "2026-01-01").model.lastTest, "2026-01-01");
}

TEST(Typing, TakesACommaInANumber) {
    const Project p = test::boilers();
    EXPECT_EQ(typed(p, "pump-a.stops", "mode-ratio", "0,25").ratio->value, 0.25);
    EXPECT_THAT(whyNot(p, "pump-a.stops", "mode-ratio", "1,000.5"), HasSubstr("from 0 to 1"));
    EXPECT_THAT(whyNot(p, "pump-a.stops", "severity-rating", "5,0"), HasSubstr("whole number"));
}

// Whatever stands behind a text: the text that is shown changes nothing.
TEST(Typing, WhatACellShowsChangesNothing) {
    Project p = test::boilers();
    FailureMode& mode = test::mode(p, "pump-b.stops");
    mode.causes = {" dirt ", "a | b"};
    mode.ratio.emplace();
    mode.ratio->parameter = "share";
    mode.name = "  stops  ";
    const Index index(p);
    std::vector<TypedCell> cells;
    for (const FailureMode& one : p.modes)
        for (const Column& column : columns())
            if (column.write || column.id == "component")
                cells.push_back({one.id, column.id, shownText(column, index, one)});
    const Typing typing = typeInto(p, index, cells);
    EXPECT_TRUE(typing.changed.empty());
    EXPECT_TRUE(typing.refused.empty());
}

TEST(Typing, NextTestIsADayOfTheCalendar) {
    EXPECT_EQ(dayAfter("2026-01-31", 24), "2026-02-01");
    EXPECT_EQ(dayAfter("2024-02-28", 47), "2024-02-29");
    EXPECT_EQ(dayAfter("2025-12-31", 8760), "2026-12-31");
    EXPECT_EQ(dayAfter("", 24), "");
    EXPECT_EQ(dayAfter("9999-12-31", 24), "");
}

TEST(SheetPart, IsWhatIsNamedInThatOrder) {
    const Project p = test::boilers();
    const SheetPart part = partOf("mode,nonsense,id", "pump-b.stops\nnothing\npump-a.stops\n");
    EXPECT_EQ(sheetAsText(p, ',', part), "mode,id\nstops,pump-b.stops\nstops,pump-a.stops\n");
    EXPECT_THAT(sheetAsText(p, ',', partOf("", "panel.dead")), StartsWith("id,component,"));
}

// Texts of all sorts into cells of all sorts: either it is refused and nothing changed, or the
// project takes it as an edit and undoing gives back the same.
TEST(Typing, RandomTextsNeverHalfChangeARow) {
    Project p = test::boilers();
    std::mt19937 random(7);
    const std::vector<std::string> texts = {"",    "5",    "11",     "=1+1",  "a | b",
                                            "yes", "4 wk", "0.5",    "done",  "2026-02-28",
                                            " ",   "\n",   "pump-a", "minor", "a | b | c"};
    for (int round = 0; round < 400; ++round) {
        std::vector<TypedCell> cells;
        for (int i = 0; i < 6; ++i)
            cells.push_back({p.modes[random() % p.modes.size()].id,
                             columns()[random() % columns().size()].id,
                             texts[random() % texts.size()]});
        const Typing typing = type(p, cells);
        EXPECT_LE(typing.cells + typing.refused.size(), cells.size());
        const auto made = edits::changeRows(p, typing.changed, "Type", "");
        ASSERT_TRUE(made);
        for (const FailureMode& mode : made->project.modes) {
            EXPECT_FALSE(mode.name.empty());
            for (const Action& action : mode.actions)
                EXPECT_FALSE(action.what.empty());
        }
        EXPECT_EQ(made->project == p, typing.changed.empty());
        p = made->project;
    }
}

} // namespace cutwater::worksheet
