// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/clipboard.h"

#include "tests/models/project/edits/small_tree.h"

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;

TEST(Clipboard, LinesComeBackAsTheyWent) {
    const auto data = toMime(smallTree(), {"stop"});
    ASSERT_TRUE(data);
    const auto back = fromLines(data->text());
    ASSERT_TRUE(back);
    EXPECT_EQ(inputsOf(*back, "boiler-stops"), "no-fuel fan-stops");
    EXPECT_EQ(gateOf(*back, "no-fuel")->kind, GateKind::andGate);
}

TEST(Clipboard, TheFragmentIsWholeAndBeforeTheLines) {
    const auto data = toMime(smallTree(), {"stop"});
    const auto back = fromMime(*data);
    ASSERT_TRUE(back);
    EXPECT_EQ(back->modes.size(), 1u) << "lines alone would not know it";
}

TEST(Clipboard, KindsAndVotesInLines) {
    const auto tree = fromLines("top [2 of 3]\n\ta\n\n\tb\n\tc [pressure]\n");
    ASSERT_TRUE(tree);
    EXPECT_EQ(gateOf(*tree, "top")->kind, GateKind::vote);
    EXPECT_EQ(gateOf(*tree, "top")->k, 2);
    EXPECT_EQ(inputsOf(*tree, "top"), "a b c-pressure");
}

TEST(Clipboard, OddIndentationAndNothing) {
    const auto tree = fromLines("    a\n  b\n       c\n     d\ne\n");
    ASSERT_TRUE(tree);
    EXPECT_EQ(tree->tops.size(), 3u);
    EXPECT_EQ(inputsOf(*tree, "b"), "c d");
    EXPECT_FALSE(fromLines(" \n\n"));
    EXPECT_FALSE(toMime(smallTree(), {"gone"}));
    EXPECT_TRUE(usesFromBytes("\x00\x00broken").empty());
}
