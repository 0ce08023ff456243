// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/result_model.h"
#include "app/editor/analyses/result_view.h"
#include "app/editor/analyses/table_page.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

using namespace cutwater;
using editor::ResultFilter;
using editor::ResultModel;
using editor::ResultView;
using editor::TablePage;
using sdk::Cell;
using sdk::ColumnType;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

std::shared_ptr<sdk::Result> sample() {
    auto result = std::make_shared<sdk::Result>();
    result->title = "Sample";
    sdk::Table table{"t",
                     "Table",
                     {{"event", "Event", ColumnType::reference, ""},
                      {"p", "Probability", ColumnType::probability, ""},
                      {"hours", "Time", ColumnType::number, "h"},
                      {"n", "Count", ColumnType::integer, ""}}};
    const double nan = std::numeric_limits<double>::quiet_NaN();
    table.rows = {{std::string("e10"), 2e-3, 9.0, std::int64_t{10}},
                  {std::string("e2, not e3"), 1e-10, 10.0, std::int64_t{9}},
                  {std::string("E1"), Cell(), nan, std::int64_t{100}},
                  {std::string("e4"), 0.5, 1e5, std::int64_t{-1}}};
    table.remark = "A remark.";
    result->tables = {table};
    result->marks = {{"t", 3, {"e4", "g1"}}, {"other", 0, {"no"}}};
    return result;
}

std::vector<std::string> column(const QAbstractItemModel& model, int column) {
    std::vector<std::string> texts;
    for (int row = 0; row < model.rowCount(); ++row)
        texts.push_back(model.index(row, column).data().toString().toStdString());
    return texts;
}

} // namespace

TEST(ResultModel, ReadsAsTheShellPrints) {
    ResultModel model(sample(), 0);
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.headerData(2, Qt::Horizontal, Qt::DisplayRole).toString(), "Time [h]");
    EXPECT_EQ(model.headerData(1, Qt::Horizontal, Qt::DisplayRole).toString(), "Probability");
    EXPECT_THAT(column(model, 1), ElementsAre("2.000e-03", "1.000e-10", "", "5.000e-01"));
    EXPECT_THAT(column(model, 2), ElementsAre("9", "10", "not a number", "100000"));
}

TEST(ResultModel, KnowsTheNodesOfARow) {
    const ResultModel model(sample(), 0);
    EXPECT_THAT(model.nodes(3), ElementsAre("e4", "g1")); // marked by the result
    EXPECT_THAT(model.nodes(1), ElementsAre("e2", "e3")); // read off the reference
    EXPECT_THAT(model.nodes(0), ElementsAre("e10"));
}

TEST(ResultFilter, SortsByValueNotByLetters) {
    ResultModel model(sample(), 0);
    ResultFilter filter(&model);
    const QAbstractItemModelTester tester(&filter,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    filter.sort(1, Qt::AscendingOrder);
    EXPECT_THAT(column(filter, 1), ElementsAre("", "1.000e-10", "2.000e-03", "5.000e-01"));
    filter.sort(1, Qt::DescendingOrder);
    EXPECT_THAT(column(filter, 1), ElementsAre("5.000e-01", "2.000e-03", "1.000e-10", ""));
    filter.sort(2, Qt::AscendingOrder);
    EXPECT_THAT(column(filter, 2), ElementsAre("not a number", "9", "10", "100000"));
    filter.sort(3, Qt::AscendingOrder);
    EXPECT_THAT(column(filter, 3), ElementsAre("-1", "9", "10", "100"));
    filter.sort(0, Qt::AscendingOrder);
    EXPECT_THAT(column(filter, 0), ElementsAre("E1", "e10", "e2, not e3", "e4"));
    filter.sort(-1);
    EXPECT_THAT(column(filter, 0), ElementsAre("e10", "e2, not e3", "E1", "e4"));
}

TEST(ResultFilter, ShowsRowsWithEveryWord) {
    ResultModel model(sample(), 0);
    ResultFilter filter(&model);
    filter.setWords("E1");
    EXPECT_THAT(column(filter, 0), ElementsAre("e10", "E1"));
    filter.setWords("e 10"); // in different cells
    EXPECT_THAT(column(filter, 0), ElementsAre("e10", "e2, not e3", "E1", "e4"));
    filter.setWords("e1 2.000e");
    EXPECT_THAT(column(filter, 0), ElementsAre("e10"));
    filter.setWords("nothing");
    EXPECT_EQ(filter.rowCount(), 0);
    filter.setWords("");
    EXPECT_EQ(filter.rowCount(), 4);
}

TEST(TablePage, ClickOnATitleSortsAndTypingFilters) {
    TablePage page(sample(), 0);
    page.resize(600, 300);
    page.show();
    QHeaderView* const header = page.view()->horizontalHeader();
    const QPoint onTime(header->sectionViewportPosition(2) + 5, header->height() / 2);
    QTest::mouseClick(header->viewport(), Qt::LeftButton, {}, onTime);
    QTest::mouseClick(header->viewport(), Qt::LeftButton, {}, onTime);
    const auto sorted = column(*page.view()->model(), 2);
    EXPECT_THAT(sorted, testing::AnyOf(ElementsAre("100000", "10", "9", "not a number"),
                                       ElementsAre("not a number", "9", "10", "100000")));
    auto* const words = page.findChild<QLineEdit*>("filter");
    QTest::keyClicks(words, "e4");
    QTest::keyClick(words, Qt::Key_Return);
    EXPECT_EQ(page.view()->model()->rowCount(), 1);
    EXPECT_EQ(page.findChild<QLabel*>("rowCount")->text(), "1 of 4 rows");
}

TEST(TablePage, CopiesWhatIsShownOrPicked) {
    TablePage page(sample(), 0);
    page.resize(600, 300);
    page.show();
    page.view()->sortByColumn(3, Qt::DescendingOrder);
    EXPECT_EQ(page.asCsv().toStdString(), "event,p,hours [h],n\n"
                                          "E1,,,100\n"
                                          "e10,0.002,9,10\n"
                                          "\"e2, not e3\",1e-10,10,9\n"
                                          "e4,0.5,100000,-1\n");
    EXPECT_THAT(page.asText().toStdString(), HasSubstr("5.000e-01"));
    page.view()->selectRow(0);
    page.view()->selectionModel()->select(page.view()->model()->index(2, 0),
                                          QItemSelectionModel::Select | QItemSelectionModel::Rows);
    EXPECT_EQ(page.asCsv().toStdString(), "event,p,hours [h],n\n"
                                          "E1,,,100\n"
                                          "\"e2, not e3\",1e-10,10,9\n");
    page.activateWindow();
    page.view()->setFocus();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    QTest::keyClick(page.view(), Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(QApplication::clipboard()->text(), page.asCsv());
    QTest::keyClick(page.view(), Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QApplication::clipboard()->text(), page.asText());
}

TEST(TablePage, SaysWhichRowWasChosen) {
    TablePage page(sample(), 0);
    page.show();
    QSignalSpy chosen(&page, &TablePage::rowChosen);
    page.view()->selectRow(3);
    ASSERT_GE(chosen.count(), 1);
    EXPECT_THAT(chosen.last()[0].value<std::vector<std::string>>(), ElementsAre("e4", "g1"));
    EXPECT_EQ(chosen.last()[1].toString(), "Table: e4");
}

TEST(ResultView, ShowsNotesOnTopAndEveryTableAndPlot) {
    const auto result = sample();
    result->exactness = sdk::Exactness::bounded;
    result->notes = {{sdk::NoteKind::method, "By counting."},
                     {sdk::NoteKind::caution, "Mind your head."},
                     {sdk::NoteKind::assumption, "The sea is flat."},
                     {sdk::NoteKind::warning, "Not all was listed."}};
    sdk::Series curve;
    curve.id = "c";
    curve.title = "T1: chance";
    curve.x = {0, 1};
    curve.y = {1, 2};
    result->series = {curve};
    ResultView view(result, "top T1");
    view.show();
    const auto* const notes = view.notes()->model();
    EXPECT_THAT(column(*notes, 0),
                ElementsAre("Warning: Not all was listed.", "Assumption: The sea is flat.",
                            "Caution: Mind your head.", "Remark: By counting."));
    EXPECT_THAT(view.findChild<QLabel*>("noteSummary")->text().toStdString(),
                testing::AllOf(HasSubstr("Not everything here is exact"), HasSubstr("1 warning"),
                               HasSubstr("1 caution")));
    ASSERT_EQ(view.chooser()->count(), 2);
    EXPECT_EQ(view.chooser()->itemText(0), "Table: Table");
    EXPECT_EQ(view.chooser()->itemText(1), "Plot: T1: chance");
    EXPECT_TRUE(qobject_cast<TablePage*>(view.page()));
    QTest::keyClick(view.chooser(), Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_FALSE(qobject_cast<TablePage*>(view.page()));
    EXPECT_THAT(view.asText().toStdString(), HasSubstr("Mind your head."));
    EXPECT_THAT(view.asCsv().toStdString(), HasSubstr("# table t: Table\n"));
    const QTemporaryDir folder;
    for (const char* const name : {"r.csv", "r.txt"}) {
        EXPECT_EQ(view.save(folder.filePath(name)), QString());
        QFile file(folder.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_EQ(QString::fromUtf8(file.readAll()), name[2] == 'c' ? view.asCsv() : view.asText());
    }
    EXPECT_THAT(view.save(folder.filePath("no/r.csv")).toStdString(),
                HasSubstr("cannot be written"));
}
