// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/outline_model.h"

#include "models/project/edits/add.h"
#include "models/project/edits/arrange.h"
#include "models/project/edits/facts.h"
#include "tests/models/project/edits/small_tree.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QSignalSpy>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
namespace edits = cutwater::project::edits;

namespace {

class Model : public testing::Test {
protected:
    Model() {
        // In its check after a reset Qt's tester would take its own fetching for a nested change;
        // lines() fetches.
        tester.setUseFetchMore(false);
        session.start(smallTree());
    }

    // All that is unfolded, as indented lines of ids; everything where `whole`.
    QString lines(bool whole = true) {
        struct Item {
            QModelIndex index;
            int depth;
        };
        QString text;
        std::vector<Item> left;
        const auto put = [&](const QModelIndex& parent, int depth) {
            if (whole && model.canFetchMore(parent)) model.fetchMore(parent);
            for (int row = model.rowCount(parent) - 1; row >= 0; --row)
                left.push_back({model.index(row, 0, parent), depth});
        };
        put({}, 0);
        while (!left.empty()) {
            const Item item = left.back();
            left.pop_back();
            text +=
                QString(item.depth, '.') + item.index.data(OutlineModel::nodeRole).toString() + ' ';
            put(item.index, item.depth + 1);
        }
        return text.trimmed();
    }

    Session session;
    OutlineModel model{session};
    QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(Model, ShowsTheTree) {
    EXPECT_EQ(lines(), "stop .fuel ..pump-a ..pump-b .fan");
    EXPECT_EQ(model.index(0, OutlineModel::kindColumn).data(), "or, top event");
}

TEST_F(Model, FollowsEveryKindOfEditAndUndo) {
    lines();
    session.apply([](const Project& p) { return edits::addEvent(p, {"fuel", 1}, "filter"); });
    EXPECT_EQ(lines(), "stop .fuel ..pump-a ..filter ..pump-b .fan");
    session.apply([](const Project& p) { return edits::shareNode(p, {"stop", 0}, "pump-b"); });
    EXPECT_EQ(lines(), "stop .pump-b .fuel ..pump-a ..filter ..pump-b .fan");
    session.apply([](const Project& p) {
        return edits::moveUses(p, {{"fan", "stop", 2}}, {"fuel", 0});
    });
    EXPECT_EQ(lines(), "stop .pump-b .fuel ..fan ..pump-a ..filter ..pump-b");
    session.apply([](const Project& p) { return edits::reorder(p, {"fuel", "stop", 1}, -1); });
    EXPECT_EQ(lines(), "stop .fuel ..fan ..pump-a ..filter ..pump-b .pump-b");
    session.apply([](const Project& p) { return edits::addEvent(p, {"filter"}, "wax"); });
    EXPECT_EQ(lines(), "stop .fuel ..fan ..pump-a ..filter ...wax ..pump-b .pump-b");
    session.apply([](const Project& p) { return edits::makeTop(p, "fuel"); });
    session.apply([](const Project& p) { return edits::removeUses(p, {{"stop", "", 0}}); });
    EXPECT_EQ(lines(), "fuel .fan .pump-a .filter ..wax .pump-b");
    while (session.undoStack()->canUndo())
        session.undoStack()->undo();
    EXPECT_EQ(lines(), "stop .fuel ..pump-a ..pump-b .fan");
    while (session.undoStack()->canRedo())
        session.undoStack()->redo();
    EXPECT_EQ(lines(), "fuel .fan .pump-a .filter ..wax .pump-b");
}

TEST_F(Model, RowsThatStayAreTheSameRows) {
    lines();
    const QPersistentModelIndex fan = model.index(1, 0, model.index(0, 0));
    session.apply([](const Project& p) { return edits::addEvent(p, {"stop", 0}, "first"); });
    EXPECT_EQ(fan.row(), 2);
    EXPECT_EQ(fan.data(OutlineModel::nodeRole), "fan");
}

TEST_F(Model, WhatIsInNoTreeIsShownAsThat) {
    Project project = smallTree();
    project.events.push_back(smallEvent("spare", "spare"));
    session.start(project);
    EXPECT_EQ(lines(), "stop .fuel ..pump-a ..pump-b .fan spare");
    EXPECT_EQ(model.index(1, OutlineModel::kindColumn).data(), "basic, in no tree");
    EXPECT_EQ(model.useAt(model.index(1, 0)).row, edits::kLoose);
}

TEST_F(Model, AConditionIsARowOfItsGate) {
    Project project = smallTree();
    project.gates[1].kind = GateKind::inhibit;
    project.gates[1].inputs.pop_back();
    project.gates[1].condition.id = "pump-b";
    session.start(project);
    EXPECT_EQ(lines(), "stop .fuel ..pump-a ..pump-b .fan");
    const QModelIndex fuel = model.index(0, 0, model.index(0, 0));
    EXPECT_EQ(model.useAt(model.index(1, 0, fuel)).row, edits::kCondition);
}

TEST_F(Model, ACircleInTheFileEnds) {
    Project project = smallTree();
    project.gates[1].inputs.push_back({"stop", {}});
    session.start(project);
    EXPECT_EQ(lines(), "stop .fuel ..pump-a ..pump-b ..stop .fan");
}

TEST_F(Model, RevealsASharedNodeBelowTheParentThatIsMeant) {
    session.apply([](const Project& p) { return edits::shareNode(p, {"fuel"}, "fan"); });
    EXPECT_EQ(model.reveal({"fan", "fuel"}).parent().data(OutlineModel::nodeRole), "fuel");
    EXPECT_EQ(model.reveal({"fan", "stop"}).parent().data(OutlineModel::nodeRole), "stop");
    EXPECT_TRUE(model.reveal({"fan"}).isValid());
    EXPECT_FALSE(model.reveal({"gone"}).isValid());
}

TEST_F(Model, AMeshCostsOnlyWhatIsUnfolded) {
    // 60 gates, each with the two of the next level: 2^30 places.
    Project project;
    const int levels = 30;
    for (int level = 0; level < levels; ++level)
        for (const char* side : {"a", "b"}) {
            Gate gate;
            gate.id = side + std::to_string(level);
            if (level + 1 < levels)
                gate.inputs = {{"a" + std::to_string(level + 1), {}},
                               {"b" + std::to_string(level + 1), {}}};
            project.gates.push_back(gate);
        }
    project.tops.resize(1);
    project.tops[0].id = "T1";
    project.tops[0].node.id = "a0";
    session.start(project);
    const QModelIndex deep = model.reveal({"a29"});
    ASSERT_TRUE(deep.isValid());
    int depth = 0;
    for (QModelIndex at = deep.parent(); at.isValid(); at = at.parent())
        ++depth;
    EXPECT_EQ(depth, 29);
}

TEST_F(Model, ADraftIsARowButNoFact) {
    const QModelIndex top = model.index(0, 0);
    lines();
    const QModelIndex draft = model.startDraft(top, 1);
    EXPECT_TRUE(model.isDraft(draft));
    EXPECT_EQ(model.rowCount(top), 3);
    EXPECT_EQ(model.draftPlace(), (edits::Place{"stop", 1}));
    EXPECT_EQ(model.useAt(model.index(2, 0, top)), (edits::Use{"fan", "stop", 1}));
    session.apply([](const Project& p) { return edits::rename(p, "fan", "blower stops"); });
    EXPECT_EQ(model.rowCount(top), 2) << "an edit from elsewhere ends it";
    EXPECT_EQ(session.undoStack()->count(), 1);
}
