// SPDX-License-Identifier: GPL-3.0-or-later
// Editing in the diagram: drags, keys, the menu, typing over a box. Each can be undone.
#include "tests/app/editor/diagram/stage.h"

#include <QAction>
#include <QApplication>
#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
#include <QMouseEvent>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using namespace editor;
using ::testing::ElementsAre;

QLineEdit* field(test::Stage& stage) {
    return stage.panel->findChild<QLineEdit*>("renameField");
}

const project::Gate* gate(const test::Stage& stage, const std::string& id) {
    for (const project::Gate& one : stage.session.project()->gates)
        if (one.id == id) return &one;
    return nullptr;
}

std::string nameOf(const test::Stage& stage, const std::string& id) {
    for (const project::Event& one : stage.session.project()->events)
        if (one.id == id) return one.name;
    return gate(stage, id) ? gate(stage, id)->name : std::string();
}

TEST(Hand, ADragOnAGateMovesTheNode) {
    test::Stage stage(test::smallTree());
    stage.drag(stage.middle(stage.box("z")), stage.middle(stage.box("a", "top")));
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("a"), ElementsAre("x", "y", "z"));
    EXPECT_THAT(stage.inputs("b"), ElementsAre("y"));
    EXPECT_EQ(stage.selection.current(), (Spot{"z", "a"}));
    stage.session.undoStack()->undo();
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("b"), ElementsAre("y", "z"));
    EXPECT_NE(stage.box("z", "b"), kNoBox);
}

TEST(Hand, ADragWithCtrlShares) {
    test::Stage stage(test::smallTree());
    stage.drag(stage.middle(stage.box("z")), stage.middle(stage.box("a", "top")),
               Qt::ControlModifier);
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("a"), ElementsAre("x", "y", "z"));
    EXPECT_THAT(stage.inputs("b"), ElementsAre("y", "z"));
}

TEST(Hand, WhatIsSelectedIsDraggedTogetherInOneStep) {
    test::Stage stage(test::smallTree());
    stage.click(stage.box("s"));
    stage.click(stage.box("z"), Qt::ControlModifier);
    stage.drag(stage.middle(stage.box("s")), stage.middle(stage.box("a", "top")));
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("a"), ::testing::UnorderedElementsAre("x", "y", "s", "z"));
    EXPECT_THAT(stage.inputs("top"), ElementsAre("a", "c"));
    EXPECT_EQ(stage.selection.spots().size(), 2U);
    stage.session.undoStack()->undo();
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("top"), ElementsAre("a", "c", "s"));
    // Shared together as well; a click without a drag selects the one alone.
    stage.click(stage.box("s"));
    stage.click(stage.box("z"), Qt::ControlModifier);
    stage.drag(stage.middle(stage.box("z")), stage.middle(stage.box("a", "top")),
               Qt::ControlModifier);
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.inputs("a").size(), 4U);
    EXPECT_THAT(stage.inputs("top"), ElementsAre("a", "c", "s"));
    EXPECT_EQ(stage.session.undoStack()->count(), 1);
    stage.click(stage.box("x"));
    stage.click(stage.box("y", "a"), Qt::ControlModifier);
    stage.click(stage.box("x"));
    EXPECT_THAT(stage.selection.spots(), ElementsAre(Spot{"x", "a"}));
}

TEST(Hand, ADragBesideAnEventReorders) {
    test::Stage stage(test::smallTree());
    const QRect x = stage.panel->view().boxOnScreen(stage.box("x"));
    stage.drag(stage.middle(stage.box("y", "a")), QPoint(x.left() + 6, x.center().y()));
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("a"), ElementsAre("y", "x"));
}

TEST(Hand, WhatIsImpossibleIsNotDroppedAndSaysWhy) {
    test::Stage stage(test::smallTree());
    const auto before = stage.session.project();
    stage.drag(stage.middle(stage.box("c")), stage.middle(stage.box("b", "c")));
    stage.drag(stage.middle(stage.box("c")), QPoint(3, 3));
    stage.settle();
    EXPECT_EQ(*stage.session.project(), *before);
    EXPECT_FALSE(stage.panel->view().isDragging());
}

TEST(Hand, EscapeEndsADrag) {
    test::Stage stage(test::smallTree());
    const auto before = stage.session.project();
    QWidget* viewport = stage.panel->view().viewport();
    const QPoint from = stage.middle(stage.box("z")), to = stage.middle(stage.box("a", "top"));
    QTest::mousePress(viewport, Qt::LeftButton, {}, from);
    QMouseEvent move(QEvent::MouseMove, to, viewport->mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                     Qt::NoModifier);
    QCoreApplication::sendEvent(viewport, &move);
    EXPECT_TRUE(stage.panel->view().isDragging());
    EXPECT_EQ(stage.panel->scene().item(stage.box("a", "top"))->state().drop, BoxState::Drop::here);
    stage.key(Qt::Key_Escape);
    EXPECT_FALSE(stage.panel->view().isDragging());
    EXPECT_EQ(stage.panel->scene().item(stage.box("a", "top"))->state().drop, BoxState::Drop::none);
    QTest::mouseRelease(viewport, Qt::LeftButton, {}, to);
    stage.settle();
    EXPECT_EQ(*stage.session.project(), *before);
}

TEST(Hand, ADragOnTheGroundPansAndShiftDrawsABand) {
    test::Stage stage(test::smallTree());
    DiagramView& view = stage.panel->view();
    view.setZoom(1);
    const QPointF before = view.mapToScene(QPoint(0, 0));
    const QRect s = view.boxOnScreen(stage.box("s"));
    const QPoint ground(s.right() + 40, s.center().y());
    stage.drag(ground, ground + QPoint(-60, -30));
    EXPECT_NE(view.mapToScene(QPoint(0, 0)), before);
    const QRect left = view.boxOnScreen(stage.box("x")),
                right = view.boxOnScreen(stage.box("y", "a"));
    QTest::mousePress(view.viewport(), Qt::LeftButton, Qt::ShiftModifier,
                      left.topLeft() - QPoint(6, 6));
    const QPoint end = right.bottomRight() + QPoint(5, 5);
    QMouseEvent move(QEvent::MouseMove, end, view.viewport()->mapToGlobal(end), Qt::NoButton,
                     Qt::LeftButton, Qt::ShiftModifier);
    QCoreApplication::sendEvent(view.viewport(), &move);
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, Qt::ShiftModifier, end);
    EXPECT_THAT(stage.selection.spots(),
                ::testing::UnorderedElementsAre(Spot{"x", "a"}, Spot{"y", "a"}));
}

TEST(Hand, RenamedInPlace) {
    test::Stage stage(test::smallTree());
    stage.click(stage.box("x"));
    stage.key(Qt::Key_F2);
    ASSERT_TRUE(field(stage)->isVisible());
    EXPECT_EQ(field(stage)->text(), "Pump A stops");
    QTest::keyClicks(field(stage), "Pump A seized");
    QTest::keyClick(field(stage), Qt::Key_Return);
    EXPECT_FALSE(field(stage)->isVisible());
    EXPECT_EQ(nameOf(stage, "x"), "Pump A seized");
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.at(stage.box("x")).words.label.name.front(), "Pump A seized");
    stage.key(Qt::Key_F2);
    QTest::keyClicks(field(stage), "nonsense");
    QTest::keyClick(field(stage), Qt::Key_Escape);
    EXPECT_EQ(nameOf(stage, "x"), "Pump A seized");
    // Only one entry: the second was given up.
    EXPECT_EQ(stage.session.undoStack()->count(), 1);
}

TEST(Hand, AddedBelowAndBesideAndTypedAtOnce) {
    test::Stage stage(test::smallTree());
    stage.click(stage.box("a", "top"));
    stage.key(Qt::Key_Insert);
    ASSERT_TRUE(stage.settle());
    ASSERT_TRUE(field(stage)->isVisible());
    QTest::keyClicks(field(stage), "Both coolers blocked");
    QTest::keyClick(field(stage), Qt::Key_Return);
    ASSERT_TRUE(stage.settle());
    ASSERT_EQ(stage.inputs("a").size(), 3U);
    EXPECT_EQ(nameOf(stage, stage.inputs("a").back()), "Both coolers blocked");
    stage.key(Qt::Key_Return);
    ASSERT_TRUE(stage.settle());
    ASSERT_TRUE(field(stage)->isVisible());
    QTest::keyClicks(field(stage), "Fuel too hot");
    QTest::keyClick(field(stage), Qt::Key_Return);
    ASSERT_TRUE(stage.settle());
    ASSERT_EQ(stage.inputs("a").size(), 4U);
    EXPECT_EQ(nameOf(stage, stage.inputs("a").back()), "Fuel too hot");
}

TEST(Hand, AGateIsPutAboveAndDissolved) {
    test::Stage stage(test::smallTree());
    stage.click(stage.box("x"));
    stage.click(stage.box("y", "a"), Qt::ControlModifier);
    stage.key(Qt::Key_G, Qt::ControlModifier);
    ASSERT_TRUE(stage.settle());
    ASSERT_EQ(stage.inputs("a").size(), 1U);
    const std::string made = stage.inputs("a").front();
    EXPECT_THAT(stage.inputs(made), ElementsAre("x", "y"));
    QTest::keyClick(field(stage), Qt::Key_Escape);
    stage.click(stage.box(made));
    stage.key(Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("a"), ElementsAre("x", "y"));
    EXPECT_EQ(gate(stage, made), nullptr);
}

TEST(Hand, KindsByAKeyOrderByAltArrowsAndRemove) {
    test::Stage stage(test::smallTree());
    stage.click(stage.box("a", "top"));
    stage.key(Qt::Key_O);
    EXPECT_EQ(gate(stage, "a")->kind, project::GateKind::orGate);
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.at(stage.box("a", "top")).symbol, drawing::SymbolKind::orGate);
    stage.key(Qt::Key_Right, Qt::AltModifier);
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("top"), ElementsAre("c", "a", "s"));
    stage.click(stage.box("s"));
    stage.key(Qt::Key_Delete);
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("top"), ElementsAre("c", "a"));
    EXPECT_EQ(stage.selection.current().node, "a");
}

// Keys come faster than pictures: each takes the neighbour, never the gate above or another row.
TEST(Hand, DeleteTwiceBeforeThePictureFollows) {
    test::Stage stage(test::smallTree());
    stage.click(stage.box("a", "top"));
    stage.layout.sleepMs = 50;
    stage.key(Qt::Key_Delete);
    EXPECT_THAT(stage.inputs("top"), ElementsAre("c", "s"));
    EXPECT_EQ(stage.selection.current(), (Spot{"c", "top"}));
    stage.key(Qt::Key_Delete);
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("top"), ElementsAre("s"));
}

TEST(Hand, CopiedAndPastedBelowAnotherGate) {
    test::Stage stage(test::smallTree());
    stage.click(stage.box("b", "c"));
    stage.key(Qt::Key_C, Qt::ControlModifier);
    stage.click(stage.box("a", "top"));
    stage.key(Qt::Key_V, Qt::ControlModifier);
    ASSERT_TRUE(stage.settle());
    ASSERT_EQ(stage.inputs("a").size(), 3U);
    const std::string copy = stage.inputs("a").back();
    EXPECT_NE(copy, "b");
    EXPECT_EQ(stage.inputs(copy).size(), 2U);
}

TEST(Hand, TheMenuHasWhatTheBoxCanDo) {
    test::Stage stage(test::smallTree());
    QContextMenuEvent event(
        QContextMenuEvent::Mouse, stage.middle(stage.box("y", "b")),
        stage.panel->view().viewport()->mapToGlobal(stage.middle(stage.box("y", "b"))));
    QCoreApplication::sendEvent(stage.panel->view().viewport(), &event);
    auto* menu = stage.panel->findChild<QMenu*>("diagramMenu");
    ASSERT_NE(menu, nullptr);
    EXPECT_TRUE(menu->isVisible());
    EXPECT_EQ(stage.selection.current(), (Spot{"y", "b"}));
    EXPECT_TRUE(menu->actions().contains(stage.panel->action("jump")));
    EXPECT_TRUE(stage.panel->action("jump")->isEnabled());
    EXPECT_FALSE(stage.panel->action("dissolve")->isEnabled());
    stage.panel->action("jump")->trigger();
    menu->close();
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.selection.current(), (Spot{"y", "a"}));
}

TEST(Hand, EditsWorkOnASheetAsWell) {
    test::Stage stage(test::smallTree());
    stage.panel->setKind(ViewKind::sheets);
    ASSERT_TRUE(stage.settle());
    stage.click(stage.box("x"));
    stage.key(Qt::Key_F2);
    ASSERT_TRUE(field(stage)->isVisible());
    QTest::keyClicks(field(stage), "Pump A gone");
    QTest::keyClick(field(stage), Qt::Key_Return);
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(nameOf(stage, "x"), "Pump A gone");
    stage.drag(stage.middle(stage.box("z")), stage.middle(stage.box("a", "top")));
    ASSERT_TRUE(stage.settle());
    EXPECT_THAT(stage.inputs("a"), ElementsAre("x", "y", "z"));
}

} // namespace
} // namespace cutwater
