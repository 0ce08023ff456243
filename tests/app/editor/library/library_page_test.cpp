// SPDX-License-Identifier: GPL-3.0-or-later
// The libraries: read in a worker, looked through, taken from; own files, broken ones too.
#include "app/editor/library/library_page.h"
#include "app/editor/library/news_page.h"
#include "app/editor/library/type_model.h"
#include "tests/app/editor/library/small_library.h"
#include "tests/models/project/edits/small_plant.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <QTreeWidget>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

class Libraries : public testing::Test {
protected:
    Libraries() {
        QSettings().clear();
        session.start(smallPlant());
        QObject::connect(&page, &LibraryPage::sentence, &page,
                         [this](const QString& text) { told = text; });
        page.resize(1000, 700);
    }
    void look() {
        QSignalSpy changed(&shelf, &Shelf::changed);
        page.show();
        QApplication::setActiveWindow(&page);
        EXPECT_TRUE(changed.wait(10000));
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    }
    void addFile(const QString& path) {
        page.whichFile = [path] { return path; };
        QSignalSpy changed(&shelf, &Shelf::changed);
        page.findChild<QPushButton*>("addFile")->click();
        EXPECT_TRUE(changed.wait(10000));
    }
    QLineEdit& line(const char* name) { return *page.findChild<QLineEdit*>(name); }
    QString shown() { return page.findChild<QTextBrowser*>("typeText")->toPlainText(); }
    const Project& project() { return *session.project(); }

    QTemporaryDir folder; // of the user
    Session session;
    Shelf shelf{QStringLiteral(CUTWATER_SOURCE_DIR "/share/library")};
    LibraryPage page{session, shelf};
    QString told;
};

} // namespace

TEST_F(Libraries, TheShippedOnesAreReadWhenSomebodyLooks) {
    EXPECT_TRUE(shelf.content()->libraries.empty());
    look();
    EXPECT_EQ(shelf.content()->libraries.size(), 5u);
    QAbstractItemModelTester tester(&page.types(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_GE(page.types().rowCount(), 40);
    for (const ShelfFile& file : shelf.content()->files)
        EXPECT_TRUE(file.wrong.isEmpty()) << file.wrong.toStdString();
    line("typeFilter").setFocus();
    QTest::keyClicks(&line("typeFilter"), "scanner");
    ASSERT_GE(page.types().rowCount(), 1);
    EXPECT_LT(page.types().rowCount(), 20);
    EXPECT_TRUE(shown().contains("scanner", Qt::CaseInsensitive));
    line("typeFilter").setText("nothing is like this");
    EXPECT_EQ(page.types().rowCount(), 0);
    EXPECT_TRUE(shown().contains("Nothing fits"));
}

TEST_F(Libraries, ATypeTellsAllAndHowFarToTrustIt) {
    look();
    write(folder.filePath("mine.cutlib"), smallLibrary());
    addFile(folder.filePath("mine.cutlib"));
    line("typeFilter").setText("gear pump");
    ASSERT_EQ(page.types().rowCount(), 1);
    for (const char* part :
         {"move oil", "no flow", "wear", "Look at (5 min): listen at the bearing", "a growl: worn",
          "3e-05 per hour", "error factor 10", "WASH-1400, 1975, table III 4-1",
          "to be checked against the source", "No rate: no public source was found"})
        EXPECT_TRUE(shown().contains(part)) << part << "\n" << shown().toStdString();
}

TEST_F(Libraries, ATypeIsTakenBelowAComponentAndUndone) {
    look();
    write(folder.filePath("mine.cutlib"), smallLibrary());
    addFile(folder.filePath("mine.cutlib"));
    line("typeFilter").setText("gear pump");
    page.setParentComponent("B1");
    auto* take = page.findChild<QPushButton*>("take");
    QTest::mouseClick(take, Qt::LeftButton);
    EXPECT_TRUE(told.contains("tag")) << told.toStdString();
    EXPECT_EQ(project(), smallPlant());
    QSignalSpy taken(&page, &LibraryPage::taken);
    line("newTag").setFocus();
    QTest::keyClicks(&line("newTag"), "FP-3");
    QTest::keyClick(&line("newTag"), Qt::Key_Return);
    ASSERT_EQ(taken.count(), 1);
    const Component* made = partOf(project(), "FP-3");
    ASSERT_NE(made, nullptr);
    EXPECT_EQ(made->parent, "B1");
    EXPECT_EQ(made->type, "gear pump");
    ASSERT_TRUE(made->origin);
    EXPECT_EQ(made->origin->library, "mine");
    EXPECT_EQ(made->origin->revision, "1");
    ASSERT_NE(modeOf(project(), "FP-3.stops"), nullptr);
    EXPECT_EQ(modeOf(project(), "FP-3.stops")->model.find(Role::rate)->source.tag, "from memory");
    EXPECT_EQ(session.undoStack()->undoText(), "Take FP-3 from the library");
    session.undoStack()->undo();
    EXPECT_EQ(project(), smallPlant());
    line("newTag").setText("FP-1");
    page.take();
    EXPECT_NE(partOf(project(), "FP-1-2"), nullptr) << "a tag that is there is no hindrance";
}

TEST_F(Libraries, ABrokenFileGetsOneSentenceAndTheOthersStay) {
    look();
    const int before = page.types().rowCount();
    write(folder.filePath("broken.cutlib"), std::string("<cutwater-library version=\"1.1\"><lib"));
    addFile(folder.filePath("broken.cutlib"));
    auto* files = page.findChild<QTreeWidget*>("libraryFiles");
    ASSERT_EQ(files->topLevelItemCount(), 6);
    EXPECT_TRUE(files->topLevelItem(0)->text(0).startsWith("Not used: broken.cutlib"))
        << files->topLevelItem(0)->text(0).toStdString();
    EXPECT_EQ(files->topLevelItem(0)->text(0).count('\n'), 0);
    EXPECT_EQ(page.types().rowCount(), before);
    addFile(folder.filePath("not-there.cutlib"));
    EXPECT_EQ(files->topLevelItemCount(), 7);
    auto* remove = page.findChild<QPushButton*>("removeFile");
    files->setCurrentItem(files->topLevelItem(6));
    EXPECT_FALSE(remove->isEnabled()) << "it came with the program";
    files->setCurrentItem(files->topLevelItem(0));
    QSignalSpy changed(&shelf, &Shelf::changed);
    remove->click();
    ASSERT_TRUE(changed.wait(10000));
    EXPECT_EQ(files->topLevelItemCount(), 6);
    EXPECT_EQ(shelf.ownFiles().size(), 1) << "remembered in the settings";
}

TEST_F(Libraries, AFileOfOnesOwnTakesThePlaceOfALibraryOfTheSameId) {
    look();
    auto own = smallLibrary();
    own.id = "cutwater-burner";
    write(folder.filePath("own.cutlib"), own);
    addFile(folder.filePath("own.cutlib"));
    EXPECT_EQ(shelf.content()->libraries.size(), 5u);
    EXPECT_EQ(shelf.content()->libraries[0].types.size(), 1u);
    const auto& files = shelf.content()->files;
    EXPECT_EQ(std::count_if(files.begin(), files.end(),
                            [](const ShelfFile& file) { return !file.wrong.isEmpty(); }),
              1);
}

TEST_F(Libraries, NoLibraryIsSaid) {
    Shelf empty(folder.path());
    LibraryPage other(session, empty);
    QSignalSpy changed(&empty, &Shelf::changed);
    other.show();
    ASSERT_TRUE(changed.wait(10000));
    EXPECT_TRUE(
        other.findChild<QTextBrowser*>("typeText")->toPlainText().contains("There is no library"));
}
