// SPDX-License-Identifier: GPL-3.0-or-later
// The page follows the session and the selection, and tells the selection what is chosen.
#include "app/editor/worksheet/cell_editors.h"
#include "models/project/edits/facts.h"
#include "models/project/edits/rows.h"
#include "tests/app/editor/worksheet/desk.h"

#include <QLineEdit>
#include <QScrollBar>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace cutwater::editor {

using test::Desk;

// Somebody else changes the project while a cell is typed in.
TEST(WorksheetFollow, WhatIsBeingTypedStays) {
    Desk desk(test::smallSheet());
    desk.goTo("V-1.leaks", "local-effect");
    desk.type("half a sent");
    desk.session.apply([](const project::Project& p) {
        return project::edits::addRow(p, "P-1", "runs dry", "P-1.leaks"); // a row above
    });
    desk.session.apply([](const project::Project& p) {
        project::FailureMode mode = p.modes[5];
        mode.localEffect = "from elsewhere";
        return project::edits::changeRows(p, {mode}, "Change", "");
    });
    ASSERT_NE(desk.field(), nullptr);
    EXPECT_EQ(cellField(desk.field())->cellText(), "half a sent");
    desk.type("ence");
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.mode("V-1.leaks").localEffect, "half a sentence");
}

TEST(WorksheetFollow, ScrollAndChoiceStayWhenRowsChange) {
    Desk desk(test::largeSheet(300));
    auto& view = desk.page->view();
    view.goTo(desk.page->grid().index(200, 4));
    view.extendTo(desk.page->grid().index(203, 6));
    const project::Id id = desk.page->grid().idAt(203);
    const int scrolled = view.verticalScrollBar()->value();
    desk.session.apply([](const project::Project& p) {
        project::FailureMode mode = p.modes[10];
        mode.endEffect = "another";
        return project::edits::changeRows(p, {mode}, "Change", "");
    });
    EXPECT_EQ(view.verticalScrollBar()->value(), scrolled);
    EXPECT_EQ(view.block().lines.size(), 4u);
    desk.session.apply(
        [](const project::Project& p) { return project::edits::removeRows(p, {p.modes[3].id}); });
    EXPECT_EQ(desk.page->grid().idAt(view.currentIndex().row()), id);
    EXPECT_EQ(view.block().lines.size(), 4u);
}

TEST(WorksheetFollow, ARowSelectsItsEventAndTheOtherWayRound) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.sticks", "mode");
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.selection.isSelected("E-P-1.sticks"); }, 2000));
    desk.goTo("V-1.leaks", "mode"); // in no tree
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.selection.spots().empty(); }, 2000));
    desk.selection.select({"E-P-1.leaks"});
    EXPECT_EQ(desk.page->view().currentIndex().row(), desk.line("P-1.leaks"));
    EXPECT_EQ(desk.page->view().block().lines.size(), 1u);
    Arrangement wanted;
    wanted.words = "valve";
    desk.page->arrange(wanted);
    QSignalSpy said(desk.page.get(), &WorksheetPage::said);
    desk.selection.select({"E-P-1.sticks"});
    ASSERT_EQ(said.count(), 1);
    EXPECT_TRUE(said[0][0].toString().contains("filter"));
}

TEST(WorksheetFollow, CostsNothingWhileItIsNotSeen) {
    Desk desk(test::smallSheet());
    desk.page->hide();
    const auto before = desk.page->grid().data();
    desk.session.apply(
        [](const project::Project& p) { return project::edits::addRow(p, "P-1", "runs dry"); });
    EXPECT_EQ(desk.page->grid().data(), before);
    desk.page->show();
    EXPECT_GE(desk.line("P-1.runs-dry"), 0);
}

TEST(WorksheetFollow, TheOperatingModeIsTyped) {
    Desk desk(test::smallSheet());
    auto* mode = desk.page->findChild<QLineEdit*>("operatingMode");
    mode->setFocus();
    mode->setText("in port");
    QTest::keyClick(mode, Qt::Key_Return);
    EXPECT_EQ(desk.project().operatingMode, "in port");
    EXPECT_EQ(desk.project().modes.size(), 8u);
    EXPECT_EQ(desk.session.undoStack()->count(), 1);
    desk.page->view().setFocus();
    desk.undo();
    EXPECT_EQ(mode->text(), "");
}

TEST(WorksheetFollow, ShowsTheFiguresOfTheEndEffectBesideTheSeverity) {
    project::Project p = test::smallSheet();
    for (project::FailureMode* mode : {&p.modes[0], &p.modes[1]}) {
        mode->model.kind = project::ModelKind::perDemand;
        project::Quantity chance;
        chance.value = 0.5;
        chance.unit = project::Unit::perDemand;
        mode->model.set(project::Role::probability, chance);
    }
    Desk desk(p); // T1 is called as the end effect "no steam" is
    ColumnChoice choice = desk.page->columns();
    choice.shown = columnSet("trees")->columns;
    desk.page->setColumns(choice);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !desk.page->effects().isWorking(); }, 10000));
    EXPECT_EQ(desk.text("P-2.sticks", "effect-tree"), "T1");
    EXPECT_EQ(desk.text("P-2.sticks", "effect-probability"), "0.75"); // 1 - 0.5 x 0.5
    EXPECT_EQ(desk.text("P-2.leaks", "effect-probability"), "");
    EXPECT_EQ(desk.text("P-1.leaks", "trees"), "T1");
}

} // namespace cutwater::editor
