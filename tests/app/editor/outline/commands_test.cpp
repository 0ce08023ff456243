// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/outline/bench.h"

#include "models/project/edits/add.h"

#include <QClipboard>
#include <QLineEdit>
#include <QSignalSpy>

using namespace cutwater::test;
using cutwater::editor::OutlineModel;

namespace {

class Commands : public OutlineBench {};

} // namespace

TEST_F(Commands, EachKindHasAKey) {
    choose({"stop", "fuel"});
    const std::pair<int, GateKind> gates[] = {
        {Qt::Key_O, GateKind::orGate},     {Qt::Key_V, GateKind::vote},
        {Qt::Key_X, GateKind::exactlyOne}, {Qt::Key_P, GateKind::priorityAnd},
        {Qt::Key_I, GateKind::inhibit},    {Qt::Key_N, GateKind::notGate},
        {Qt::Key_A, GateKind::andGate}};
    for (const auto& [code, kind] : gates) {
        key(code);
        EXPECT_EQ(gateOf(project(), "fuel")->kind, kind);
    }
    choose({"stop", "fuel", "pump-a"});
    const std::pair<int, EventKind> events[] = {{Qt::Key_U, EventKind::undeveloped},
                                                {Qt::Key_C, EventKind::conditioning},
                                                {Qt::Key_H, EventKind::house},
                                                {Qt::Key_B, EventKind::basic}};
    for (const auto& [code, kind] : events) {
        key(code);
        EXPECT_EQ(eventOf(project(), "pump-a")->kind, kind);
    }
}

TEST_F(Commands, ADigitIsTheNumberOfVotes) {
    choose({"stop", "fuel"});
    key(Qt::Key_2);
    EXPECT_EQ(gateOf(project(), "fuel")->k, 2);
    EXPECT_EQ(row({"stop", "fuel"}).siblingAtColumn(OutlineModel::kindColumn).data(), "2 of 2");
    key(Qt::Key_5);
    EXPECT_TRUE(refused.contains("has 2 inputs")) << refused.toStdString();
    EXPECT_EQ(gateOf(project(), "fuel")->k, 2);
}

TEST_F(Commands, AHouseEventIsSwitched) {
    choose({"stop", "fuel", "pump-a"});
    key(Qt::Key_H);
    key(Qt::Key_S);
    EXPECT_TRUE(eventOf(project(), "pump-a")->state);
    EXPECT_EQ(session.undoStack()->undoText(), "Set pump A stops to true");
}

TEST_F(Commands, DeleteAndUndoBringTheSubtreeBack) {
    choose({"stop", "fuel"});
    key(Qt::Key_Delete);
    EXPECT_EQ(inputsOf(project(), "stop"), "fan");
    EXPECT_EQ(current(), "fan") << "the next row is chosen";
    EXPECT_EQ(session.undoStack()->undoText(), "Delete no fuel");
    session.undoStack()->undo();
    EXPECT_TRUE(project() == smallTree());
    EXPECT_TRUE(row({"stop", "fuel", "pump-b"}).isValid());
}

TEST_F(Commands, AltUpAndDownReorder) {
    choose({"stop", "fan"});
    key(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(inputsOf(project(), "stop"), "fan fuel");
    EXPECT_EQ(current(), "fan");
    key(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel fan");
    key(Qt::Key_Down, Qt::AltModifier);
    EXPECT_TRUE(refused.contains("last one already")) << refused.toStdString();
}

TEST_F(Commands, AGateAboveSeveralRowsAndItsText) {
    view.expand(row({"stop", "fuel"}));
    choose({"stop", "fuel", "pump-a"});
    key(Qt::Key_Down, Qt::ShiftModifier);
    ASSERT_EQ(view.chosen().size(), 2u);
    key(Qt::Key_G, Qt::ControlModifier);
    ASSERT_NE(qobject_cast<QLineEdit*>(QApplication::focusWidget()), nullptr);
    type("no pump");
    key(Qt::Key_Return);
    EXPECT_EQ(inputsOf(project(), "fuel"), "new-gate");
    EXPECT_EQ(inputsOf(project(), "new-gate"), "pump-a pump-b");
    EXPECT_EQ(gateOf(project(), "new-gate")->name, "no pump");
    EXPECT_EQ(gateOf(project(), "new-gate")->kind, GateKind::orGate) << "below an and gate";
    choose({"stop", "fuel", "new-gate"});
    key(Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(inputsOf(project(), "fuel"), "pump-a pump-b");
}

TEST_F(Commands, CopyAndPasteWithinAndToAnotherProject) {
    choose({"stop", "fuel"});
    key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QApplication::clipboard()->text(),
              "no fuel  [and]\n\tpump A stops\n\tpump B stops\n");
    choose({"stop"});
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel fan fuel-2");
    EXPECT_EQ(session.undoStack()->undoText(), "Paste no fuel");

    cutwater::editor::Session otherSession;
    cutwater::editor::Selection otherSelection;
    cutwater::editor::OutlineView other(otherSession, otherSelection);
    other.paste();
    const Project& pasted = *otherSession.project();
    ASSERT_EQ(pasted.tops.size(), 1u);
    EXPECT_EQ(inputsOf(pasted, pasted.tops[0].node.id), "pump-a pump-b");
    EXPECT_FALSE(hasErrors(validate(pasted)));
}

TEST_F(Commands, CutTakesItAway) {
    choose({"stop", "fan"});
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel");
    choose({"stop", "fuel"});
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(inputsOf(project(), "fuel"), "pump-a pump-b fan");
    EXPECT_EQ(eventOf(project(), "fan")->mode, "FAN.stops") << "the same failure mode again";
}

TEST_F(Commands, PasteOfNothingIsSaid) {
    QApplication::clipboard()->clear();
    QSignalSpy spy(&view, &cutwater::editor::OutlineView::sentence);
    choose({"stop"});
    key(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(spy.count(), 1);
}

TEST_F(Commands, ChosenRowsAreNotNamedTwice) {
    view.expandAll();
    view.selectAll();
    const auto uses = view.chosen();
    ASSERT_EQ(uses.size(), 1u) << "all stands below the top event";
    EXPECT_EQ(uses[0].node, "stop");
}

TEST_F(Commands, TheSelectionGoesBothWays) {
    selection.select({"pump-b"});
    EXPECT_EQ(view.currentIndex().data(OutlineModel::nodeRole), "pump-b");
    EXPECT_TRUE(view.isExpanded(row({"stop", "fuel"})));
    choose({"stop", "fan"});
    EXPECT_EQ(selection.current().node, "fan");
    EXPECT_EQ(selection.current().parent, "stop");
    EXPECT_EQ(selection.top(), "T1");
}
