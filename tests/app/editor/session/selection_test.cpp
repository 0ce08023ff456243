// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/selection/selection.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

using namespace cutwater::editor;

TEST(Selection, SignalsOnlyWhatChanges) {
    Selection selection;
    QSignalSpy selected(&selection, &Selection::selectionChanged);
    QSignalSpy marked(&selection, &Selection::marksChanged);
    QSignalSpy top(&selection, &Selection::topChanged);
    selection.select({"a", "b"});
    selection.select({"a", "b"});
    EXPECT_EQ(selected.count(), 1);
    EXPECT_TRUE(selection.isSelected("a"));
    EXPECT_EQ(selection.current().node, "b");
    selection.selectSpots({{"a", "g"}, {"b", ""}});
    EXPECT_EQ(selected.count(), 2);
    selection.mark({"a"}, "cut set 1");
    selection.mark({"a"}, "cut set 1");
    selection.clearMarks();
    EXPECT_EQ(marked.count(), 2);
    selection.showTop("T1");
    selection.showTop("T1");
    EXPECT_EQ(top.count(), 1);
}
