// SPDX-License-Identifier: GPL-3.0-or-later
// Boxes below boxes: who is whose input and whose condition, and by what a box is known again.
#include "app/editor/diagram/hang.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using namespace editor;
using ::testing::ElementsAre;

struct Hanging {
    Page page;
    Times times;

    int add(const char* node, std::size_t owner, bool beside = false) {
        PageBox box;
        box.node = node;
        box.owner = owner;
        box.beside = beside;
        const int before = hang(box, page, times);
        page.boxes.push_back(std::move(box));
        return before;
    }
};

TEST(Hang, InputsAndTheConditionBelongToTheirGate) {
    Hanging tree;
    tree.add("inhibit", kNoBox);
    tree.add("leak", 0);
    tree.add("hot", 0, true);
    tree.add("spark", 0);
    EXPECT_THAT(tree.page.boxes[0].inputs, ElementsAre(1, 3));
    EXPECT_EQ(tree.page.boxes[0].condition, 2U);
    EXPECT_EQ(tree.page.boxes[0].parent, "");
    for (const std::size_t b : {1U, 2U, 3U})
        EXPECT_EQ(tree.page.boxes[b].parent, "inhibit");
}

TEST(Hang, ANodeThatStandsTwiceBelowOneGateHasTwoKeys) {
    Hanging tree;
    tree.add("vote", kNoBox);
    tree.add("gate", 0);
    EXPECT_EQ(tree.add("pump", 0), 0);
    EXPECT_EQ(tree.add("pump", 0), 1);
    EXPECT_EQ(tree.add("pump", 1), 0); // below another parent it is another place
    EXPECT_NE(tree.page.boxes[2].key, tree.page.boxes[3].key);
    EXPECT_NE(tree.page.boxes[2].key, tree.page.boxes[4].key);
}

} // namespace
} // namespace cutwater
