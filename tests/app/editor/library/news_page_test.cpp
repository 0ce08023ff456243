// SPDX-License-Identifier: GPL-3.0-or-later
// Where the library has moved on: listed, accepted for one component, undone.
#include "app/editor/library/news_page.h"
#include "models/library/take.h"
#include "tests/app/editor/library/small_library.h"
#include "tests/models/project/edits/small_plant.h"

#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTreeWidget>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
namespace library = cutwater::library;

namespace {

class MovedOn : public testing::Test {
protected:
    MovedOn() {
        QSettings().clear();
        Project project = smallPlant();
        const auto old = smallLibrary();
        for (const char* id : {"P-1", "P-2"}) {
            library::TakeWish wish;
            wish.id = id;
            project = *library::take(project, old, old.types.front(), wish);
        }
        session.start(project);
        QObject::connect(&page, &NewsPage::counted, &page, [this](int count) { counted = count; });
        page.show();
    }
    void read(const library::Library& now) {
        write(folder.filePath("now.cutlib"), now);
        QSignalSpy changed(&shelf, &Shelf::changed);
        shelf.read();
        ASSERT_TRUE(changed.wait(10000));
    }
    QTreeWidget& tree() { return *page.findChild<QTreeWidget*>("news"); }
    const Project& project() { return *session.project(); }

    QTemporaryDir folder;
    Session session;
    Shelf shelf{folder.path()};
    NewsPage page{session, shelf};
    int counted = -1;
};

} // namespace

TEST_F(MovedOn, NothingWhereTheRevisionIsTheSame) {
    EXPECT_EQ(tree().topLevelItemCount(), 0) << "not read yet: nothing is missing";
    read(smallLibrary());
    EXPECT_EQ(counted, 0);
    EXPECT_TRUE(page.findChild<QLabel*>("newsWords")->text().contains("2"));
}

TEST_F(MovedOn, OneComponentIsAcceptedAndTheOtherStays) {
    read(smallLibrary("2", "no flow, no pressure"));
    EXPECT_EQ(counted, 2);
    ASSERT_EQ(tree().topLevelItemCount(), 2);
    QTreeWidgetItem* first = tree().topLevelItem(0);
    ASSERT_EQ(first->childCount(), 2);
    EXPECT_EQ(first->child(1)->text(1), "no flow");
    EXPECT_EQ(first->child(1)->text(2), "no flow, no pressure");
    const Project before = project();
    tree().setCurrentItem(first->child(1));
    QTest::mouseClick(page.findChild<QPushButton*>("acceptNews"), Qt::LeftButton);
    EXPECT_EQ(modeOf(project(), "P-1.stops")->localEffect, "no flow, no pressure");
    EXPECT_EQ(modeOf(project(), "P-2.stops")->localEffect, "no flow");
    EXPECT_EQ(counted, 1);
    session.undoStack()->undo();
    EXPECT_EQ(project(), before);
    EXPECT_EQ(counted, 2);
}

TEST_F(MovedOn, WhatIsNotTickedStaysAsItIs) {
    read(smallLibrary("2", "no flow, no pressure"));
    tree().topLevelItem(0)->child(1)->setCheckState(0, Qt::Unchecked);
    tree().setCurrentItem(tree().topLevelItem(0));
    page.acceptCurrent();
    EXPECT_EQ(modeOf(project(), "P-1.stops")->localEffect, "no flow");
    EXPECT_EQ(partOf(project(), "P-1")->origin->revision, "2");
    EXPECT_EQ(counted, 1);
}

TEST_F(MovedOn, ALibraryThatIsMissingCannotBeAccepted) {
    auto other = smallLibrary();
    other.id = "another";
    read(other);
    EXPECT_EQ(counted, 2);
    EXPECT_FALSE(page.findChild<QPushButton*>("acceptNews")->isEnabled());
}
