// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/session/file_guard.h"
#include "app/editor/session/recent_files.h"

#include "tests/models/project/edits/small_tree.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

class Guard : public testing::Test {
protected:
    Guard() {
        session.start(smallTree());
        EXPECT_TRUE(session.saveTo(path).empty());
    }
    void writeOutside() {
        Project other = smallTree();
        other.name = "written by somebody else";
        Session elsewhere;
        elsewhere.start(other);
        ASSERT_TRUE(elsewhere.saveTo(path).empty());
    }
    QTemporaryDir folder;
    QString path = folder.filePath("plant.cutwater");
    Session session;
    FileGuard guard{session};
};

} // namespace

TEST_F(Guard, AChangeFromOutsideIsNoticed) {
    EXPECT_FALSE(guard.isChangedOutside());
    QSignalSpy changed(&guard, &FileGuard::changedOutside);
    QTest::qWait(20);
    writeOutside();
    EXPECT_TRUE(guard.isChangedOutside());
    ASSERT_TRUE(changed.wait(5000));
    guard.acceptOutside();
    EXPECT_FALSE(guard.isChangedOutside());
    // And again, though the file was replaced.
    QTest::qWait(20);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::Append));
    file.write("<!-- -->\n");
    file.close();
    ASSERT_TRUE(changed.wait(5000));
}

TEST_F(Guard, OurOwnSavingIsNoChangeFromOutside) {
    QSignalSpy changed(&guard, &FileGuard::changedOutside);
    ASSERT_TRUE(session.saveTo(path).empty());
    QTest::qWait(500);
    EXPECT_EQ(changed.count(), 0);
}

TEST_F(Guard, ASecondEditorIsTold) {
    EXPECT_EQ(guard.otherEditor(), "");
    Session second;
    FileGuard secondGuard(second);
    QSignalSpy opened(&second, &Session::opened);
    second.open(path);
    ASSERT_TRUE(opened.wait(5000));
    EXPECT_TRUE(
        secondGuard.otherEditor().contains(QString::number(QCoreApplication::applicationPid())))
        << secondGuard.otherEditor().toStdString();
    EXPECT_TRUE(secondGuard.whyNot(path).contains("plant.cutwater is open in another editor"));
    EXPECT_EQ(secondGuard.whyNot(folder.filePath("other.cutwater")), "");
    EXPECT_EQ(guard.whyNot(path), "");
    session.start({}); // the first lets it go
    second.start({});
    QSignalSpy again(&second, &Session::opened);
    second.open(path);
    ASSERT_TRUE(again.wait(5000));
    EXPECT_EQ(secondGuard.otherEditor(), "");
}

TEST(RecentFiles, LatestFirstEachOnceTenAtMost) {
    QTemporaryDir folder;
    QSettings settings(folder.filePath("settings.ini"), QSettings::IniFormat);
    for (int i = 0; i < 12; ++i) {
        const QString path = folder.filePath(QString("p%1.cutwater").arg(i));
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        noteRecent(settings, path);
    }
    noteRecent(settings, folder.filePath("p5.cutwater"));
    const QStringList recent = recentFiles(settings);
    EXPECT_EQ(recent.size(), 10);
    EXPECT_TRUE(recent.front().endsWith("p5.cutwater"));
    EXPECT_EQ(recent.count(recent.front()), 1);
    QFile::remove(folder.filePath("p11.cutwater"));
    EXPECT_EQ(recentFiles(settings).size(), 9);
}
