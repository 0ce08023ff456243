// SPDX-License-Identifier: GPL-3.0-or-later
// Typing in cells, with keys alone.
#include "app/editor/worksheet/cell_editors.h"
#include "tests/app/editor/worksheet/desk.h"

#include <gtest/gtest.h>

namespace cutwater::editor {

using test::Desk;

TEST(WorksheetTyping, ReplacesWhatIsThereAndGoesOn) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "local-effect");
    desk.type("oil drips");
    ASSERT_NE(desk.field(), nullptr);
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.field(), nullptr);
    EXPECT_EQ(desk.mode("P-1.leaks").localEffect, "oil drips");
    EXPECT_EQ(desk.page->view().currentIndex(), desk.at("P-1.sticks", "local-effect"));
    EXPECT_EQ(desk.undoName(), "Type P-1: leaks, Local effect");
    desk.undo();
    EXPECT_EQ(desk.mode("P-1.leaks").localEffect, "");
    desk.redo();
    EXPECT_EQ(desk.text("P-1.leaks", "local-effect"), "oil drips");
}

TEST(WorksheetTyping, KeysLeadWhereASpreadsheetLeads) {
    Desk desk(test::smallSheet());
    auto& view = desk.page->view();
    desk.goTo("P-1.leaks", "local-effect");
    desk.type("a");
    desk.press(Qt::Key_Tab);
    EXPECT_EQ(view.currentIndex(), desk.at("P-1.leaks", "end-effect"));
    desk.type("b");
    desk.press(Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(view.currentIndex(), desk.at("P-1.leaks", "local-effect"));
    desk.press(Qt::Key_Down);
    desk.type("c");
    desk.press(Qt::Key_Right); // begun by typing: an arrow leads out of the cell
    EXPECT_EQ(desk.mode("P-1.sticks").localEffect, "c");
    EXPECT_EQ(view.currentIndex(), desk.at("P-1.sticks", "end-effect"));
    desk.press(Qt::Key_F2); // begun by F2: an arrow moves within the text
    desk.press(Qt::Key_Left);
    EXPECT_NE(desk.field(), nullptr);
    desk.press(Qt::Key_X);
    desk.press(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(desk.mode("P-1.sticks").endEffect, "no steaxm");
    EXPECT_EQ(view.currentIndex(), desk.at("P-1.leaks", "end-effect"));
    desk.press(Qt::Key_Home);
    EXPECT_EQ(view.currentIndex().column(), 0);
    desk.press(Qt::Key_End);
    EXPECT_EQ(view.currentIndex().column(), desk.page->grid().columnCount() - 1);
    desk.press(Qt::Key_End, Qt::ControlModifier);
    EXPECT_EQ(view.currentIndex().row(), 7);
    desk.press(Qt::Key_Home, Qt::ControlModifier);
    EXPECT_EQ(view.currentIndex(), desk.page->grid().index(0, 0));
    desk.press(Qt::Key_Down, Qt::ControlModifier); // as far as the cells are filled
    EXPECT_EQ(view.currentIndex().row(), 7);
    desk.press(Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(view.block().lines.size(), 8u);
}

TEST(WorksheetTyping, EscapeGivesUp) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "end-effect");
    desk.type("nonsense");
    desk.press(Qt::Key_Escape);
    EXPECT_EQ(desk.field(), nullptr);
    EXPECT_EQ(desk.mode("P-1.leaks").endEffect, "oil on deck");
    EXPECT_EQ(desk.session.undoStack()->count(), 0);
    desk.press(Qt::Key_F2); // looked at, and left as it was
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.session.undoStack()->count(), 0);
}

// What cannot be is refused with a sentence that stays, and the field stays open to mend it.
TEST(WorksheetTyping, RefusesWithASentenceThatStays) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "severity-rating");
    desk.type("11");
    desk.press(Qt::Key_Return);
    ASSERT_NE(desk.field(), nullptr);
    EXPECT_EQ(desk.page->report().sentence(), "S: \"11\" is not a whole number from 1 to 10.");
    EXPECT_EQ(desk.mode("P-1.leaks").severityRating, 9);
    desk.press(Qt::Key_Backspace);
    EXPECT_FALSE(desk.page->report().sentence().isEmpty());
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.field(), nullptr);
    EXPECT_EQ(desk.mode("P-1.leaks").severityRating, 1);
    EXPECT_TRUE(desk.page->report().sentence().isEmpty());
}

TEST(WorksheetTyping, ListsTheLevelsOfTheScaleWithTheirWords) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "severity-rating");
    desk.press(Qt::Key_F2);
    auto* list = qobject_cast<CellChoiceField*>(desk.field());
    ASSERT_NE(list, nullptr);
    ASSERT_EQ(list->count(), 10);
    EXPECT_TRUE(list->itemText(0).startsWith("10  "));
    EXPECT_GT(list->itemText(0).size(), 6); // and the words of the scale
    desk.press(Qt::Key_Down);               // from 9 to 8
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.mode("P-1.leaks").severityRating, 8);
}

TEST(WorksheetTyping, WritesOneCauseALine) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "causes");
    desk.type("wear");
    desk.press(Qt::Key_Return, Qt::AltModifier);
    desk.type("dirt");
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.mode("P-1.leaks").causes, (std::vector<std::string>{"wear", "dirt"}));
    EXPECT_EQ(desk.text("P-1.leaks", "causes"), "wear | dirt");
}

// The first columns stand still: their cells are typed in all the same.
TEST(WorksheetTyping, WorksInTheColumnsThatStandStill) {
    Desk desk(test::smallSheet());
    ASSERT_EQ(desk.page->view().frozenNow(), 2);
    desk.goTo("P-1.leaks", "mode");
    desk.type("drips");
    ASSERT_NE(desk.field(), nullptr);
    EXPECT_TRUE(desk.page->view().frozenView()->isAncestorOf(desk.field()));
    desk.press(Qt::Key_Tab);
    EXPECT_EQ(desk.mode("P-1.leaks").name, "drips");
    EXPECT_EQ(desk.page->view().currentIndex(), desk.at("P-1.leaks", "causes"));
    EXPECT_TRUE(desk.page->view().hasFocus());
    desk.goTo("P-1.leaks", "component");
    desk.type("V-10");
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.mode("P-1.leaks").component, "V-10");
}

TEST(WorksheetTyping, ReadOnlyCellsTakeNothing) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "rpn");
    desk.type("5");
    EXPECT_EQ(desk.field(), nullptr);
    desk.press(Qt::Key_Delete);
    EXPECT_TRUE(desk.page->report().sentence().contains("cannot be cleared"));
    EXPECT_EQ(desk.session.undoStack()->count(), 0);
}

TEST(WorksheetTyping, ACalendarOffersDays) {
    Desk desk(test::smallSheet());
    ColumnChoice choice = desk.page->columns();
    choice.shown = columnSet("dormant")->columns;
    desk.page->setColumns(choice);
    desk.goTo("V-1.leaks", "last-test");
    desk.press(Qt::Key_F2);
    auto* line = qobject_cast<CellLineField*>(desk.field());
    ASSERT_NE(line, nullptr);
    line->clear();
    desk.press(Qt::Key_Semicolon, Qt::ControlModifier); // today
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.mode("V-1.leaks").model.lastTest,
              QDate::currentDate().toString(Qt::ISODate).toStdString());
    desk.goTo("V-1.leaks", "test-interval");
    desk.type("2 wk");
    desk.press(Qt::Key_Return);
    EXPECT_EQ(desk.mode("V-1.leaks").model.find(project::Role::interval)->value, 2);
}

} // namespace cutwater::editor
