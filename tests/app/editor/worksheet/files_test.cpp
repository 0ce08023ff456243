// SPDX-License-Identifier: GPL-3.0-or-later
// Import, export, paper.
#include "app/editor/worksheet/export_dialog.h"
#include "app/editor/worksheet/import_dialog.h"
#include "tests/app/editor/worksheet/desk.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPdfWriter>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace cutwater::editor {

using test::Desk;

namespace {

void waitFor(TableImportDialog& dialog) {
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isLooking(); }, 10000));
}

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

const std::vector<std::string> kPlugins{std::string(CUTWATER_BINARY_DIR) + "/plugins-out"};

} // namespace

TEST(WorksheetImport, MatchesShowsAndReports) {
    Desk desk(test::smallSheet());
    QTemporaryDir folder;
    const QString path = folder.filePath("old.csv");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("\xEF\xBB\xBFTag;Failure mode;Grade;RPN;Colour\r\n"
               "P-1;leaks;7;99;red\r\n"
               "P-1;runs dry;8;;\r\n"
               "P-9;leaks;5;;\r\n"
               "P-2;leaks;often;;\r\n");
    file.close();
    QString report;
    desk.page->questions.run = [&](QDialog& shown) {
        auto& dialog = dynamic_cast<TableImportDialog&>(shown);
        EXPECT_TRUE(dialog.readFile(path));
        waitFor(dialog);
        auto* rows = dialog.findChild<QTableWidget*>("rows");
        EXPECT_EQ(rows->rowCount(), 4);
        // "Grade" is nothing that we know; the person does.
        QComboBox* grade = dialog.choiceFor(2);
        EXPECT_EQ(grade->currentData(), "-");
        EXPECT_TRUE(dialog.choiceFor(3)->currentText().contains("worked out"));
        grade->setCurrentIndex(grade->findData("severity-rating"));
        waitFor(dialog);
        EXPECT_TRUE(dialog.findChild<QPushButton*>("take")->isEnabled());
        EXPECT_EQ(rows->item(0, 1)->text(), "! refused");
        EXPECT_EQ(rows->item(0, 0)->text(), "4");
        report = dialog.report();
        return true;
    };
    desk.act("sheet.import");
    EXPECT_EQ(desk.mode("P-1.leaks").severityRating, 7);
    EXPECT_EQ(desk.mode("P-1.runs-dry").severityRating, 8);
    EXPECT_EQ(desk.page->report().sentence(), "Imported: 2 rows. Not taken: 2 rows.");
    ASSERT_EQ(desk.page->report().notTaken().size(), 2u);
    EXPECT_EQ(desk.page->report().notTaken()[1].row, "line 5");
    EXPECT_TRUE(report.contains("4\trefused")) << report.toStdString();
    EXPECT_TRUE(report.contains("Colour"));
    EXPECT_EQ(desk.undoName(), "Import 2 rows");
    desk.undo();
    EXPECT_TRUE(desk.project() == test::smallSheet());
}

TEST(WorksheetImport, SaysWhatIsWrongWithATable) {
    const auto project = std::make_shared<const project::Project>(test::smallSheet());
    TableImportDialog dialog(project, nullptr);
    auto* sentence = dialog.findChild<QLabel*>("sentence");
    EXPECT_FALSE(dialog.readFile("/no/such/file.csv"));
    EXPECT_TRUE(sentence->text().startsWith("! "));
    dialog.readText("Failure mode,S\nleaks,5\n", "clipboard");
    waitFor(dialog);
    EXPECT_TRUE(sentence->text().contains("No heading says which component"))
        << sentence->text().toStdString();
    EXPECT_FALSE(dialog.findChild<QPushButton*>("take")->isEnabled());
    dialog.readText("component,mode\nP-1,\"never closed", "clipboard");
    EXPECT_TRUE(sentence->text().contains("opened and not closed"));
    dialog.readText("", "clipboard");
    EXPECT_TRUE(sentence->text().contains("empty")) << sentence->text().toStdString();
    dialog.readText("component,mode\n", "clipboard");
    waitFor(dialog);
    EXPECT_TRUE(sentence->text().contains("no row below")) << sentence->text().toStdString();
}

TEST(WorksheetExport, WritesWhatIsSeenOrAll) {
    Desk desk(test::smallSheet(), kPlugins);
    QTemporaryDir folder;
    Arrangement wanted;
    wanted.words = "valve";
    wanted.keys = {{sheetColumn("component"), true}};
    desk.page->arrange(wanted);
    QSignalSpy exported(desk.page.get(), &WorksheetPage::exported);
    for (const char* suffix : {"csv", "tsv", "xlsx"}) {
        const QString path = folder.filePath(QString("seen.%1").arg(suffix));
        desk.page->exportTo(path, suffix, false);
        ASSERT_TRUE(exported.wait(10000));
        EXPECT_TRUE(exported.takeFirst()[0].toBool());
        EXPECT_GT(bytesOf(path).size(), 50);
    }
    const QList<QByteArray> lines = bytesOf(folder.filePath("seen.csv")).trimmed().split('\n');
    ASSERT_EQ(lines.size(), 5);
    EXPECT_TRUE(lines[0].startsWith("component,mode,causes")) << lines[0].toStdString();
    EXPECT_TRUE(lines[1].startsWith("V-10,leaks"));
    EXPECT_TRUE(bytesOf(folder.filePath("seen.xlsx")).startsWith("PK"));
    desk.page->exportTo(folder.filePath("all.tsv"), "tsv", true);
    ASSERT_TRUE(exported.wait(10000));
    EXPECT_EQ(bytesOf(folder.filePath("all.tsv")).trimmed().split('\n').size(), 9);
    exported.clear();
    desk.page->exportTo("/no/such/folder/x.csv", "csv", true);
    ASSERT_TRUE(exported.wait(10000));
    EXPECT_FALSE(exported[0][0].toBool());
    EXPECT_TRUE(desk.page->report().sentence().contains("cannot be written"));
    wanted.words = "nothing at all";
    desk.page->arrange(wanted);
    desk.page->exportTo(folder.filePath("none.csv"), "csv", false);
    EXPECT_FALSE(QFile::exists(folder.filePath("none.csv"))); // not: everything
}

TEST(WorksheetPaper, RepeatsHeadingsAndFirstColumns) {
    Desk desk(test::largeSheet(60));
    PaperOrder order = desk.page->paperOrder();
    order.columns = columnSet("everything")->columns;
    const auto pages = layOut(order, 780, 400);
    ASSERT_GT(pages.size(), 3u);
    std::map<int, std::set<int>> rowsByColumn; // every cell stands somewhere
    for (const PaperPage& page : pages) {
        if (!page.words.isEmpty()) continue;
        EXPECT_EQ(page.columns[0], order.columns[0]);
        EXPECT_EQ(page.columns[1], order.columns[1]);
        EXPECT_NEAR(page.lefts.back(), 780, 0.01);
        double bottom = 0;
        for (const PaperPage::Line& line : page.lines) {
            EXPECT_NEAR(line.top, bottom, 1e-6);
            bottom = line.top + line.height;
            for (const int column : page.columns)
                rowsByColumn[column].insert(line.line.row);
        }
        EXPECT_LE(bottom, 400.01);
    }
    EXPECT_EQ(rowsByColumn.size(), sheetColumns().size());
    for (const auto& [column, rows] : rowsByColumn)
        EXPECT_EQ(rows.size(), 60u) << column;
    const QStringList words = paperWords(order);
    EXPECT_TRUE(words.front().startsWith("RPN: "));
    EXPECT_GE(words.size(), 12);
}

TEST(WorksheetPaper, IsGivenUpWhenAsked) {
    Desk desk(test::largeSheet(3000));
    QTemporaryDir folder;
    QSignalSpy exported(desk.page.get(), &WorksheetPage::exported);
    auto* work = desk.page->findChild<QWidget*>("worksheetWork");
    desk.page->writePdf(folder.filePath("sheet.pdf"), false);
    EXPECT_TRUE(work->isVisible());
    QTest::mouseClick(work->findChild<QPushButton*>(), Qt::LeftButton);
    ASSERT_TRUE(exported.wait(20000));
    EXPECT_FALSE(exported[0][0].toBool());
    EXPECT_EQ(exported[0][1].toString(), "");
    EXPECT_FALSE(work->isVisible());
    EXPECT_FALSE(QFile::exists(folder.filePath("sheet.pdf")));
    EXPECT_TRUE(desk.page->report().sentence().isEmpty());
}

TEST(WorksheetPaper, WritesPdf) {
    Desk desk(test::smallSheet());
    QTemporaryDir folder;
    QSignalSpy exported(desk.page.get(), &WorksheetPage::exported);
    desk.page->writePdf(folder.filePath("sheet.pdf"), false);
    ASSERT_TRUE(exported.wait(20000));
    EXPECT_TRUE(exported[0][0].toBool());
    EXPECT_TRUE(bytesOf(folder.filePath("sheet.pdf")).startsWith("%PDF"));
    desk.page->writePdf("/no/such/folder/x.pdf", true);
    ASSERT_TRUE(exported.wait(20000));
    EXPECT_FALSE(exported[1][0].toBool());
}

} // namespace cutwater::editor
