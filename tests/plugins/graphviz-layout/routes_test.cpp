// SPDX-License-Identifier: GPL-3.0-or-later
// The lines alone, on rows that are placed by hand.
#include "plugins/graphviz-layout/routes.h"

#include <gtest/gtest.h>

namespace cutwater {
namespace {

using graphviz::Channel;
using graphviz::Layers;
using graphviz::planChannels;

Layers twoRows(std::size_t upper, std::size_t lower, std::vector<graphviz::Segment> segments) {
    Layers layers;
    layers.boxes = upper + lower;
    layers.row.assign(upper, 0);
    layers.row.insert(layers.row.end(), lower, 1);
    layers.width.assign(layers.boxes, 80);
    layers.rows = 2;
    layers.segments = std::move(segments);
    return layers;
}

TEST(Routes, AChildRightBelowIsReachedByAStraightLine) {
    const std::vector<Channel> channels = planChannels(twoRows(1, 1, {{0, 1, 0}}), {40, 40});
    ASSERT_EQ(channels.size(), 1u);
    EXPECT_EQ(channels[0].lane[0], -1);
    EXPECT_EQ(channels[0].port[0], 40);
}

TEST(Routes, ASmallBendIsStraightened) {
    const std::vector<Channel> channels = planChannels(twoRows(1, 1, {{0, 1, 0}}), {40, 42});
    EXPECT_EQ(channels[0].lane[0], -1);
    EXPECT_EQ(channels[0].port[0], 40);
}

TEST(Routes, LinesOfOneParentShareTheirBar) {
    const std::vector<Channel> channels =
        planChannels(twoRows(1, 3, {{0, 1, 0}, {0, 2, 1}, {0, 3, 2}}), {140, 40, 140, 240});
    EXPECT_EQ(channels[0].lanes, 1);
    EXPECT_EQ(channels[0].lane, (std::vector<int>{0, 0, 0}));
}

TEST(Routes, BarsThatWouldLieOnEachOtherGetLanesOfTheirOwn) {
    // 0 at x 100 feeds 2 and 4; 1 at x 200 feeds 3 and 5: the bars overlap between 150 and 250.
    const std::vector<Channel> channels = planChannels(
        twoRows(2, 4, {{0, 2, 0}, {0, 4, 1}, {1, 3, 2}, {1, 5, 3}}), {100, 200, 50, 150, 250, 350});
    EXPECT_EQ(channels[0].lanes, 2);
    EXPECT_EQ(channels[0].lane[0], channels[0].lane[1]);
    EXPECT_NE(channels[0].lane[0], channels[0].lane[2]);
}

TEST(Routes, TwoParentsEnterTheirSharedChildAtTwoPlacesInTheirOrder) {
    const std::vector<Channel> channels =
        planChannels(twoRows(2, 1, {{0, 2, 0}, {1, 2, 1}}), {100, 200, 150});
    EXPECT_LT(channels[0].port[0], channels[0].port[1] - 2);
}

TEST(Routes, AStemAboveAnothersChildEndsBeforeItsLineBegins) {
    // Box 0 stands right above 3, the child of 1: the line down from 0 must turn away first.
    const std::vector<Channel> channels =
        planChannels(twoRows(2, 2, {{0, 2, 0}, {1, 3, 1}}), {200, 300, 100, 200});
    EXPECT_LT(channels[0].lane[0], channels[0].lane[1]);
}

TEST(Routes, TwoBoxesThatSwapTheirPlacesStillGetLinesApart) {
    // 0 above the child of 1 and 1 above the child of 0: no order of lanes helps, so a line moves.
    const std::vector<Channel> channels =
        planChannels(twoRows(2, 2, {{0, 2, 0}, {1, 3, 1}}), {100, 300, 300, 100});
    const bool firstMoved = channels[0].port[0] != 300, secondMoved = channels[0].port[1] != 100;
    EXPECT_TRUE(firstMoved || secondMoved);
    EXPECT_NE(channels[0].lane[0], channels[0].lane[1]);
}

} // namespace
} // namespace cutwater
