// SPDX-License-Identifier: GPL-3.0-or-later
// Boxes on their way to the outline, and rows on their way into the diagram.
#include "app/editor/outline/clipboard.h"
#include "app/editor/outline/outline_view.h"
#include "tests/app/editor/diagram/stage.h"

#include <QApplication>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QMimeData>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using namespace editor;
using ::testing::ElementsAre;

bool drop(QWidget* viewport, QPoint at, const QMimeData& data, Qt::KeyboardModifiers modifiers) {
    const Qt::DropActions actions = Qt::MoveAction | Qt::CopyAction;
    QDragEnterEvent enter(at, actions, &data, Qt::LeftButton, modifiers);
    QCoreApplication::sendEvent(viewport, &enter);
    if (!enter.isAccepted()) return false;
    QDragMoveEvent move(at, actions, &data, Qt::LeftButton, modifiers);
    QCoreApplication::sendEvent(viewport, &move);
    if (!move.isAccepted()) return false; // the platform sends no drop then
    QDropEvent dropped(at, actions, &data, Qt::LeftButton, modifiers);
    QCoreApplication::sendEvent(viewport, &dropped);
    return dropped.isAccepted();
}

// top: or(a and(x, y), c and(b or(y, z), a), s)
TEST(Outside, ARowOfTheOutlineIsMovedToAGateOfTheDiagram) {
    test::Stage stage(test::smallTree());
    QWidget* const viewport = stage.panel->view().viewport();
    const auto mime = dragMime(stage.session, {{"s", "top", 2}});
    EXPECT_TRUE(drop(viewport, stage.middle(stage.box("a", "top")), *mime, Qt::NoModifier));
    EXPECT_THAT(stage.inputs("a"), ElementsAre("x", "y", "s"));
    EXPECT_THAT(stage.inputs("top"), ElementsAre("a", "c"));
    stage.session.undoStack()->undo();
    EXPECT_THAT(stage.inputs("top"), ElementsAre("a", "c", "s")) << "one step of undo";
}

TEST(Outside, WithControlItIsShared) {
    test::Stage stage(test::smallTree());
    const auto mime = dragMime(stage.session, {{"s", "top", 2}});
    EXPECT_TRUE(drop(stage.panel->view().viewport(), stage.middle(stage.box("a", "top")), *mime,
                     Qt::ControlModifier));
    EXPECT_THAT(stage.inputs("a"), ElementsAre("x", "y", "s"));
    EXPECT_THAT(stage.inputs("top"), ElementsAre("a", "c", "s"));
}

TEST(Outside, WhatCannotBeIsRefusedOnTheWay) {
    test::Stage stage(test::smallTree());
    QWidget* const viewport = stage.panel->view().viewport();
    const auto mime = dragMime(stage.session, {{"c", "top", 1}});
    EXPECT_FALSE(drop(viewport, stage.middle(stage.box("b", "c")), *mime, Qt::NoModifier));
    EXPECT_FALSE(drop(viewport, QPoint(2, 2), *mime, Qt::NoModifier)) << "over nothing";
    EXPECT_EQ(stage.session.undoStack()->count(), 0);
}

TEST(Outside, UsesOfAnotherWindowAreCopiedNotMoved) {
    test::Stage stage(test::smallTree());
    Session other;
    other.start(test::smallTree());
    const auto mime = dragMime(other, {{"s", "top", 2}});
    EXPECT_TRUE(drop(stage.panel->view().viewport(), stage.middle(stage.box("a", "top")), *mime,
                     Qt::NoModifier));
    EXPECT_THAT(stage.inputs("top"), ElementsAre("a", "c", "s"));
    EXPECT_EQ(stage.inputs("a").size(), 3U);
    EXPECT_EQ(other.undoStack()->count(), 0);
}

TEST(Outside, ABoxThatLeavesTheDiagramIsDroppedOnARow) {
    test::Stage stage(test::smallTree());
    std::unique_ptr<QMimeData> carried;
    stage.panel->carry = [&](std::unique_ptr<QMimeData> mime) { carried = std::move(mime); };
    QWidget* const viewport = stage.panel->view().viewport();
    const QPoint from = stage.middle(stage.box("s", "top"));
    QTest::mousePress(viewport, Qt::LeftButton, {}, from);
    const auto move = [&](QPoint to) {
        QMouseEvent event(QEvent::MouseMove, to, viewport->mapToGlobal(to), Qt::NoButton,
                          Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(viewport, &event);
    };
    move(from + QPoint(30, 0));
    EXPECT_TRUE(stage.panel->view().isDragging());
    move(QPoint(-20, 100));
    ASSERT_TRUE(carried);
    EXPECT_FALSE(stage.panel->view().isDragging());

    OutlineView outline(stage.session, stage.selection);
    outline.resize(500, 500);
    outline.show();
    outline.expandAll();
    QModelIndex gate; // a, below the top
    for (int row = 0; row < outline.model()->rowCount(outline.model()->index(0, 0)); ++row) {
        const QModelIndex index = outline.model()->index(row, 0, outline.model()->index(0, 0));
        if (index.data().toString().contains("Both pumps")) gate = index;
    }
    ASSERT_TRUE(gate.isValid());
    EXPECT_TRUE(
        drop(outline.viewport(), outline.visualRect(gate).center(), *carried, Qt::NoModifier));
    EXPECT_THAT(stage.inputs("a"), ElementsAre("x", "y", "s"));
    EXPECT_THAT(stage.inputs("top"), ElementsAre("a", "c"));
}

} // namespace
} // namespace cutwater
