// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/grid_model.h"
#include "models/project/edits/rows.h"
#include "tests/app/editor/worksheet/desk.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace cutwater::editor {

namespace {

class Grid : public testing::Test {
protected:
    void show(const project::Project& p) {
        project = p;
        grid.setData(
            std::make_shared<const SheetData>(std::make_shared<const project::Project>(p)));
    }
    QStringList ids() const {
        QStringList all;
        for (int line = 0; line < grid.rowCount(); ++line)
            all.append(grid.isGroup(line) ? "[" + QString::number(line) + "]"
                                          : QString::fromStdString(grid.idAt(line)));
        return all;
    }
    project::Project project;
    GridModel grid;
    QAbstractItemModelTester tester{&grid, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(Grid, FollowsARowThatComesAndGoesWithoutAReset) {
    show(test::smallSheet());
    Arrangement sorted;
    sorted.keys = {{sheetColumn("severity-rating"), true}};
    grid.arrange(sorted);
    const QStringList before = ids();
    QSignalSpy reset(&grid, &QAbstractItemModel::modelReset);
    const QPersistentModelIndex watched = grid.index(grid.lineOf("P-2.leaks"), 3);
    auto more = project::edits::addRow(project, "P-1", "runs dry", "P-1.leaks");
    ASSERT_TRUE(more);
    show(more->project);
    EXPECT_EQ(grid.rowCount(), 9);
    EXPECT_EQ(grid.lineOf("P-1.runs-dry"), grid.lineOf("P-1.leaks") + 1); // behind its neighbour
    EXPECT_EQ(grid.idAt(watched.row()), "P-2.leaks");
    EXPECT_TRUE(grid.mayBeOutOfOrder());
    auto less = project::edits::removeRows(project, {"P-1.runs-dry"});
    ASSERT_TRUE(less);
    show(less->project);
    EXPECT_EQ(ids(), before);
    EXPECT_EQ(reset.count(), 0);
}

// What is typed moves no row: that waits until somebody sorts again.
TEST_F(Grid, KeepsTheOrderUntilItIsAskedFor) {
    show(test::smallSheet());
    Arrangement sorted;
    sorted.keys = {{sheetColumn("severity-rating"), true}};
    sorted.words = "leaks";
    grid.arrange(sorted);
    const QStringList before = ids();
    ASSERT_EQ(before.size(), 4);
    project::Project changed = project;
    changed.modes[2].severityRating = 10;
    changed.modes[2].name = "drips";
    show(changed);
    EXPECT_EQ(ids(), before);
    EXPECT_EQ(grid.index(grid.lineOf("P-2.leaks"), 7).data(Qt::EditRole), "drips");
    grid.arrange(grid.arrangement());
    EXPECT_EQ(ids().size(), 3);
    EXPECT_FALSE(grid.mayBeOutOfOrder());
}

TEST_F(Grid, FoldsGroups) {
    show(test::smallSheet());
    Arrangement wanted;
    wanted.group = GroupBy::location;
    grid.arrange(wanted);
    ASSERT_EQ(grid.rowCount(), 10);
    EXPECT_EQ(grid.index(0, 0).data(GridModel::groupRole), "pump room: 4 rows");
    grid.fold(2, true); // a row of the group folds it as well
    EXPECT_EQ(grid.rowCount(), 6);
    EXPECT_EQ(grid.rowsPassing(), 8u);
    show(test::smallSheet()); // stays folded when the project changes
    EXPECT_EQ(grid.rowCount(), 6);
    grid.foldAll(true);
    EXPECT_EQ(grid.rowCount(), 2);
    grid.fold(1, false);
    EXPECT_EQ(grid.rowCount(), 6);
    EXPECT_EQ(grid.idAt(2), "V-1.leaks");
}

TEST_F(Grid, SaysWhatCannotBeTyped) {
    show(test::smallSheet());
    const int rpn = sheetColumn("rpn"), mode = sheetColumn("mode");
    EXPECT_FALSE(grid.flags(grid.index(0, rpn)) & Qt::ItemIsEditable);
    EXPECT_TRUE(grid.flags(grid.index(0, mode)) & Qt::ItemIsEditable);
    EXPECT_TRUE(grid.index(0, rpn).data(Qt::FontRole).value<QFont>().italic());
    EXPECT_TRUE(
        grid.index(0, rpn).data(Qt::AccessibleTextRole).toString().contains("cannot be typed"));
    EXPECT_TRUE(grid.headerData(rpn, Qt::Horizontal, Qt::ToolTipRole)
                    .toString()
                    .contains("multiplies ranks"));
}

TEST_F(Grid, MarksDaysThatHaveGoneBy) {
    show(test::smallSheet());
    const QModelIndex next = grid.index(4, sheetColumn("next-test"));
    EXPECT_EQ(next.data(), "2026-01-29");
    grid.setToday(QDate(2026, 1, 29));
    EXPECT_FALSE(next.data(GridModel::overdueRole).toBool());
    grid.setToday(QDate(2026, 1, 30));
    EXPECT_TRUE(next.data(GridModel::overdueRole).toBool());
}

// Rows come, go and change in any arrangement; each row that is there is shown at most once.
TEST_F(Grid, RandomProjectsKeepItWhole) {
    std::mt19937 random(11);
    show(test::largeSheet(60));
    for (int round = 0; round < 200; ++round) {
        project::Project next = project;
        for (std::size_t i = random() % 4; i > 0 && next.modes.size() > 1; --i)
            next.modes.erase(next.modes.begin() + std::ptrdiff_t(random() % next.modes.size()));
        for (std::size_t i = random() % 4; i > 0; --i) {
            project::FailureMode mode = next.modes[random() % next.modes.size()];
            mode.id = "N" + std::to_string(round) + "-" + std::to_string(i);
            next.modes.insert(next.modes.begin() + std::ptrdiff_t(random() % next.modes.size()),
                              mode);
        }
        next.modes[random() % next.modes.size()].severity = random() % 2 ? "severe" : "";
        if (random() % 8 == 0) {
            Arrangement wanted;
            wanted.group = static_cast<GroupBy>(random() % 5);
            if (random() % 2)
                wanted.keys = {{static_cast<int>(random() % sheetColumns().size()), true}};
            if (random() % 3 == 0) wanted.words = "severe";
            grid.arrange(wanted);
        }
        if (grid.isGrouped() && random() % 3 == 0)
            grid.fold(static_cast<int>(random() % 5), random() % 2 == 0);
        show(next);
        std::set<std::string> seen;
        for (int line = 0; line < grid.rowCount(); ++line) {
            if (grid.isGroup(line)) continue;
            EXPECT_TRUE(seen.insert(grid.idAt(line)).second);
            EXPECT_EQ(grid.lineOf(grid.idAt(line)), line);
        }
        if (!grid.arrangement().hasFilter()) {
            EXPECT_EQ(grid.rowsPassing(), next.modes.size());
        }
    }
}

} // namespace cutwater::editor
