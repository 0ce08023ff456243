// SPDX-License-Identifier: GPL-3.0-or-later
// Drag events as the platform sends them, to the real view.
#include "tests/app/editor/outline/bench.h"

#include "app/editor/outline/clipboard.h"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QMimeData>

using namespace cutwater::test;

namespace {

class Dragging : public OutlineBench {
protected:
    Dragging() { view.expandAll(); }

    enum Where { on, above, behind };
    // Drops `data` on a row. The events carry no source, so what comes is "from elsewhere", unless
    // it is dropped with the view's own function.
    bool drop(QMimeData& data, std::initializer_list<const char*> path, Where where,
              Qt::KeyboardModifiers modifiers) {
        const QRect rect = view.visualRect(row(path));
        QPoint at = rect.center();
        if (where == above) at.setY(rect.top() + 1);
        if (where == behind) at.setY(rect.bottom() - 1);
        const Qt::DropActions actions = Qt::MoveAction | Qt::CopyAction;
        QDragEnterEvent enter(at, actions, &data, Qt::LeftButton, modifiers);
        QApplication::sendEvent(view.viewport(), &enter);
        QDragMoveEvent move(at, actions, &data, Qt::LeftButton, modifiers);
        QApplication::sendEvent(view.viewport(), &move);
        QDropEvent dropped(at, actions, &data, Qt::LeftButton, modifiers);
        QApplication::sendEvent(view.viewport(), &dropped);
        return dropped.isAccepted();
    }
    bool drag(const cutwater::project::edits::Use& use, std::initializer_list<const char*> path,
              Where where, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QMimeData data;
        data.setData(cutwater::editor::kUsesType, cutwater::editor::usesToBytes({use}));
        view.setDragged({use});
        return drop(data, path, where, modifiers);
    }
};

} // namespace

TEST_F(Dragging, OntoAGateMovesBelowIt) {
    EXPECT_TRUE(drag({"fan", "stop", 1}, {"stop", "fuel"}, on));
    EXPECT_EQ(inputsOf(project(), "fuel"), "pump-a pump-b fan");
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel");
    EXPECT_EQ(session.undoStack()->undoText(), "Move fan stops");
}

TEST_F(Dragging, BetweenRowsMovesThere) {
    EXPECT_TRUE(drag({"fan", "stop", 1}, {"stop", "fuel", "pump-b"}, above));
    EXPECT_EQ(inputsOf(project(), "fuel"), "pump-a fan pump-b");
    session.undoStack()->undo();
    EXPECT_TRUE(drag({"pump-a", "fuel", 0}, {"stop", "fuel", "pump-b"}, behind));
    EXPECT_EQ(inputsOf(project(), "fuel"), "pump-b pump-a");
}

TEST_F(Dragging, WithControlItIsShared) {
    EXPECT_TRUE(drag({"fan", "stop", 1}, {"stop", "fuel"}, on, Qt::ControlModifier));
    EXPECT_EQ(inputsOf(project(), "fuel"), "pump-a pump-b fan");
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel fan");
    EXPECT_EQ(
        row({"stop", "fan"}).siblingAtColumn(cutwater::editor::OutlineModel::usesColumn).data(),
        "2 places");
}

TEST_F(Dragging, IntoItselfIsRefusedAndSaid) {
    EXPECT_FALSE(drag({"fuel", "stop", 0}, {"stop", "fuel", "pump-a"}, on));
    EXPECT_TRUE(refused.contains("below itself")) << refused.toStdString();
    EXPECT_TRUE(project() == smallTree());
}

TEST_F(Dragging, LinesFromAnotherProgramBecomeATree) {
    QMimeData data;
    data.setText("valve\n  stuck\n  leaks\n");
    EXPECT_TRUE(drop(data, {"stop"}, on, Qt::NoModifier));
    EXPECT_EQ(inputsOf(project(), "stop"), "fuel fan valve");
    EXPECT_EQ(inputsOf(project(), "valve"), "stuck leaks");
}
