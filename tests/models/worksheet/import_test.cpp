// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/import.h"
#include "models/worksheet/sheet_text.h"
#include "tests/models/worksheet/boilers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stdexcept>

namespace cutwater::worksheet {

using namespace project;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

namespace {

Import imported(const Project& p, const std::string& text, const ImportWish& wish = {}) {
    auto import = importRows(p, text, wish);
    if (!import) throw std::runtime_error(toSentence(import.problems().front()));
    return std::move(*import);
}

} // namespace

TEST(Import, ChangesAddsAndLeavesAlone) {
    const Project p = test::boilers();
    const Import import = imported(p, "Component,Failure mode,Causes,S,Colour\n"
                                      "pump-a,stops,bearing | overload,7,red\n"
                                      "PUMP B,leaks,seal,,red\n");
    EXPECT_EQ(import.taken(), 2u);
    EXPECT_THAT(import.matching.ignored, ElementsAre(HasSubstr("Colour: no such column")));
    const FailureMode& stops = import.project.modes[2];
    EXPECT_THAT(stops.causes, ElementsAre("bearing", "overload"));
    EXPECT_EQ(stops.severityRating, 7);
    EXPECT_TRUE(stops.model == p.modes[2].model); // what the table does not hold stays
    const FailureMode& leaks = import.project.modes.back();
    EXPECT_TRUE(import.rows[1].isNew);
    EXPECT_EQ(leaks.id, "pump-b.leaks");
    EXPECT_EQ(leaks.component, "pump-b");
    EXPECT_FALSE(leaks.severityRating);
    ASSERT_EQ(import.rows[0].changes.size(), 2u);
    EXPECT_EQ(import.rows[0].changes[1].after, "7");
}

// Nothing is dropped in silence: each line is taken, or says why not.
TEST(Import, NamesEachRowThatItRefuses) {
    const Project p = test::boilers();
    const Import import = imported(p, "component,mode,severity-rating,dormant,owner\n"
                                      "pump-x,stops,5,,\n"
                                      "pump-a,stops,12,,\n"
                                      "pump-a,,5,,\n"
                                      ",stops,5,,\n"
                                      "pump-b,stops,5,maybe,\n"
                                      "pump-a,stops,5,,second\n"
                                      "pump-a,stops,5,,\n"
                                      "pump-a,stops,6,,\n"
                                      "pump-a,leaks,6,,,surplus\n");
    std::vector<std::string> why;
    for (const ImportRow& row : import.rows)
        why.push_back(row.why);
    EXPECT_THAT(why,
                ElementsAre(HasSubstr("no component \"pump-x\"; did you mean pump-"),
                            HasSubstr("S \"12\" is not a whole number from 1 to 10"),
                            HasSubstr("does not say what fails"), HasSubstr("which component"),
                            HasSubstr("neither yes nor no"), HasSubstr("but no action"), IsEmpty(),
                            HasSubstr("an earlier row"), HasSubstr("beyond the last heading")));
    EXPECT_EQ(import.taken(), 1u);
    EXPECT_EQ(import.rows[7].line, 9);
    // Rows that were refused leave no trace.
    EXPECT_EQ(import.project.modes.size(), p.modes.size());
    EXPECT_EQ(import.project.modes[2].severityRating, 5);
    EXPECT_FALSE(import.project.modes[3].severityRating);
}

TEST(Import, MakesComponentsOnlyWhereAsked) {
    const Project p = test::boilers();
    ImportWish wish;
    wish.makeComponents = true;
    const Import import =
        imported(p, "item,failure,S\nFN 1,stops,5\nFN 1,hums,2\nFN 2,stops,99\n", wish);
    EXPECT_THAT(import.newComponents, ElementsAre("fn-1")); // FN 2 was refused as a whole
    EXPECT_EQ(import.project.components.back().tag, "FN 1");
    EXPECT_EQ(import.project.modes.back().component, "fn-1");
    EXPECT_EQ(import.taken(), 2u);
    EXPECT_FALSE(hasErrors(validate(import.project)));
}

TEST(Import, MatchesHeadingsAsTold) {
    const std::vector<std::string> header = {"Part", "Fault", "S", "RPN"};
    EXPECT_FALSE(matchColumns(header, {})); // nothing names the row
    const auto matching = matchColumns(header, {{"part", "component"}, {"Fault", "mode"}});
    ASSERT_TRUE(matching);
    EXPECT_THAT(matching->columns, ElementsAre("component", "mode", "severity-rating", ""));
    EXPECT_THAT(matching->ignored, ElementsAre("RPN: worked out from other facts"));
    const auto wrong = matchColumns(header, {{"Piece", "component"}, {"RPN", "rpn"}, {"S", "siz"}});
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.problems().size(), 4u);
    const auto twice = matchColumns({"tag", "component", "S", "sev"}, {});
    ASSERT_FALSE(twice);
    EXPECT_EQ(twice.problems().size(), 2u);
}

// What is exported and imported again changes nothing, in either form.
TEST(Import, TakesBackWhatWasExported) {
    Project p = test::boilers();
    FailureMode& full = test::mode(p, "pump-a.stops");
    full.name = "=stops";
    full.causes = {"-wear", "says \"no\"", "a,b;c"};
    full.localEffect = "two\nlines";
    full.severityRating = 4;
    full.actions = {{"new", "second", "2026-05-01", ActionState::done, "2026-04-01", "", {}, {}},
                    {"look", "", "", ActionState::open, "", "", {}, {}}};
    for (const char separator : {',', '\t'}) {
        const std::string text = sheetAsText(p, separator);
        EXPECT_THAT(text, HasSubstr("'=stops"));
        const Import import = imported(p, text);
        for (const ImportRow& row : import.rows) {
            EXPECT_TRUE(row.taken) << row.why;
            // Found by tests only: the sheet shows it as dormant, and says so from then on.
            for (const CellChange& change : row.changes)
                EXPECT_EQ(change.column, "dormant") << row.mode << ' ' << change.after;
        }
        Project same = import.project;
        test::mode(same, "pump-b.stops").dormant = false;
        EXPECT_TRUE(same == p);
    }
}

TEST(Import, EmptyTablesAndBadOnesAreProblems) {
    const Project p;
    EXPECT_FALSE(importRows(p, "", {}));
    EXPECT_FALSE(importRows(p, "component,mode\n\"x", {}));
    const auto only = importRows(p, "component,mode\n", {});
    ASSERT_TRUE(only);
    EXPECT_TRUE(only->rows.empty());
}

} // namespace cutwater::worksheet
