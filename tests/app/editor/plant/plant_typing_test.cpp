// SPDX-License-Identifier: GPL-3.0-or-later
// A plant built with the keyboard, moved, copied and deleted; and what the others see of it.
#include "app/editor/plant/plant_page.h"
#include "app/editor/plant/plant_words.h"
#include "tests/models/project/edits/small_plant.h"

#include <QApplication>
#include <QClipboard>
#include <QDropEvent>
#include <QLineEdit>
#include <QMimeData>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
using Kind = PlantModel::Kind;
using testing::ElementsAre;

namespace {

class Typing : public testing::Test {
protected:
    Typing() {
        page.resize(1000, 700);
        page.show();
        QApplication::setActiveWindow(&page);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
        view.setFocus();
        view.ask = [this](const QString& text) {
            question = text;
            return answer;
        };
        QObject::connect(&page, &PlantPage::sentence, &page,
                         [this](const QString& text) { told = text; });
    }
    void type(const char* text, Qt::Key then) {
        QTest::keyClicks(QApplication::focusWidget(), text);
        QTest::keyClick(QApplication::focusWidget(), then);
    }
    void key(Qt::Key what, Qt::KeyboardModifiers with = {}) {
        QTest::keyClick(QApplication::focusWidget(), what, with);
    }
    const Project& project() { return *session.project(); }

    Session session;
    Selection selection;
    PlantPage page{session, selection};
    PlantView& view = page.view();
    bool answer = true;
    QString question, told;
};

} // namespace

TEST_F(Typing, KeysAloneBuildAPlant) {
    key(Qt::Key_Return);
    type("B1 boiler", Qt::Key_Tab);
    type("FP-1 fuel pump", Qt::Key_Return);
    type("FP-2 fuel pump", Qt::Key_Return);
    key(Qt::Key_Backtab); // one level up
    type("PS power supply", Qt::Key_Return);
    key(Qt::Key_Escape);
    EXPECT_THAT(partsOf(project(), ""), ElementsAre("B1", "PS"));
    EXPECT_THAT(partsOf(project(), "B1"), ElementsAre("FP-1", "FP-2"));
    ASSERT_TRUE(view.reveal(Kind::component, "FP-1"));
    view.setFocus();
    key(Qt::Key_M);
    type("stops", Qt::Key_Return);
    type("leaks", Qt::Key_Return);
    key(Qt::Key_Escape);
    ASSERT_EQ(project().modes.size(), 2u);
    EXPECT_EQ(project().modes[1].id, "FP-1.leaks");
    key(Qt::Key_F2);
    type("leaks oil", Qt::Key_Return);
    EXPECT_EQ(project().modes[1].name, "leaks oil");
    EXPECT_EQ(session.undoStack()->undoText(), "Rename failure mode to leaks oil");
    while (session.undoStack()->canUndo())
        session.undoStack()->undo();
    EXPECT_EQ(project(), Project());
    EXPECT_EQ(view.rows().rowCount(), 0);
}

TEST_F(Typing, MovingByKeys) {
    session.start(smallPlant());
    view.reveal(Kind::component, "FP-2");
    view.setFocus();
    key(Qt::Key_Up, Qt::AltModifier);
    EXPECT_THAT(partsOf(project(), "B1"), ElementsAre("FP-2", "FP-1"));
    key(Qt::Key_Up, Qt::AltModifier);
    EXPECT_FALSE(told.isEmpty());
    key(Qt::Key_Down, Qt::AltModifier);
    EXPECT_THAT(partsOf(project(), "B1"), ElementsAre("FP-1", "FP-2"));
    EXPECT_EQ(view.rows().idAt(view.currentRow()), "FP-2") << "it stays chosen";
    key(Qt::Key_Right, Qt::AltModifier);
    EXPECT_THAT(partsOf(project(), "FP-1"), ElementsAre("SEAL", "FP-2"));
    key(Qt::Key_Left, Qt::AltModifier);
    EXPECT_THAT(partsOf(project(), "B1"), ElementsAre("FP-1", "FP-2"));
}

TEST_F(Typing, DeletingSaysWhatIsLost) {
    session.start(smallPlant());
    view.reveal(Kind::component, "FP-1");
    view.setFocus();
    answer = false;
    key(Qt::Key_Delete);
    EXPECT_TRUE(question.contains("any more: 1")) << question.toStdString();
    EXPECT_TRUE(question.contains("supply: 2")) << question.toStdString();
    EXPECT_TRUE(question.contains("Entries of the log")) << question.toStdString();
    EXPECT_EQ(project(), smallPlant()) << "not without a yes";
    answer = true;
    key(Qt::Key_Delete);
    EXPECT_EQ(partOf(project(), "FP-1"), nullptr);
    session.undoStack()->undo();
    EXPECT_EQ(project(), smallPlant());
    question.clear();
    view.reveal(Kind::component, "SEAL");
    key(Qt::Key_Delete);
    EXPECT_TRUE(question.isEmpty()) << "nobody needs it";
    EXPECT_EQ(partOf(project(), "SEAL"), nullptr);
}

TEST_F(Typing, CopiesAndLinesOfText) {
    session.start(smallPlant());
    view.reveal(Kind::component, "B1");
    view.setFocus();
    key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith("B1 boiler\n\tFP-1 fuel pump\n\t\t- "
                                                             "stops"))
        << QApplication::clipboard()->text().toStdString();
    view.setCurrentIndex({});
    view.paste();
    EXPECT_THAT(partsOf(project(), ""), ElementsAre("B1", "PS", "B2"));
    EXPECT_EQ(view.rows().idAt(view.currentRow()), "B2");
    QApplication::clipboard()->setText("air fan\n  motor\n    - burnt\n");
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(partOf(project(), "air-fan")->parent, "B2");
    EXPECT_EQ(project().modes.back().name, "burnt");
    QApplication::clipboard()->clear();
}

TEST_F(Typing, ADropMovesAndWithCtrlCopies) {
    session.start(smallPlant());
    view.expandAll();
    const auto drop = [&](const Id& what, const Id& onto, Qt::KeyboardModifiers with) {
        auto mime = partsToMime(project(), {what});
        view.setDragged({what});
        const QRect rect = view.visualRect(view.rows().find(Kind::component, onto));
        const QPoint at = rect.center();
        const Qt::DropActions actions = Qt::MoveAction | Qt::CopyAction;
        QDragEnterEvent enter(at, actions, mime.get(), Qt::LeftButton, with);
        QApplication::sendEvent(view.viewport(), &enter);
        QDragMoveEvent move(at, actions, mime.get(), Qt::LeftButton, with);
        QApplication::sendEvent(view.viewport(), &move);
        QDropEvent event(at, actions, mime.get(), Qt::LeftButton, with);
        QApplication::sendEvent(view.viewport(), &event);
        view.setDragged({});
    };
    drop("FP-2", "PS", {});
    EXPECT_EQ(partOf(project(), "FP-2")->parent, "PS");
    drop("FP-2", "B1", Qt::ControlModifier);
    ASSERT_NE(partOf(project(), "FP-3"), nullptr);
    EXPECT_EQ(partOf(project(), "FP-3")->parent, "B1");
    drop("B1", "FP-1", {});
    EXPECT_EQ(partOf(project(), "B1")->parent, "") << "not into itself";
    drop("FP-1.stops", "PS", {});
    EXPECT_EQ(modeOf(project(), "FP-1.stops")->component, "PS");
}

TEST_F(Typing, AFailureModeSelectsItsEventsAndIsFollowed) {
    Project project = smallPlant();
    project.gates = {smallGate("top", "no fuel", GateKind::orGate, {"pump"})};
    TopEvent top;
    top.id = "T1";
    top.node.id = "top";
    project.tops = {top};
    session.start(project);
    view.reveal(Kind::mode, "FP-1.stops");
    EXPECT_EQ(selection.current().node, "pump");
    EXPECT_EQ(selection.top(), "T1");
    view.reveal(Kind::component, "PS");
    selection.select({"top"});
    EXPECT_EQ(view.rows().idAt(view.currentRow()), "PS") << "a gate is no part of the plant";
    selection.select({"pump"});
    EXPECT_EQ(view.rows().idAt(view.currentRow()), "FP-1.stops");
}

TEST_F(Typing, AFailureModeGoesIntoATreeOverTheClipboard) {
    const auto mime = partsToMime(smallPlant(), {"FP-1.stops"});
    ASSERT_TRUE(mime);
    EXPECT_TRUE(mime->hasFormat("application/x-cutwater-fragment"));
    EXPECT_TRUE(partsFromMime(*mime)->modesOnly);
}

TEST_F(Typing, TheFieldFindsAndWhatIsLookedForCountsMore) {
    session.start(smallPlant());
    auto& field = page.filterField();
    field.setFocus();
    QTest::keyClicks(&field, "seal");
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(view.rows().filter(), "seal");
    EXPECT_TRUE(view.hasFocus());
    EXPECT_TRUE(view.isExpanded(view.rows().find(Kind::component, "FP-1")));
    EXPECT_TRUE(view.reveal(Kind::component, "PS"));
    EXPECT_TRUE(view.rows().filter().isEmpty());
    EXPECT_TRUE(field.text().isEmpty());
    EXPECT_EQ(view.rows().idAt(view.currentRow()), "PS");
}
