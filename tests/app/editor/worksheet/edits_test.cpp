// SPDX-License-Identifier: GPL-3.0-or-later
// Many cells at once: clear, fill, copy, paste, find and replace; rows made and taken away.
#include "app/editor/worksheet/cell_clipboard.h"
#include "app/editor/worksheet/new_row_dialog.h"
#include "tests/app/editor/worksheet/desk.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>

namespace cutwater::editor {

using test::Desk;

namespace {

void clip(const QString& text) {
    QApplication::clipboard()->setText(text);
}

// One step, with that name, and back and forth again by it.
void expectOneStep(Desk& desk, const QString& name, const project::Project& before) {
    EXPECT_EQ(desk.session.undoStack()->count(), 1);
    EXPECT_EQ(desk.undoName(), name);
    const project::Project after = desk.project();
    desk.undo();
    EXPECT_TRUE(desk.project() == before);
    desk.redo();
    EXPECT_TRUE(desk.project() == after);
}

} // namespace

TEST(WorksheetEdits, DeleteClearsTheChosenCells) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "end-effect");
    desk.extendTo("P-2.sticks", "end-effect");
    desk.press(Qt::Key_Delete);
    EXPECT_EQ(desk.mode("P-1.leaks").endEffect + desk.mode("P-2.sticks").endEffect, "");
    EXPECT_EQ(desk.mode("V-1.leaks").endEffect, "oil on deck");
    expectOneStep(desk, "Clear 4 cells", test::smallSheet());
}

TEST(WorksheetEdits, FillsDown) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "severity-rating");
    desk.extendTo("P-2.leaks", "rpn"); // what is worked out is left alone, without a word
    desk.act("sheet.fill-down");
    EXPECT_EQ(desk.mode("P-1.sticks").severityRating, 9);
    EXPECT_EQ(desk.mode("P-2.leaks").severityRating, 9);
    EXPECT_TRUE(desk.page->report().sentence().isEmpty());
    expectOneStep(desk, "Fill down 2 cells", test::smallSheet());
    desk.goTo("P-2.sticks", "severity-rating"); // one cell: from the one above
    desk.act("sheet.fill-down");
    EXPECT_EQ(desk.mode("P-2.sticks").severityRating, 9);
}

TEST(WorksheetEdits, FillsTheChoice) {
    Desk desk(test::smallSheet());
    desk.goTo("V-1.sticks", "severity-rating");
    desk.extendTo("P-1.leaks", "severity-rating"); // the current cell is the last one
    desk.act("sheet.fill-same");
    for (const char* id : {"P-1.leaks", "P-2.leaks", "V-1.sticks"})
        EXPECT_EQ(desk.mode(id).severityRating, 9) << id;
    EXPECT_FALSE(desk.mode("V-10.leaks").severityRating);
}

TEST(WorksheetEdits, PastesTextWithTabsFromTheFirstCellOn) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "severity-rating");
    clip("1\t2\t3\n4\t5\t6\n");
    desk.act("sheet.paste");
    EXPECT_EQ(desk.mode("P-1.leaks").detectionRating, 3);
    EXPECT_EQ(desk.mode("P-1.sticks").severityRating, 4);
    EXPECT_EQ(desk.mode("P-1.sticks").detectionRating, 6);
    expectOneStep(desk, "Paste into 6 cells", test::smallSheet());
}

TEST(WorksheetEdits, PastesATableOfASpreadsheet) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "local-effect");
    auto* data = new QMimeData;
    data->setHtml("<table><tr><td>two<br>lines</td><td>'=steam</td></tr>"
                  "<tr><td>b</td><td>c</td></tr></table>");
    data->setText("this is not what is taken");
    QApplication::clipboard()->setMimeData(data);
    desk.act("sheet.paste");
    EXPECT_EQ(desk.mode("P-1.leaks").localEffect, "two\nlines");
    EXPECT_EQ(desk.mode("P-1.leaks").endEffect, "=steam");
    EXPECT_EQ(desk.mode("P-1.sticks").endEffect, "c");
}

TEST(WorksheetEdits, PastesTextWithCommasWhereAsked) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "local-effect");
    clip("\"a, b\",c\n\"two\nlines\",d\n");
    desk.act("sheet.paste-csv");
    EXPECT_EQ(desk.mode("P-1.leaks").localEffect, "a, b");
    EXPECT_EQ(desk.mode("P-1.leaks").endEffect, "c");
    EXPECT_EQ(desk.mode("P-1.sticks").localEffect, "two\nlines");
}

TEST(WorksheetEdits, OneValueGoesIntoEveryChosenCell) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "occurrence-rating");
    desk.extendTo("P-2.sticks", "detection-rating");
    clip("7");
    desk.act("sheet.paste");
    for (const char* id : {"P-1.leaks", "P-1.sticks", "P-2.leaks", "P-2.sticks"}) {
        EXPECT_EQ(desk.mode(id).occurrenceRating, 7);
        EXPECT_EQ(desk.mode(id).detectionRating, 7);
    }
}

// Nothing is dropped without a word; what is good is taken, in one step.
TEST(WorksheetEdits, ReportsEachCellThatIsNotTaken) {
    Desk desk(test::smallSheet());
    desk.goTo("V-10.leaks", "detection-rating");
    clip("3\t100\n12\t\n4\t5"); // RPN beside it; a row more than there is
    desk.act("sheet.paste");
    EXPECT_EQ(desk.mode("V-10.leaks").detectionRating, 3);
    EXPECT_EQ(desk.page->report().sentence(), "Changed: 1 cell. Not taken: 4 cells.");
    const auto& cells = desk.page->report().notTaken();
    ASSERT_EQ(cells.size(), 4u);
    EXPECT_EQ(cells[0].column, "RPN");
    EXPECT_EQ(cells[0].row, "V-10: leaks");
    EXPECT_TRUE(cells[1].why.contains("no row left"));
    EXPECT_TRUE(cells[2].why.contains("no row left"));
    EXPECT_EQ(cells[3].text, "12");
    EXPECT_EQ(cells[3].why, "is not a whole number from 1 to 10");
    EXPECT_EQ(desk.page->report().asText().count('\n'), 5);
    expectOneStep(desk, "Paste into 1 cell", test::smallSheet());
}

TEST(WorksheetEdits, PasteGoesIntoTheRowsThatAreSeen) {
    Desk desk(test::smallSheet());
    Arrangement wanted;
    wanted.words = "sticks";
    wanted.keys = {{sheetColumn("component"), true}}; // V-10, V-1, P-2, P-1
    desk.page->arrange(wanted);
    desk.goTo("V-10.sticks", "severity-rating");
    clip("1\n2\n3");
    desk.act("sheet.paste");
    EXPECT_EQ(desk.mode("V-10.sticks").severityRating, 1);
    EXPECT_EQ(desk.mode("V-1.sticks").severityRating, 2);
    EXPECT_EQ(desk.mode("P-2.sticks").severityRating, 3);
    EXPECT_EQ(desk.mode("P-1.leaks").severityRating, 9); // put away: not touched
}

TEST(WorksheetEdits, CopiesForSpreadsheetsAndForItself) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "end-effect");
    desk.type("=SUM(A1)");
    desk.press(Qt::Key_Return);
    desk.goTo("P-1.leaks", "end-effect");
    desk.extendTo("P-1.sticks", "end-effect");
    desk.act("sheet.copy");
    const QMimeData* data = QApplication::clipboard()->mimeData();
    EXPECT_EQ(data->text(), "'=SUM(A1)\nno steam");
    EXPECT_TRUE(data->hasHtml());
    EXPECT_TRUE(data->hasFormat("text/csv"));
    desk.goTo("V-1.leaks", "end-effect");
    desk.act("sheet.paste");
    EXPECT_EQ(desk.mode("V-1.leaks").endEffect, "=SUM(A1)");
    desk.goTo("V-10.leaks", "end-effect");
    desk.act("sheet.cut");
    EXPECT_EQ(desk.mode("V-10.leaks").endEffect, "");
    desk.goTo("V-10.sticks", "end-effect");
    desk.act("sheet.paste");
    EXPECT_EQ(desk.mode("V-10.sticks").endEffect, "oil on deck");
}

TEST(WorksheetEdits, CountsAndReplacesInOneStep) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "end-effect");
    desk.act("sheet.find");
    auto& bar = desk.page->findBar();
    auto* find = bar.findChild<QLineEdit*>("find");
    EXPECT_EQ(find->text(), "oil on deck"); // what was under the hand
    find->setText("OIL");
    bar.findChild<QLineEdit*>("replace")->setText("fuel");
    EXPECT_EQ(bar.findChild<QLabel*>("count")->text(),
              "Cells found: 4. Places: 4. Cells that a replacement changes: 4.");
    bar.findChild<QCheckBox*>("case")->setChecked(true);
    EXPECT_EQ(bar.findChild<QLabel*>("count")->text(), "Found nowhere.");
    bar.findChild<QCheckBox*>("case")->setChecked(false);
    desk.act("sheet.find-next");
    EXPECT_EQ(desk.page->view().currentIndex(), desk.at("P-2.leaks", "end-effect"));
    QTest::mouseClick(bar.findChild<QPushButton*>("replaceAll"), Qt::LeftButton);
    EXPECT_EQ(desk.mode("V-10.leaks").endEffect, "fuel on deck");
    expectOneStep(desk, "Replace in 4 cells", test::smallSheet());
    bar.findChild<QComboBox*>("scope")->setCurrentIndex(int(SearchScope::column));
    find->setText("pump");
    EXPECT_EQ(bar.findChild<QLabel*>("count")->text(), "Found nowhere."); // stands in others
}

TEST(WorksheetEdits, MakesRowsAndComponents) {
    Desk desk(test::smallSheet());
    desk.goTo("P-2.leaks", "mode");
    desk.page->questions.run = [](QDialog& dialog) {
        EXPECT_EQ(dialog.findChild<QComboBox*>("component")->currentText(), "P-2");
        dialog.findChild<QLineEdit*>("mode")->setText("runs dry");
        return true;
    };
    desk.act("sheet.new-row");
    EXPECT_EQ(desk.mode("P-2.runs-dry").component, "P-2");
    EXPECT_EQ(desk.page->view().currentIndex(), desk.at("P-2.runs-dry", "mode"));
    EXPECT_EQ(desk.line("P-2.runs-dry"), desk.line("P-2.leaks") + 1);
    desk.page->questions.run = [](QDialog& dialog) {
        dialog.findChild<QComboBox*>("component")->setEditText("F-7");
        EXPECT_TRUE(dialog.findChild<QComboBox*>("parent")->isEnabled());
        dialog.findChild<QComboBox*>("parent")->setEditText("P-1");
        dialog.findChild<QLineEdit*>("mode")->setText("clogged");
        return true;
    };
    desk.act("sheet.new-row");
    EXPECT_EQ(desk.mode("F-7.clogged").component, "F-7");
    EXPECT_EQ(desk.project().components.back().parent, "P-1");
    desk.undo();
    EXPECT_EQ(desk.project().components.size(), 4u);
}

TEST(WorksheetEdits, DuplicatesAndRemovesRows) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "mode");
    desk.act("sheet.duplicate");
    EXPECT_EQ(desk.mode("P-1.leaks-2").endEffect, "oil on deck");
    desk.goTo("P-1.leaks", "mode");
    QString asked;
    bool agree = false;
    desk.page->questions.agree = [&](QWidget*, const QString& question) {
        asked = question;
        return agree;
    };
    desk.act("sheet.remove");
    EXPECT_TRUE(asked.contains("P-1: leaks"));
    EXPECT_TRUE(asked.contains("Used in the trees T1")) << asked.toStdString();
    EXPECT_EQ(desk.project().modes.size(), 9u);
    agree = true;
    desk.act("sheet.remove");
    EXPECT_EQ(desk.project().modes.size(), 8u);
    EXPECT_EQ(desk.project().events[0].mode, "");
    EXPECT_EQ(desk.undoName(), "Remove leaks");
    desk.undo();
    EXPECT_EQ(desk.project().events[0].mode, "P-1.leaks");
}

} // namespace cutwater::editor
