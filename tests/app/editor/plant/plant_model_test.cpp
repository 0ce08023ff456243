// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of the plant: they follow the project, the filter, and hold to the rules of item models.
#include "app/editor/plant/plant_model.h"
#include "models/project/edits/plant_copy.h"
#include "tests/models/project/edits/small_plant.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
using Kind = PlantModel::Kind;

namespace {

// "B1 boiler(FP-1 fuel pump(stops,SEAL shaft seal),...)"
QString shown(const PlantModel& model, const QModelIndex& above = {}) {
    QStringList rows;
    for (int row = 0; row < model.rowCount(above); ++row) {
        const QModelIndex index = model.index(row, 0, above);
        const QString below = shown(model, index);
        rows << index.data().toString() + (below.isEmpty() ? "" : "(" + below + ")");
    }
    return rows.join(',');
}

class Rows : public testing::Test {
protected:
    Rows() { session.start(smallPlant()); }
    Session session;
    PlantModel model{session};
    QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(Rows, PartsStandBelowWhatTheyArePartOf) {
    EXPECT_EQ(shown(model), "B1 boiler(FP-1 fuel pump(stops,SEAL shaft seal),FP-2 fuel pump),"
                            "PS power supply");
    const QModelIndex mode = model.find(Kind::mode, "FP-1.stops");
    ASSERT_TRUE(mode.isValid());
    EXPECT_EQ(model.kindAt(mode), Kind::mode);
    EXPECT_EQ(mode.data(Qt::AccessibleTextRole).toString(), "failure mode stops");
    EXPECT_EQ(mode.siblingAtColumn(PlantModel::treesColumn).data().toString(), "in no tree");
}

TEST_F(Rows, TheTreesOfAFailureModeAreThoseItIsReallyIn) {
    Project project = smallPlant();
    project.gates = {smallGate("top", "no fuel", GateKind::orGate, {"mid"}),
                     smallGate("mid", "pump stops", GateKind::orGate, {"pump"})};
    for (const char* id : {"T1", "T2"}) {
        TopEvent top;
        top.id = id;
        top.node.id = "top";
        project.tops.push_back(top);
    }
    session.start(project);
    const QModelIndex mode = model.find(Kind::mode, "FP-1.stops");
    EXPECT_EQ(mode.siblingAtColumn(PlantModel::treesColumn).data().toString(), "T1, T2");
    EXPECT_EQ(model.places().eventsOf("FP-1.stops"), std::vector<Id>{"pump"});
    EXPECT_TRUE(model.places().topsOf("gone").empty());
}

TEST_F(Rows, AFilterKeepsWhatFitsAndWhatIsAbove) {
    model.setFilter("shaft");
    EXPECT_EQ(shown(model), "B1 boiler(FP-1 fuel pump(SEAL shaft seal))");
    EXPECT_EQ(model.found(), 1);
    model.setFilter("stops");
    EXPECT_EQ(shown(model), "B1 boiler(FP-1 fuel pump(stops))");
    model.setFilter("pump fuel");
    EXPECT_EQ(shown(model), "B1 boiler(FP-1 fuel pump(stops),FP-2 fuel pump)");
    EXPECT_EQ(model.found(), 2);
    model.setFilter("nothing of it");
    EXPECT_EQ(model.rowCount(), 0);
    model.setFilter("");
    EXPECT_EQ(model.rowCount(), 2);
}

TEST_F(Rows, AChangeOfTextMakesNoNewRows) {
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    session.apply([](const Project& p) { return edits::setPartWords(p, "PS", "PS2 new"); });
    EXPECT_EQ(reset.count(), 0);
    EXPECT_GT(changed.count(), 0);
    EXPECT_TRUE(shown(model).endsWith("PS2 new"));
    session.undoStack()->undo();
    EXPECT_TRUE(shown(model).endsWith("PS power supply"));
}

TEST_F(Rows, ACircleAndAMissingParentStandAtTheTop) {
    Project project = smallPlant();
    project.components[0].parent = "FP-1"; // B1 below its own part
    project.components[4].parent = "gone";
    session.start(project);
    EXPECT_EQ(shown(model), "PS power supply,B1 boiler(FP-1 fuel pump(stops,SEAL shaft seal),"
                            "FP-2 fuel pump)");
}

TEST_F(Rows, ADeepBreakdownTakesNoRecursion) {
    Project project;
    for (int i = 0; i < 20000; ++i) {
        Component each;
        each.id = "c" + std::to_string(i);
        if (i > 0) each.parent = "c" + std::to_string(i - 1);
        project.components.push_back(each);
    }
    Session other;
    other.start(project);
    PlantModel deep(other);
    EXPECT_TRUE(deep.find(Kind::component, "c19999").isValid());
    deep.setFilter("c19999");
    EXPECT_EQ(deep.found(), 1);
}

TEST_F(Rows, TheDraftGoesWhereItStands) {
    const QModelIndex boiler = model.find(Kind::component, "B1");
    model.startDraft(boiler, 1, Kind::component);
    EXPECT_EQ(model.draftPlace(), (edits::PartPlace{"B1", "FP-2"}));
    const QModelIndex pump = model.find(Kind::component, "FP-1");
    model.startDraft(pump, 0, Kind::mode);
    EXPECT_EQ(model.draftPlace(), (edits::PartPlace{"FP-1", "FP-1.stops"}));
    EXPECT_EQ(model.rowCount(boiler), 2) << "the other draft is gone";
    model.dropDraft();
    EXPECT_EQ(model.rowCount(pump), 2);
}
