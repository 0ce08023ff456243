// SPDX-License-Identifier: GPL-3.0-or-later
// Sheets as files and on a printer.
#include "app/editor/diagram/export.h"
#include "app/editor/diagram/export_dialog.h"
#include "tests/app/editor/diagram/stage.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QPrinter>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using namespace editor;

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

ExportOrder orderFor(const QString& path, std::size_t events = 60) {
    ExportOrder order;
    order.project = std::make_shared<const project::Project>(test::largeTree(events));
    order.top = order.project->tops.front();
    order.path = path;
    return order;
}

TEST(Export, TheEndOfTheNameSaysWhatIsWritten) {
    EXPECT_EQ(fileTypeOf("a/b.PDF"), FileType::pdf);
    EXPECT_EQ(fileTypeOf("b.svg"), FileType::svg);
    EXPECT_EQ(fileTypeOf("b.x.png"), FileType::png);
    EXPECT_EQ(fileTypeOf("b"), std::nullopt);
}

TEST(Export, AllSheetsInOnePdf) {
    QTemporaryDir folder;
    const test::Layout layout;
    const ExportOrder order = orderFor(folder.filePath("tree.pdf"));
    const ExportReport report = exportFiles(order, layout, {});
    EXPECT_TRUE(report.done) << qPrintable(report.sentence);
    const QByteArray pdf = bytesOf(order.path);
    EXPECT_TRUE(pdf.startsWith("%PDF"));
    const auto pictures = exportPictures(order, layout, {});
    ASSERT_TRUE(pictures.content);
    EXPECT_GT(pictures.content->size(), 1U);
    EXPECT_EQ(static_cast<std::size_t>(pdf.count("/Type /Page\n")), pictures.content->size());
    EXPECT_FALSE(QFile::exists(folder.filePath("tree.pdf.tmp")));
}

TEST(Export, AFileForEachSheetAndOnlyOneWhereAsked) {
    QTemporaryDir folder;
    const test::Layout layout;
    ExportOrder order = orderFor(folder.filePath("tree.svg"));
    ASSERT_TRUE(exportFiles(order, layout, {}).done);
    EXPECT_TRUE(bytesOf(folder.filePath("tree-1.svg")).contains("<svg"));
    EXPECT_TRUE(QFile::exists(folder.filePath("tree-2.svg")));
    order.path = folder.filePath("one.png");
    order.onlySheet = 2;
    order.dpi = 72;
    ASSERT_TRUE(exportFiles(order, layout, {}).done);
    const QImage image(order.path);
    // A4 at 72 dpi: 595 by 842 points.
    EXPECT_EQ(std::max(image.width(), image.height()), 842);
    EXPECT_EQ(std::min(image.width(), image.height()), 595);
    EXPECT_FALSE(QFile::exists(folder.filePath("one-1.png")));
    order.paper = drawing::Paper::a3;
    ASSERT_TRUE(exportFiles(order, layout, {}).done);
    EXPECT_EQ(std::max(QImage(order.path).width(), QImage(order.path).height()), 1191);
}

TEST(Export, WhatIsMarkedIsMarkedOnPaperUpToTheTop) {
    QTemporaryDir folder;
    const test::Layout layout;
    ExportOrder order = orderFor({});
    order.project = std::make_shared<const project::Project>(test::smallTree());
    order.top = order.project->tops.front();
    order.marked = {"x", "y"};
    const auto pictures = exportPictures(order, layout, {});
    ASSERT_TRUE(pictures.content);
    std::set<std::string> heavy;
    for (const drawing::Picture& picture : *pictures.content)
        for (const drawing::Group& group : picture.groups)
            for (const drawing::Mark& mark : group.marks)
                if (const auto* path = std::get_if<drawing::Path>(&mark))
                    if (path->width > 1.5) heavy.insert(group.id);
    for (const char* id : {"node-x", "node-a", "node-top", "inputs-a", "inputs-top"})
        EXPECT_TRUE(heavy.contains(id)) << id;
    EXPECT_FALSE(heavy.contains("node-s"));
}

TEST(Export, APlaceThatCannotBeWrittenIsASentence) {
    const test::Layout layout;
    const ExportReport report = exportFiles(orderFor("/no/such/folder/x.pdf"), layout, {});
    EXPECT_FALSE(report.done);
    EXPECT_TRUE(report.sentence.contains("/no/such/folder/x.pdf"));
    EXPECT_FALSE(exportFiles(orderFor("x.doc"), layout, {}).done);
}

TEST(Export, ThroughThePanelInItsOwnThread) {
    QTemporaryDir folder;
    test::Stage stage(test::largeTree(60));
    QSignalSpy spy(stage.panel.get(), &DiagramPanel::exported);
    stage.panel->exportTo(folder.filePath("tree.pdf"), false, 100);
    ASSERT_TRUE(spy.wait(20000));
    EXPECT_TRUE(spy.first().at(0).toBool()) << qPrintable(spy.first().at(1).toString());
    EXPECT_TRUE(bytesOf(folder.filePath("tree.pdf")).startsWith("%PDF"));
}

TEST(Export, PrintedPagesComeOutAsAsked) {
    QTemporaryDir folder;
    const test::Layout layout;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath("printed.pdf"));
    printer.setPageSize(QPageSize(QPageSize::A4));
    printer.setFromTo(2, 3);
    QString sentence;
    EXPECT_TRUE(printSheets(orderFor({}), layout, printer, sentence)) << qPrintable(sentence);
    EXPECT_EQ(bytesOf(folder.filePath("printed.pdf")).count("/Type /Page\n"), 2);
}

} // namespace
} // namespace cutwater
