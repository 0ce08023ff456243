// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/window/room.h"

#include "app/editor/window/problems_list.h"
#include "models/project/edits/facts.h"

#include <QDir>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QStackedWidget>

using namespace cutwater::test;
using namespace cutwater::editor;
namespace edits = cutwater::project::edits;
namespace document = cutwater::document;

namespace {

class Files : public Room {
protected:
    void change(const char* name = "changed") {
        session().apply([&](const Project& p) { return edits::rename(p, "stop", name); });
    }
    std::string nameIn(const QString& path) {
        const auto loaded = document::load(path.toStdString());
        return loaded ? gateOf(loaded->project, "stop")->name : "unreadable";
    }
    bool written(const Session& of) {
        return QTest::qWaitFor([&] { return !of.isSaving(); }, 10000);
    }
    QTreeWidget& problems() { return *window->findChild<ProblemsList*>(); }
};

} // namespace

TEST_F(Files, OpensChangesSavesAndMarksWhatIsUnsaved) {
    const QString path = open(smallTree());
    EXPECT_TRUE(window->windowTitle().startsWith("plant.cutwater"));
    EXPECT_FALSE(window->isWindowModified());
    change();
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_EQ(nameIn(path), "boiler stops");
    trigger("file.save");
    ASSERT_TRUE(written(session()));
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_EQ(nameIn(path), "changed");
    EXPECT_EQ(window->desk().recent().value(0), path);
}

TEST_F(Files, SaveAsAddsTheSuffixAndIsRemembered) {
    open(smallTree());
    change();
    saveAs = folder.filePath("other");
    trigger("file.save-as");
    ASSERT_TRUE(written(session()));
    EXPECT_EQ(session().path(), folder.filePath("other.cutwater"));
    EXPECT_EQ(nameIn(folder.filePath("other.cutwater")), "changed");
    EXPECT_EQ(nameIn(folder.filePath("plant.cutwater")), "boiler stops");
}

TEST_F(Files, ANewProjectAsksWhereToSave) {
    session().start(smallTree());
    change();
    saveAs.clear(); // no answer
    trigger("file.save");
    EXPECT_TRUE(session().isDirty());
    saveAs = folder.filePath("new.cutwater");
    trigger("file.save");
    ASSERT_TRUE(written(session()));
    EXPECT_EQ(nameIn(saveAs), "changed");
}

TEST_F(Files, WhatWouldBeLostIsAsked) {
    const QString path = open(smallTree());
    change();
    EXPECT_FALSE(window->close());
    EXPECT_EQ(asked, 1);
    window->openFile(path);
    EXPECT_EQ(asked, 2);
    EXPECT_TRUE(session().isDirty()) << "stayed";
    leaving = Leaving::save;
    EXPECT_TRUE(window->close());
    EXPECT_EQ(nameIn(path), "changed");
}

TEST_F(Files, ABrokenFileIsToldWithItsLineAndChangesNothing) {
    open(smallTree());
    const QString bad = folder.filePath("bad.cutwater");
    QFile file(bad);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<cutwater version=\"1.0\">\n  <gates>\n"
               "    <gate id=\"g\" kind=\"sometimes\"/>\n  </gates>\n</cutwater>\n");
    file.close();
    const Snapshot before = session().project();
    QSignalSpy failed(&session(), &Session::openFailed);
    window->openFile(bad);
    ASSERT_TRUE(failed.wait(5000));
    EXPECT_EQ(session().project(), before);
    EXPECT_TRUE(told().startsWith("bad.cutwater, line 4:")) << told().toStdString();
    EXPECT_TRUE(press("Show them"));
    EXPECT_TRUE(problems().isVisible());
    ASSERT_GE(problems().topLevelItemCount(), 1);
    EXPECT_EQ(problems().topLevelItem(0)->text(2), "4");
}

TEST_F(Files, ErrorsOfMeaningAreListedAndLeadToTheirPlace) {
    Project broken = smallTree();
    broken.gates[1].inputs.clear();
    open(broken);
    EXPECT_TRUE(told().contains("1 error")) << told().toStdString();
    EXPECT_TRUE(press("Show them"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return problems().topLevelItemCount() > 0; }, 5000));
    QTreeWidgetItem* item = problems().topLevelItem(0);
    EXPECT_EQ(item->text(0), "Error: gate fuel has no inputs");
    emit problems().itemActivated(item, 0);
    EXPECT_EQ(window->selection().current().node, "fuel");
    // Mended: the list follows.
    session().apply(
        [](const Project& p) { return edits::setEventKind(p, "fuel", EventKind::basic); });
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            for (int i = 0; i < problems().topLevelItemCount(); ++i)
                if (problems().topLevelItem(i)->text(0).startsWith("Error")) return false;
            return true;
        },
        5000));
}

TEST_F(Files, AChangeFromOutsideIsToldAndCanBeRead) {
    const QString path = open(smallTree());
    Project other = smallTree();
    other.gates[0].name = "from outside, longer";
    QTest::qWait(20);
    ASSERT_TRUE(document::save(other, path.toStdString()).empty());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !told().isEmpty(); }, 5000));
    EXPECT_EQ(told(), "plant.cutwater was changed by somebody else.");
    QSignalSpy opened(&session(), &Session::opened);
    EXPECT_TRUE(press("Read it again"));
    ASSERT_TRUE(opened.wait(5000));
    EXPECT_EQ(gateOf(project(), "stop")->name, "from outside, longer");
}

TEST_F(Files, SavingOverAChangeFromOutsideIsAsked) {
    const QString path = open(smallTree());
    change("mine");
    Project other = smallTree();
    other.gates[0].name = "from outside, longer";
    QTest::qWait(20);
    ASSERT_TRUE(document::save(other, path.toStdString()).empty());
    trigger("file.save");
    EXPECT_EQ(nameIn(path), "from outside, longer");
    EXPECT_TRUE(session().isDirty());
    EXPECT_TRUE(press("Save over it"));
    ASSERT_TRUE(written(session()));
    EXPECT_EQ(nameIn(path), "mine");
    EXPECT_FALSE(session().isDirty());
}

TEST_F(Files, ASecondWindowSavesUnderAnotherName) {
    const QString path = open(smallTree());
    MainWindow second(host, nullptr, folder.filePath("copies2"));
    second.show();
    QSignalSpy opened(&second.session(), &Session::opened);
    second.openFile(path);
    ASSERT_TRUE(opened.wait(5000));
    EXPECT_TRUE(second.findChild<MessageBar*>()->sentence().contains("is open in another editor"));
    second.session().apply([](const Project& p) { return edits::rename(p, "stop", "second"); });
    EXPECT_FALSE(second.desk().save());
    EXPECT_EQ(nameIn(path), "boiler stops");
    second.desk().questions.whereToSave = [&](QWidget*, const QString&) {
        return folder.filePath("second.cutwater");
    };
    EXPECT_TRUE(second.desk().saveAs());
    ASSERT_TRUE(written(second.session()));
    EXPECT_EQ(nameIn(folder.filePath("second.cutwater")), "second");
}

TEST_F(Files, AFileDroppedOnTheWindowIsOpened) {
    const QString path = folder.filePath("dropped.cutwater");
    ASSERT_TRUE(document::save(smallTree(), path.toStdString()).empty());
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    QSignalSpy opened(&session(), &Session::opened);
    QDragEnterEvent enter(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &drop);
    ASSERT_TRUE(opened.wait(5000));
    EXPECT_EQ(session().path(), path);
}

TEST_F(Files, WhatACrashLeftIsOfferedAndBroughtBack) {
    // As an ended editor leaves it: copy and facts, and nobody holds the lock.
    const QDir copies(folder.filePath("copies"));
    Project typed = smallTree();
    typed.gates[0].name = "typed before the crash";
    ASSERT_TRUE(document::save(typed, copies.filePath("x.cutwater").toStdString()).empty());
    QFile facts(copies.filePath("x.json"));
    ASSERT_TRUE(facts.open(QIODevice::WriteOnly));
    facts.write(QString("{\"path\": \"%1\"}").arg(folder.filePath("plant.cutwater")).toUtf8());
    facts.close();
    window->begin();
    ASSERT_TRUE(told().contains("There is a copy of plant.cutwater")) << told().toStdString();
    QSignalSpy opened(&session(), &Session::opened);
    EXPECT_TRUE(press("Bring it back"));
    ASSERT_TRUE(opened.wait(5000));
    EXPECT_EQ(gateOf(project(), "stop")->name, "typed before the crash");
    EXPECT_TRUE(session().isDirty());
    EXPECT_EQ(session().path(), folder.filePath("plant.cutwater"));
    EXPECT_FALSE(QFile::exists(copies.filePath("x.cutwater")));
}

TEST_F(Files, EveryTemplateAndTheDemoOpenWithoutErrors) {
    QStringList paths{":/demo/sandpiper-bay.cutwater"};
    for (const auto& [text, path] : FileDesk::templates())
        paths << path;
    for (const QString& path : paths) {
        QSignalSpy opened(&session(), &Session::opened);
        window->desk().startFrom(path);
        ASSERT_TRUE(opened.wait(10000)) << path.toStdString();
        EXPECT_FALSE(hasErrors(opened[0][1].value<Problems>())) << path.toStdString();
        EXPECT_EQ(session().path(), "") << "a copy: the original cannot be overwritten";
        EXPECT_FALSE(project().tops.empty());
    }
}

TEST_F(Files, TheFirstStartShowsTheDemoAndTheSecondHowToBegin) {
    auto* middle = window->findChild<QStackedWidget*>("middle");
    EXPECT_EQ(middle->currentWidget()->objectName(), "welcome");
    QSignalSpy opened(&session(), &Session::opened);
    window->begin();
    ASSERT_TRUE(opened.wait(10000));
    EXPECT_TRUE(told().contains("This is the demo"));
    EXPECT_TRUE(press("Start with an empty page"));
    EXPECT_EQ(middle->currentWidget()->objectName(), "welcome");
    window->begin();
    QTest::qWait(50);
    EXPECT_TRUE(project().tops.empty());
    // From there by typing.
    QTest::mouseClick(window->findChild<QWidget*>("welcomeType"), Qt::LeftButton);
    QTest::keyClicks(QApplication::focusWidget(), "no steam");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(project().tops.size(), 1u);
    EXPECT_NE(middle->currentWidget()->objectName(), "welcome");
}

TEST_F(Files, ClosingWaitsForWhatIsBeingWritten) {
    const QString path = open(smallTree());
    change();
    trigger("file.save");
    EXPECT_TRUE(window->close());
    EXPECT_EQ(nameIn(path), "changed");
    EXPECT_EQ(asked, 0) << "it is saved: there is nothing to ask";
}

TEST_F(Files, ASaveThatFailsIsToldAndTheWindowStays) {
    open(smallTree());
    change();
    saveAs = "/nowhere/at/all.cutwater";
    leaving = Leaving::save;
    session().start(smallTree(), {}, true);
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(session().isDirty());
    EXPECT_TRUE(told().contains("nowhere")) << told().toStdString();
}
