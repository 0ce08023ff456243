// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/columns.h"
#include "models/worksheet/coverage.h"
#include "models/worksheet/rows.h"
#include "tests/models/worksheet/boilers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stdexcept>

#include <set>

namespace cutwater::worksheet {

using namespace project;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

namespace {

const Row& rowOf(const Sheet& sheet, const char* id) {
    for (const Row& row : sheet.rows)
        if (row.facts->id == id) return row;
    throw std::out_of_range(id);
}

void rate(FailureMode& mode, int s, int o, int d) {
    mode.severityRating = s;
    mode.occurrenceRating = o;
    mode.detectionRating = d;
}

} // namespace

TEST(WorksheetRows, AreAViewOfTheModes) {
    Project p = test::boilers();
    FailureMode& stops = test::mode(p, "pump-a.stops");
    rate(stops, 5, 6, 7);
    stops.occurrenceAfter = 2;
    stops.actions = {{"new coupling", "second", "2026-03-01", ActionState::done, "", "", {}, {}}};
    const Index index(p);
    const Sheet sheet = sheetOf(p, index);
    ASSERT_EQ(sheet.rows.size(), p.modes.size());
    const Row& row = rowOf(sheet, "pump-a.stops");
    EXPECT_EQ(row.rpn, 210);
    EXPECT_EQ(row.rpnAfter, 70); // what is not rated again stays
    EXPECT_EQ(row.place, "boiler > pump A");
    EXPECT_THAT(row.tops, ElementsAre(0u));
    EXPECT_EQ(row.openActions, 1u);       // done is not proved
    EXPECT_EQ(row.computedOccurrence, 6); // 0.0876 a year
    EXPECT_TRUE(rowOf(sheet, "pump-b.stops").dormant);
    EXPECT_THAT(rowOf(sheet, "electrodes.worn").tops, IsEmpty());
    EXPECT_FALSE(rowOf(sheet, "panel.dead").rpn);
}

// Equal numbers, unequal severity: 9 x 2 x 5 and 3 x 6 x 5.
TEST(WorksheetRows, TheSeverestComesFirst) {
    Project p = test::boilers();
    for (FailureMode& mode : p.modes)
        mode.severity = "minor";
    rate(test::mode(p, "electrodes.worn"), 3, 6, 5);
    rate(test::mode(p, "mains.dead"), 9, 2, 5);
    const Index index(p);
    Sheet sheet = sheetOf(p, index);
    for (const Order order : {Order::severity, Order::rpn}) {
        sortRows(sheet, order);
        EXPECT_EQ(sheet.rows[0].facts->id, "mains.dead");
        EXPECT_EQ(sheet.rows[1].facts->id, "electrodes.worn");
        EXPECT_EQ(sheet.rows[0].rpn, sheet.rows[1].rpn);
    }
    sortRows(sheet, Order::criticality);
    EXPECT_EQ(sheet.rows[0].facts->id, "electrodes.fouled");
    EXPECT_EQ(sheet.rows.back().facts->id, "diode-a.open"); // has none
    sortRows(sheet, Order::file);
    for (std::size_t i = 0; i < sheet.rows.size(); ++i)
        EXPECT_EQ(sheet.rows[i].mode, i);
}

TEST(WorksheetRows, SayWhatIsMissing) {
    Project p = test::boilers();
    FailureMode& pump = test::mode(p, "pump-b.stops");
    pump.compensation = "pump A";
    {
        const Index index(p);
        const Sheet sheet = sheetOf(p, index);
        const auto gaps = gapsOf(rowOf(sheet, "pump-b.stops"));
        EXPECT_THAT(gaps, Contains("no cause"));
        EXPECT_THAT(gaps, Contains("no test proves the compensating provision"));
        EXPECT_THAT(gaps, Contains("dormant without the date of the last test"));
        EXPECT_THAT(gaps, ::testing::Not(Contains("dormant without a test interval")));
    }
    pump.causes = {"x"};
    pump.localEffect = pump.detection = "x";
    pump.provedBy = "change-over";
    pump.provedOn = pump.model.lastTest = "2026-01-01";
    const Index index(p);
    EXPECT_THAT(gapsOf(rowOf(sheetOf(p, index), "pump-b.stops")), IsEmpty());
}

TEST(WorksheetRows, OnlyWaitingActionsAreOverdue) {
    Action action{"x", "", "2026-03-01", ActionState::underWay, "", "", {}, {}};
    EXPECT_TRUE(isOverdue(action, "2026-03-02"));
    EXPECT_FALSE(isOverdue(action, "2026-03-01"));
    EXPECT_FALSE(isOverdue(action, ""));
    action.state = ActionState::done;
    EXPECT_FALSE(isOverdue(action, "2026-03-02"));
}

TEST(WorksheetColumns, HaveUniqueIdsAndReadEveryRow) {
    const Project p = test::boilers();
    const Index index(p);
    const Sheet sheet = sheetOf(p, index);
    std::set<std::string_view> ids;
    for (const Column& column : columns()) {
        EXPECT_TRUE(ids.insert(column.id).second) << column.id;
        for (const Row& row : sheet.rows)
            column.read(sheet, row);
    }
    EXPECT_EQ(findColumn("nonsense"), nullptr);
}

// What a cell shows can be typed back and changes nothing.
TEST(WorksheetColumns, TakeBackWhatTheyShow) {
    Project p = test::boilers();
    FailureMode& full = test::mode(p, "pump-b.stops");
    rate(full, 1, 2, 3);
    full.severityAfter = 1;
    full.causes = {"wear", "dirt"};
    full.ratio = test::number(0.1);
    full.dormant = true;
    full.provedBy = "test";
    full.provedOn = "2026-01-01";
    full.actions = {{"a", "o", "2026-01-01", ActionState::proved, "2026-02-01", "p", {}, {}},
                    {"b", "", "", ActionState::open, "", "", {}, {}}};
    const Index index(p);
    const Sheet sheet = sheetOf(p, index);
    for (const Column& column : columns()) {
        if (!column.write) continue;
        for (const Row& row : sheet.rows) {
            FailureMode copy = *row.facts;
            const std::string text = toText(column.read(sheet, row));
            if (text.empty()) continue;
            EXPECT_FALSE(column.write(text, copy)) << column.id << ": " << text;
            if (column.id == "dormant" && row.dormant) copy.dormant = row.facts->dormant;
            EXPECT_TRUE(copy == *row.facts) << column.id << ": " << text;
        }
    }
}

TEST(WorksheetColumns, RefuseWhatIsNoFactAndChangeNothing) {
    const std::vector<std::pair<const char*, const char*>> bad = {
        {"severity-rating", "11"}, {"severity-rating", "5.5"}, {"occurrence-rating", "often"},
        {"mode-ratio", "1.2"},     {"effect-chance", "nan"},   {"dormant", "perhaps"},
        {"proved-on", "May"},      {"state", "finished"},      {"due", "2026-02-30"}};
    for (const auto& [id, text] : bad) {
        FailureMode mode;
        mode.actions = {{"a", "", "", ActionState::open, "", "", {}, {}}};
        const FailureMode before = mode;
        const auto fault = findColumn(id)->write(text, mode);
        ASSERT_TRUE(fault) << id << ' ' << text;
        EXPECT_FALSE(fault->empty());
        EXPECT_TRUE(mode == before) << id;
    }
}

TEST(WorksheetCoverage, FindsWhatDoesNotMeet) {
    Project p = test::boilers();
    {
        const Coverage coverage = coverageOf(p, Index(p));
        std::vector<std::string> modes;
        for (const std::size_t at : coverage.modesInNoTree)
            modes.push_back(p.modes[at].id);
        EXPECT_THAT(modes, ElementsAre("electrodes.fouled", "electrodes.worn", "mains.dead",
                                       "battery.dead", "diode-a.open"));
        ASSERT_EQ(coverage.eventsInNoRow.size(), 1u);
        EXPECT_EQ(p.events[coverage.eventsInNoRow[0]].id, "other");
        ASSERT_EQ(coverage.effects.size(), 2u); // one is written in two ways
        EXPECT_EQ(coverage.effects[0].modes.size(), 3u);
        EXPECT_EQ(coverage.effects[0].severity, "Severe"); // the worst
        EXPECT_THAT(coverage.effects[0].answeredBy, IsEmpty());
        EXPECT_THAT(coverage.effects[0].foundIn, ElementsAre(0u));
    }
    p.tops[0].endEffects = {"BOILER without steam", "nothing of the kind"};
    const Coverage coverage = coverageOf(p, Index(p));
    EXPECT_THAT(coverage.effects[0].answeredBy, ElementsAre(0u));
    ASSERT_EQ(coverage.unknownEffects.size(), 1u);
    EXPECT_EQ(coverage.unknownEffects[0].second, "nothing of the kind");
    p.tops[0].endEffects.clear();
    p.tops[0].name = "none at once";
    EXPECT_THAT(coverageOf(p, Index(p)).effects[1].answeredBy, ElementsAre(0u));
}

} // namespace cutwater::worksheet
