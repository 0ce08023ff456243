// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/session/session.h"

#include "models/project/edits/facts.h"
#include "tests/models/project/edits/small_tree.h"

#include <QElapsedTimer>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
namespace edits = cutwater::project::edits;

namespace {

void write(const QString& path, const QByteArray& text) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
}

bool renameStop(Session& session, const char* name) {
    return session.apply([&](const Project& p) { return edits::rename(p, "stop", name); });
}

} // namespace

TEST(Session, UndoAndRedoWithNames) {
    Session session;
    session.start(smallTree());
    const Snapshot before = session.project();
    const quint64 revision = session.revision();
    ASSERT_TRUE(renameStop(session, "trip"));
    EXPECT_EQ(session.undoStack()->undoText(), "Rename to trip");
    EXPECT_GT(session.revision(), revision);
    EXPECT_EQ(gateOf(*before, "stop")->name, "boiler stops") << "a snapshot stays as it is";
    session.undoStack()->undo();
    EXPECT_TRUE(*session.project() == *before);
    EXPECT_FALSE(session.isDirty());
    session.undoStack()->redo();
    EXPECT_EQ(gateOf(*session.project(), "stop")->name, "trip");
}

TEST(Session, ARefusedEditIsToldInOneSentence) {
    Session session;
    session.start(smallTree());
    QSignalSpy refused(&session, &Session::refused);
    EXPECT_FALSE(renameStop(session, ""));
    ASSERT_EQ(refused.count(), 1);
    EXPECT_EQ(refused[0][0].toString(), "The text is empty; type what fails, or delete the item.");
    EXPECT_EQ(session.undoStack()->count(), 0);
}

TEST(Session, AnEditThatChangesNothingIsNoStep) {
    Session session;
    session.start(smallTree());
    EXPECT_TRUE(renameStop(session, "boiler stops"));
    EXPECT_EQ(session.undoStack()->count(), 0);
}

TEST(Session, SavesOpensAndKnowsWhatIsUnsaved) {
    QTemporaryDir folder;
    const QString path = folder.filePath("plant.cutwater");
    Session session;
    session.start(smallTree());
    ASSERT_TRUE(renameStop(session, "trip"));
    EXPECT_TRUE(session.isDirty());
    ASSERT_TRUE(session.saveTo(path).empty());
    EXPECT_FALSE(session.isDirty());
    EXPECT_EQ(session.path(), path);
    session.undoStack()->undo();
    EXPECT_TRUE(session.isDirty()) << "the file has the later state";
    Session other;
    QSignalSpy opened(&other, &Session::opened);
    other.open(path);
    EXPECT_TRUE(other.isReading());
    ASSERT_TRUE(opened.wait(5000));
    EXPECT_FALSE(other.isReading());
    EXPECT_EQ(gateOf(*other.project(), "stop")->name, "trip");
    EXPECT_FALSE(other.isDirty());
}

TEST(Session, AFailedOpenLeavesTheDocumentAsItWas) {
    QTemporaryDir folder;
    Session session;
    session.start(smallTree(), "before.cutwater");
    renameStop(session, "trip");
    const Snapshot before = session.project();
    const QString bad = folder.filePath("bad.cutwater");
    write(bad, "<cutwater version=\"1.0\"><gates><gate>");
    for (const QString& path : {bad, folder.filePath("none.cutwater"), folder.path()}) {
        QSignalSpy failed(&session, &Session::openFailed);
        session.open(path);
        ASSERT_TRUE(failed.wait(5000)) << path.toStdString();
        EXPECT_EQ(session.project(), before);
        EXPECT_EQ(session.path(), "before.cutwater");
        EXPECT_TRUE(session.isDirty());
        EXPECT_TRUE(session.undoStack()->canUndo());
    }
}

TEST(Session, ErrorsOfMeaningComeWithTheProject) {
    QTemporaryDir folder;
    Project incomplete = smallTree();
    incomplete.gates[1].inputs.clear();
    Session writer;
    writer.start(incomplete);
    ASSERT_TRUE(writer.saveTo(folder.filePath("p.cutwater")).empty());
    Session session;
    QSignalSpy opened(&session, &Session::opened);
    session.open(folder.filePath("p.cutwater"));
    ASSERT_TRUE(opened.wait(5000));
    const auto problems = opened[0][1].value<Problems>();
    EXPECT_TRUE(hasErrors(problems));
    EXPECT_EQ(session.project()->gates.size(), 2u);
}

TEST(Session, ASaveThatFailsLeavesAllAsItWas) {
    Session session;
    session.start(smallTree());
    renameStop(session, "trip");
    EXPECT_FALSE(session.saveTo("/nowhere/at/all.cutwater").empty());
    EXPECT_TRUE(session.isDirty());
    EXPECT_EQ(session.path(), "");
}

TEST(Session, SavesInTheBackgroundInTheOrderOfTheCalls) {
    QTemporaryDir folder;
    const QString path = folder.filePath("plant.cutwater");
    Session session;
    session.start(smallTree());
    QSignalSpy saved(&session, &Session::saved), saving(&session, &Session::savingChanged);
    for (int i = 0; i < 20; ++i) {
        ASSERT_TRUE(renameStop(session, ("trip " + std::to_string(i)).c_str()));
        session.save(path);
    }
    EXPECT_TRUE(session.isSaving());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !session.isSaving(); }, 10000));
    EXPECT_EQ(saved.count(), 20);
    EXPECT_EQ(saving.count(), 2);
    EXPECT_FALSE(session.isDirty());
    Session other;
    QSignalSpy opened(&other, &Session::opened);
    other.open(path);
    ASSERT_TRUE(opened.wait(5000));
    EXPECT_EQ(gateOf(*other.project(), "stop")->name, "trip 19");
}

TEST(Session, WhatIsEditedWhileItSavesIsUnsaved) {
    QTemporaryDir folder;
    const QString path = folder.filePath("plant.cutwater");
    Session session;
    session.start(smallTree());
    ASSERT_TRUE(renameStop(session, "one"));
    session.save(path);
    ASSERT_TRUE(renameStop(session, "two"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !session.isSaving(); }, 10000));
    EXPECT_TRUE(session.isDirty());
    session.undoStack()->undo(); // back to what is in the file
    EXPECT_FALSE(session.isDirty());
    session.undoStack()->undo();
    EXPECT_TRUE(session.isDirty());
    // Another edit here: what was saved can never be reached again.
    ASSERT_TRUE(renameStop(session, "three"));
    EXPECT_TRUE(session.isDirty());
    // The same while it is being written.
    session.save(path);
    session.undoStack()->undo();
    ASSERT_TRUE(renameStop(session, "four"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !session.isSaving(); }, 10000));
    EXPECT_TRUE(session.isDirty());
}

TEST(Session, AFailedSaveIsToldAndTheNextOneIsDone) {
    QTemporaryDir folder;
    Session session;
    session.start(smallTree());
    renameStop(session, "trip");
    QSignalSpy failed(&session, &Session::saveFailed);
    session.save("/nowhere/at/all.cutwater");
    session.save(folder.filePath("good.cutwater"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !session.isSaving(); }, 10000));
    ASSERT_EQ(failed.count(), 1);
    EXPECT_EQ(failed[0][0].toString(), "/nowhere/at/all.cutwater");
    EXPECT_FALSE(session.isDirty());
    EXPECT_EQ(session.path(), folder.filePath("good.cutwater"));
}

TEST(Session, ACopyHasNoFileAndTheLastOpenCounts) {
    QTemporaryDir folder;
    Session writer;
    writer.start(smallTree());
    ASSERT_TRUE(writer.saveTo(folder.filePath("a.cutwater")).empty());
    Project other = smallTree();
    other.name = "B";
    writer.start(other);
    ASSERT_TRUE(writer.saveTo(folder.filePath("b.cutwater")).empty());
    Session session;
    QSignalSpy opened(&session, &Session::opened);
    session.open(folder.filePath("a.cutwater"));
    session.openCopy(folder.filePath("b.cutwater"));
    ASSERT_TRUE(opened.wait(5000));
    QTest::qWait(100);
    EXPECT_EQ(opened.count(), 1);
    EXPECT_EQ(session.project()->name, "B");
    EXPECT_EQ(session.path(), "");
}

TEST(Session, ALargeFileDoesNotHoldUpTheWindow) {
    QTemporaryDir folder;
    Project large;
    Gate top = smallGate("top", "top", GateKind::orGate, {});
    for (int i = 0; i < 20000; ++i) {
        Event event = smallEvent(("e" + std::to_string(i)).c_str(), "some part of the plant fails");
        top.inputs.push_back({event.id, {}});
        large.events.push_back(std::move(event));
    }
    large.gates = {top};
    TopEvent t;
    t.id = "T1";
    t.node.id = "top";
    large.tops = {t};
    Session writer;
    writer.start(large);
    {
        QElapsedTimer turn, all;
        turn.start();
        all.start();
        writer.save(folder.filePath("large.cutwater"));
        qint64 longestTurn = turn.elapsed();
        while (writer.isSaving() && all.elapsed() < 30000) {
            turn.start();
            QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
            longestTurn = qMax(longestTurn, turn.elapsed());
        }
        EXPECT_FALSE(writer.isDirty());
        EXPECT_LT(longestTurn, 50);
    }
    Session session;
    QSignalSpy opened(&session, &Session::opened);
    session.open(folder.filePath("large.cutwater"));
    // The longest time in which the thread of the window could not answer.
    qint64 longest = 0;
    QElapsedTimer total;
    total.start();
    while (opened.isEmpty() && total.elapsed() < 30000) {
        QElapsedTimer turn;
        turn.start();
        QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
        longest = qMax(longest, turn.elapsed());
    }
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(session.project()->events.size(), 20000u);
    EXPECT_LT(longest, 50 * 3) << "50 ms on a machine that does nothing else";
    RecordProperty("longest_ms", static_cast<int>(longest));
}
