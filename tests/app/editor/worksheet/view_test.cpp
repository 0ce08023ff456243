// SPDX-License-Identifier: GPL-3.0-or-later
// What is seen: columns, sorting, filtering, groups, columns that stand still.
#include "app/editor/worksheet/columns_dialog.h"
#include "app/editor/worksheet/filter_dialog.h"
#include "tests/app/editor/worksheet/desk.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollBar>

#include <gtest/gtest.h>

namespace cutwater::editor {

using test::Desk;

namespace {

void clickHeading(Desk& desk, const char* column, Qt::KeyboardModifiers modifiers = {}) {
    const int section = desk.section(column);
    auto& view = desk.page->view();
    QHeaderView* heading =
        (section < view.frozenNow() ? view.frozenView() : &view)->horizontalHeader();
    view.scrollTo(desk.page->grid().index(0, section));
    QTest::mouseClick(
        heading->viewport(), Qt::LeftButton, modifiers,
        QPoint(heading->sectionViewportPosition(section) + heading->sectionSize(section) / 2,
               heading->height() / 2));
    QCoreApplication::processEvents();
}

} // namespace

TEST(WorksheetView, AClickOnAHeadingSorts) {
    Desk desk(test::smallSheet());
    clickHeading(desk, "severity-rating");
    EXPECT_EQ(desk.column("severity-rating").mid(0, 4), (QStringList{"2", "9", "10", ""}));
    EXPECT_TRUE(desk.page->grid()
                    .headerData(desk.section("severity-rating"), Qt::Horizontal, Qt::DisplayRole)
                    .toString()
                    .startsWith(QString("S ") + QChar(0x25B2)));
    clickHeading(desk, "severity-rating");
    EXPECT_EQ(desk.column("severity-rating").mid(0, 4), (QStringList{"10", "9", "2", ""}));
    clickHeading(desk, "severity-rating");
    EXPECT_EQ(desk.column("severity-rating").mid(0, 4), (QStringList{"9", "10", "2", ""}));
    clickHeading(desk, "mode");
    clickHeading(desk, "component", Qt::ShiftModifier); // a second key
    EXPECT_EQ(desk.column("component").mid(0, 4), (QStringList{"P-1", "P-2", "V-1", "V-10"}));
    EXPECT_EQ(desk.page->grid().arrangement().keys.size(), 2u);
}

// The hand finds its place again.
TEST(WorksheetView, KeepsTheCurrentCellAndTheChoiceThroughSortAndFilter) {
    Desk desk(test::smallSheet());
    desk.goTo("P-2.leaks", "end-effect");
    desk.extendTo("P-2.sticks", "end-effect");
    clickHeading(desk, "severity-rating");
    EXPECT_EQ(desk.page->view().currentIndex(), desk.at("P-2.sticks", "end-effect"));
    QStringList chosen;
    for (const QModelIndex& cell : desk.page->view().chosenCells())
        chosen.append(QString::fromStdString(desk.page->grid().idAt(cell.row())));
    chosen.sort();
    EXPECT_EQ(chosen, (QStringList{"P-2.leaks", "P-2.sticks"}));
    desk.page->filterField().setText("sticks");
    QTest::qWait(300);
    EXPECT_EQ(desk.page->grid().rowCount(), 4);
    EXPECT_EQ(desk.page->view().currentIndex(), desk.at("P-2.sticks", "end-effect"));
    desk.page->filterField().setText("no such words");
    QTest::qWait(300);
    EXPECT_TRUE(desk.page->findChild<QLabel*>("worksheetEmpty")->isVisible());
    desk.act("sheet.every-row");
    EXPECT_EQ(desk.page->grid().rowCount(), 8);
    EXPECT_TRUE(desk.page->view().isVisible());
}

TEST(WorksheetView, FiltersAColumn) {
    Desk desk(test::smallSheet());
    desk.goTo("P-1.leaks", "severity");
    desk.page->questions.run = [](QDialog& dialog) {
        auto* values = dialog.findChild<QListWidget*>("values");
        EXPECT_EQ(values->count(), 2);
        EXPECT_EQ(values->item(0)->text(), "minor  (4)");
        values->item(0)->setCheckState(Qt::Unchecked);
        return true;
    };
    desk.act("sheet.filter-column");
    EXPECT_EQ(desk.column("severity"), (QStringList{"severe", "severe", "severe", "severe"}));
    EXPECT_EQ(desk.page->findChild<QLabel*>("rowCount")->text(), "Rows: 4 of 8");
    desk.goTo("P-1.sticks", "severity-rating");
    desk.page->questions.run = [](QDialog& dialog) {
        dialog.findChild<QLineEdit*>("least")->setText("9,5");
        return true;
    };
    desk.act("sheet.filter-column");
    EXPECT_EQ(desk.column("mode"), QStringList{"sticks"});
}

TEST(WorksheetView, GroupsFoldsAndUnfolds) {
    Desk desk(test::smallSheet());
    auto* groups = desk.page->findChild<QComboBox*>("groupBy");
    groups->setCurrentIndex(int(GroupBy::component));
    emit groups->activated(int(GroupBy::component));
    EXPECT_EQ(desk.page->grid().rowCount(), 12);
    EXPECT_EQ(desk.column("mode").front(), "[P-1: pump: 2 rows]");
    auto& view = desk.page->view();
    view.goTo(desk.page->grid().index(0, 3));
    desk.press(Qt::Key_Left);
    EXPECT_EQ(desk.page->grid().rowCount(), 10);
    desk.press(Qt::Key_Right);
    EXPECT_EQ(desk.page->grid().rowCount(), 12);
    desk.press(Qt::Key_Space);
    EXPECT_EQ(desk.page->grid().rowCount(), 10);
    desk.press(Qt::Key_Delete); // a head is no cell
    EXPECT_EQ(desk.session.undoStack()->count(), 0);
    desk.act("sheet.fold-all");
    EXPECT_EQ(desk.page->grid().rowCount(), 4);
    desk.act("sheet.unfold-all");
    EXPECT_EQ(desk.page->grid().rowCount(), 12);
    // A choice over heads takes the rows only.
    desk.goTo("P-1.leaks", "severity");
    desk.extendTo("P-2.sticks", "severity");
    EXPECT_EQ(view.block().lines.size(), 4u);
}

TEST(WorksheetView, FirstColumnsStayInSight) {
    Desk desk(test::smallSheet());
    auto& view = desk.page->view();
    ASSERT_TRUE(view.frozenView()->isVisible());
    view.horizontalScrollBar()->setValue(view.horizontalScrollBar()->maximum());
    const QModelIndex mode = desk.at("P-1.leaks", "mode");
    EXPECT_GE(view.frozenView()->visualRect(mode).left(), 0);
    EXPECT_TRUE(
        view.frozenView()->viewport()->rect().contains(view.frozenView()->visualRect(mode)));
    // A cell that is gone to is never below the part that stands.
    desk.goTo("P-1.leaks", "causes");
    EXPECT_GE(view.visualRect(desk.at("P-1.leaks", "causes")).left(), view.frozenView()->width());
    view.horizontalScrollBar()->setValue(view.horizontalScrollBar()->maximum());
    QTest::mouseClick(view.frozenView()->viewport(), Qt::LeftButton, {},
                      view.frozenView()->visualRect(mode).center());
    EXPECT_EQ(view.currentIndex(), mode);
    QTest::mouseClick(view.frozenView()->viewport(), Qt::LeftButton, Qt::ShiftModifier,
                      view.frozenView()->visualRect(desk.at("P-2.leaks", "mode")).center());
    EXPECT_EQ(view.block().lines.size(), 3u);
    Desk tall(test::largeSheet(200));
    tall.page->view().verticalScrollBar()->setValue(500);
    EXPECT_EQ(tall.page->view().frozenView()->verticalScrollBar()->value(), 500);
    EXPECT_EQ(tall.page->view().frozenView()->rowAt(5), tall.page->view().rowAt(5));
    desk.act("sheet.unfreeze");
    EXPECT_FALSE(view.frozenView()->isVisible());
    // Where they would leave no room for the others, fewer stay.
    desk.page->resize(500, 400);
    ColumnChoice choice = desk.page->columns();
    choice.frozen = 6;
    desk.page->setColumns(choice);
    QCoreApplication::processEvents();
    EXPECT_LT(view.frozenNow(), 6);
}

TEST(WorksheetView, ColumnsAreKeptForThePerson) {
    Desk desk(test::smallSheet());
    desk.page->questions.run = [](QDialog& dialog) {
        auto* list = dialog.findChild<QListWidget*>("columnList");
        QListWidgetItem* causes = nullptr;
        for (int row = 0; row < list->count(); ++row) {
            if (list->item(row)->text() == "Causes") causes = list->item(row);
            if (list->item(row)->text() == "Severity")
                list->item(row)->setCheckState(Qt::Unchecked);
        }
        list->insertItem(0, list->takeItem(list->row(causes)));
        return true;
    };
    desk.act("sheet.columns");
    EXPECT_EQ(desk.page->grid().columnAt(0).id, "causes");
    EXPECT_THROW(desk.section("severity"), std::out_of_range);
    desk.page->view().setColumnWidth(desk.section("mode"), 333);
    desk.page->view().setFrozen(1);
    Session session;
    Selection selection;
    WorksheetPage second(session, selection, desk.host); // of the same person
    EXPECT_EQ(second.columns().shown, desk.page->columns().shown);
    EXPECT_EQ(second.view().columnWidth(desk.section("mode")), 333);
}

TEST(WorksheetView, DormantFailuresStandApart) {
    Desk desk(test::smallSheet());
    auto* sets = desk.page->findChild<QComboBox*>("columnSets");
    sets->setCurrentIndex(sets->findData("dormant"));
    emit sets->activated(sets->currentIndex());
    EXPECT_EQ(desk.page->grid().rowCount(), 1);
    EXPECT_EQ(desk.text("V-1.leaks", "test-interval"), "4 wk");
    EXPECT_EQ(desk.text("V-1.leaks", "next-test"), "2026-01-29");
    EXPECT_TRUE(desk.page->findChild<QCheckBox*>("dormantOnly")->isChecked());
    sets->setCurrentIndex(0);
    emit sets->activated(0);
    EXPECT_EQ(desk.page->grid().rowCount(), 8);
}

TEST(WorksheetView, SaysTheWeaknessOfTheRpnAndTheCautions) {
    Desk desk(test::smallSheet());
    EXPECT_TRUE(desk.page->findChild<QLabel*>("rpnWarning")->isVisible());
    EXPECT_TRUE(desk.page->findChild<QLabel*>("standingCaution")->isVisible());
    ColumnChoice choice = desk.page->columns();
    choice.shown = columnSet("dormant")->columns;
    desk.page->setColumns(choice);
    EXPECT_FALSE(desk.page->findChild<QLabel*>("rpnWarning")->isVisible());
    desk.page->questions.run = [](QDialog& dialog) {
        auto* standing = dialog.findChild<QListWidget*>("standing");
        EXPECT_GE(standing->count(), 11);
        for (int row = 0; row < standing->count(); ++row)
            EXPECT_FALSE(standing->item(row)->flags() & Qt::ItemIsEditable);
        dialog.findChild<QPlainTextEdit*>("own")->setPlainText("two feeds\n\n lock both \n");
        return true;
    };
    desk.act("sheet.cautions");
    EXPECT_EQ(desk.project().cautions, (std::vector<std::string>{"two feeds", "lock both"}));
    desk.undo();
    EXPECT_TRUE(desk.project().cautions.empty());
}

} // namespace cutwater::editor
