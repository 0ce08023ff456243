// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/session/recovery.h"

#include "models/project/edits/facts.h"
#include "tests/models/project/edits/small_tree.h"

#include <QDir>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
namespace edits = cutwater::project::edits;

namespace {

void renameStop(Session& session, const char* name) {
    session.apply([&](const Project& p) { return edits::rename(p, "stop", name); });
}

QStringList copiesIn(const QString& folder) {
    return QDir(folder).entryList({"*.cutwater"}, QDir::Files);
}

} // namespace

TEST(RecoveryCopy, IsWrittenWhileDirtyAndGoesWhenSaved) {
    QTemporaryDir folder;
    const QString copies = folder.filePath("copies");
    Session session;
    session.start(smallTree());
    Recovery recovery(session, copies, 30);
    QTest::qWait(100);
    EXPECT_TRUE(copiesIn(copies).isEmpty()) << "nothing to lose yet";
    QSignalSpy copied(&recovery, &Recovery::copied);
    renameStop(session, "x");
    ASSERT_TRUE(copied.wait(3000));
    EXPECT_EQ(copiesIn(copies).size(), 1);
    EXPECT_TRUE(Recovery::leftovers(copies).isEmpty()) << "its editor is alive";
    QTest::qWait(100);
    EXPECT_EQ(copied.count(), 1) << "once for each change";
    ASSERT_TRUE(session.saveTo(folder.filePath("plant.cutwater")).empty());
    EXPECT_TRUE(copiesIn(copies).isEmpty());
}

TEST(RecoveryCopy, GoesWithASessionThatEndsInOrder) {
    QTemporaryDir folder;
    {
        Session session;
        session.start(smallTree());
        Recovery recovery(session, folder.path(), 20);
        QSignalSpy copied(&recovery, &Recovery::copied);
        renameStop(session, "x");
        ASSERT_TRUE(copied.wait(3000));
    }
    EXPECT_TRUE(copiesIn(folder.path()).isEmpty());
}

TEST(RecoveryCopy, AFolderThatCannotBeWrittenIsToldOnce) {
    QTemporaryDir folder;
    QFile file(folder.filePath("file"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    Session session;
    session.start(smallTree());
    Recovery recovery(session, folder.filePath("file"), 20); // no folder
    QSignalSpy failed(&recovery, &Recovery::failed);
    renameStop(session, "x");
    ASSERT_TRUE(failed.wait(3000));
    QTest::qWait(150);
    EXPECT_EQ(failed.count(), 1);
}

TEST(RecoveryCopy, IsOpenedAsUnsavedWorkOnItsFile) {
    QTemporaryDir folder;
    Session before;
    before.start(smallTree());
    renameStop(before, "what was typed last");
    ASSERT_TRUE(before.saveTo(folder.filePath("copy.cutwater")).empty());
    Session session;
    QSignalSpy opened(&session, &Session::opened);
    session.openRecovered(folder.filePath("copy.cutwater"), folder.filePath("plant.cutwater"));
    ASSERT_TRUE(opened.wait(3000));
    EXPECT_TRUE(session.isDirty());
    EXPECT_EQ(session.path(), folder.filePath("plant.cutwater"));
    EXPECT_EQ(gateOf(*session.project(), "stop")->name, "what was typed last");
    ASSERT_TRUE(session.saveTo(session.path()).empty());
    EXPECT_FALSE(session.isDirty());
}
