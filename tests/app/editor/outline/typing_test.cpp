// SPDX-License-Identifier: GPL-3.0-or-later
// Typing alone builds a tree.
#include "tests/app/editor/outline/bench.h"

#include <QAbstractItemView>
#include <QCompleter>

using namespace cutwater::test;
using cutwater::editor::NodeEdit;

namespace {

class Typing : public OutlineBench {};

class TypingFromNothing : public OutlineBench {
protected:
    TypingFromNothing() : OutlineBench(Project()) {}
};

NodeEdit* edit() {
    return qobject_cast<NodeEdit*>(QApplication::focusWidget());
}

} // namespace

TEST_F(TypingFromNothing, ATreeOfThreeLevelsWithoutTheMouse) {
    key(Qt::Key_Return);
    type("boiler stops");
    key(Qt::Key_Tab);
    type("no fuel");
    key(Qt::Key_Tab);
    type("pump A stops");
    key(Qt::Key_Return);
    type("pump B stops");
    key(Qt::Key_Backtab); // one level up
    type("fan stops");
    key(Qt::Key_Return);
    key(Qt::Key_Escape);
    view.setFocus();
    EXPECT_EQ(inputsOf(project(), "boiler-stops"), "no-fuel fan-stops");
    EXPECT_EQ(inputsOf(project(), "no-fuel"), "pump-a-stops pump-b-stops");
    ASSERT_EQ(project().tops.size(), 1u);
    EXPECT_EQ(project().tops[0].name, "boiler stops");
    // The kind by a key: the fuel needs both pumps.
    choose({"boiler-stops", "no-fuel"});
    key(Qt::Key_A);
    EXPECT_EQ(gateOf(project(), "no-fuel")->kind, GateKind::andGate);
    EXPECT_FALSE(hasErrors(validate(project())));
    EXPECT_EQ(session.undoStack()->count(), 6) << "five texts and one kind, each one step";
    while (session.undoStack()->canUndo())
        session.undoStack()->undo();
    EXPECT_TRUE(project() == Project());
    while (session.undoStack()->canRedo())
        session.undoStack()->redo();
    EXPECT_EQ(inputsOf(project(), "no-fuel"), "pump-a-stops pump-b-stops");
}

TEST_F(Typing, EnterAddsBesideAndEscapeLeavesNothing) {
    choose({"stop", "fuel"});
    key(Qt::Key_Return);
    ASSERT_NE(edit(), nullptr);
    type("panel dead");
    key(Qt::Key_Return);
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel panel-dead fan");
    EXPECT_EQ(current(), "panel-dead");
    ASSERT_NE(edit(), nullptr) << "the next one can be typed at once";
    type("half a tho");
    key(Qt::Key_Escape);
    EXPECT_EQ(edit(), nullptr);
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel panel-dead fan");
    EXPECT_EQ(session.undoStack()->count(), 1);
    EXPECT_EQ(session.undoStack()->undoText(), "Add panel dead");
}

TEST_F(Typing, EnterOnAnEmptyLineEnds) {
    choose({"stop", "fan"});
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    EXPECT_EQ(edit(), nullptr);
    EXPECT_EQ(session.undoStack()->count(), 0);
    EXPECT_EQ(current(), "fan");
    EXPECT_TRUE(view.hasFocus());
}

TEST_F(Typing, WhatWasTypedCountsWhenTheFocusGoes) {
    choose({"stop", "fan"});
    key(Qt::Key_Return);
    type("panel dead");
    view.setFocus();
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel fan panel-dead");
}

TEST_F(Typing, AnEventBecomesAGateByTab) {
    choose({"stop", "fuel", "pump-a"});
    key(Qt::Key_Tab);
    type("motor burnt");
    key(Qt::Key_Return);
    key(Qt::Key_Escape);
    EXPECT_EQ(inputsOf(project(), "pump-a"), "motor-burnt");
    EXPECT_EQ(inputsOf(project(), "fuel"), "pump-a pump-b");
}

TEST_F(Typing, AFailureModeCannotHaveInputsAndItIsSaid) {
    choose({"stop", "fan"});
    key(Qt::Key_Tab);
    type("bearing");
    key(Qt::Key_Return);
    EXPECT_TRUE(refused.contains("is failure mode FAN.stops")) << refused.toStdString();
    EXPECT_TRUE(project() == smallTree());
}

TEST_F(Typing, F2ChangesTheText) {
    choose({"stop", "fuel"});
    key(Qt::Key_F2);
    ASSERT_NE(edit(), nullptr);
    EXPECT_EQ(edit()->text(), "no fuel");
    type("fuel lost");
    key(Qt::Key_Return);
    EXPECT_EQ(gateOf(project(), "fuel")->name, "fuel lost");
    EXPECT_EQ(session.undoStack()->undoText(), "Rename to fuel lost");
    EXPECT_EQ(edit(), nullptr);
    key(Qt::Key_F2);
    type("nonsense");
    key(Qt::Key_Escape);
    EXPECT_EQ(gateOf(project(), "fuel")->name, "fuel lost");
}

TEST_F(Typing, TheListOffersWhatIsThereAndTheDownKeyTakesIt) {
    choose({"stop", "fuel", "pump-a"});
    key(Qt::Key_Return);
    type("fan st");
    ASSERT_NE(edit(), nullptr);
    QCompleter* completer = edit()->offered();
    ASSERT_TRUE(completer && completer->popup()->isVisible());
    EXPECT_EQ(completer->completionCount(), 1);
    QTest::keyClick(completer->popup(), Qt::Key_Down);
    QTest::keyClick(completer->popup(), Qt::Key_Return);
    EXPECT_EQ(inputsOf(project(), "fuel"), "pump-a fan pump-b") << "shared, not a second event";
    EXPECT_EQ(project().events.size(), 3u);
    EXPECT_EQ(session.undoStack()->undoText(), "Use fan stops once more");
}

TEST_F(Typing, TheListOffersFailureModesOfThePlant) {
    choose({"stop", "fuel"});
    key(Qt::Key_Return);
    type("not start");
    QCompleter* completer = edit()->offered();
    ASSERT_TRUE(completer->popup()->isVisible());
    QTest::keyClick(completer->popup(), Qt::Key_Down);
    QTest::keyClick(completer->popup(), Qt::Key_Return);
    ASSERT_EQ(project().events.size(), 4u);
    EXPECT_EQ(project().events.back().mode, "FAN.no-start");
    EXPECT_EQ(project().events.back().name, "fan does not start");
}

TEST_F(Typing, EnterWithoutAChoiceMakesANewEventThoughTheListIsOpen) {
    choose({"stop", "fuel"});
    key(Qt::Key_Return);
    type("fan");
    ASSERT_TRUE(edit()->offered()->popup()->isVisible());
    QTest::keyClick(edit()->offered()->popup(), Qt::Key_Return);
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel fan-2 fan");
}

TEST_F(Typing, AnotherTreeBesideATopEvent) {
    choose({"stop"});
    key(Qt::Key_Return);
    type("low water");
    key(Qt::Key_Return);
    key(Qt::Key_Escape);
    ASSERT_EQ(project().tops.size(), 2u);
    EXPECT_EQ(project().tops[1].name, "low water");
}
