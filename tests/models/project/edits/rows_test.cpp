// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/delta.h"
#include "models/project/edits/rows.h"
#include "tests/models/project/edits/small_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater::project::edits {

using test::sentenceOf;
using test::smallTree;
using ::testing::HasSubstr;

namespace {

// Forth and back again gives the same project.
void expectUndo(const Project& before, const Result& result) {
    ASSERT_TRUE(result) << sentenceOf(result);
    const Delta delta = differences(before, result->project);
    EXPECT_TRUE(revert(delta, result->project) == before);
    EXPECT_TRUE(apply(delta, before) == result->project);
}

} // namespace

TEST(Rows, ChangeManyInOneStep) {
    const Project p = smallTree();
    FailureMode a = p.modes[0], b = p.modes[1];
    a.endEffect = "stop";
    b.component = "PLANT";
    const Result done = changeRows(p, {a, b}, "Paste into %1", "2 cells");
    expectUndo(p, done);
    EXPECT_EQ(done->doing, "Paste into %1");
    EXPECT_EQ(done->project.modes[0].endEffect, "stop");
    EXPECT_EQ(done->project.modes[1].component, "PLANT");
    b.component = "NO";
    EXPECT_THAT(sentenceOf(changeRows(p, {b}, "", "")), HasSubstr("no component NO"));
    a.id = "FAN.x";
    EXPECT_THAT(sentenceOf(changeRows(p, {a}, "", "")), HasSubstr("no failure mode FAN.x"));
}

TEST(Rows, NewOnesStandBehindTheChosenOne) {
    const Project p = smallTree();
    const Result done = addRow(p, "FAN", "runs slow", "FAN.stops");
    expectUndo(p, done);
    ASSERT_EQ(done->project.modes.size(), 3u);
    EXPECT_EQ(done->project.modes[1].id, "FAN.runs-slow");
    EXPECT_EQ(done->touched, std::vector<Id>{"FAN.runs-slow"});
    EXPECT_TRUE(validate(done->project).size() >= validate(p).size());
    EXPECT_THAT(sentenceOf(addRow(p, "FAN", " ")), HasSubstr("no name"));
    EXPECT_THAT(sentenceOf(addRow(p, "NO", "x")), HasSubstr("no component NO"));
    EXPECT_THAT(sentenceOf(addRow(p, "FAN", "stops")), HasSubstr("already"));
}

TEST(Rows, NewComponentsComeWithTheirRow) {
    const Project p = smallTree();
    const Result done = addRowOfNewComponent(p, "P 1", "PLANT", "leaks");
    expectUndo(p, done);
    EXPECT_EQ(done->project.components.back().tag, "P 1");
    EXPECT_EQ(done->project.components.back().parent, "PLANT");
    EXPECT_EQ(done->project.modes.back().component, done->project.components.back().id);
    EXPECT_TRUE(isWellFormedId(done->project.modes.back().id));
    EXPECT_THAT(sentenceOf(addRowOfNewComponent(p, "FAN", "", "x")), HasSubstr("already"));
    EXPECT_THAT(sentenceOf(addRowOfNewComponent(p, "", "", "x")), HasSubstr("no tag"));
    EXPECT_THAT(sentenceOf(addRowOfNewComponent(p, "Q", "NO", "x")), HasSubstr("no component NO"));
}

TEST(Rows, DuplicatesHaveNamesAndIdsOfTheirOwn) {
    Project p = smallTree();
    p.modes[0].endEffect = "stop";
    p.modes[0].libraryMode = "lib";
    const Result done = duplicateRows(p, {"FAN.stops", "FAN.no-start"});
    expectUndo(p, done);
    ASSERT_EQ(done->project.modes.size(), 4u);
    EXPECT_EQ(done->project.modes[1].name, "stops (2)");
    EXPECT_EQ(done->project.modes[1].endEffect, "stop");
    EXPECT_TRUE(done->project.modes[1].libraryMode.empty());
    EXPECT_EQ(done->about, "2 rows");
    const Result again = duplicateRows(done->project, {"FAN.stops"});
    ASSERT_TRUE(again);
    EXPECT_EQ(again->project.modes[1].name, "stops (3)");
    EXPECT_FALSE(duplicateRows(p, {}));
}

// A tree never loses a figure because a row went.
TEST(Rows, RemovedOnesLeaveTheirEventsWhole) {
    Project p = smallTree();
    p.modes[0].model.kind = ModelKind::perDemand;
    p.events[2].name.clear();
    const Result done = removeRows(p, {"FAN.stops"});
    expectUndo(p, done);
    EXPECT_EQ(done->project.modes.size(), 1u);
    const Event* event = test::eventOf(done->project, "fan");
    ASSERT_NE(event, nullptr);
    EXPECT_EQ(event->mode, "");
    EXPECT_EQ(event->name, "stops");
    EXPECT_TRUE(event->model == p.modes[0].model);
    EXPECT_EQ(done->about, "stops");
    LogEntry entry;
    entry.id = "L1";
    entry.mode = "FAN.stops";
    p.log.push_back(entry);
    EXPECT_THAT(sentenceOf(removeRows(p, {"FAN.stops"})), HasSubstr("the log speaks of"));
}

} // namespace cutwater::project::edits
