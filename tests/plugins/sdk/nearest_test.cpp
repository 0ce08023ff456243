// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/parameter.h"

#include <gtest/gtest.h>

using cutwater::sdk::nearest;

namespace {
const std::vector<std::string> kCommands = {"check",     "cut-sets",    "list",           "new",
                                            "path-sets", "probability", "single-failures"};
}

TEST(Nearest, FindsTheWordBehindATypingSlip) {
    EXPECT_EQ(nearest("cut-set", kCommands), "cut-sets");
    EXPECT_EQ(nearest("cutsets", kCommands), "cut-sets");
    EXPECT_EQ(nearest("probabilty", kCommands), "probability");
    EXPECT_EQ(nearest("chekc", kCommands), "check"); // two neighbours swapped: one slip
    EXPECT_EQ(nearest("LIST", kCommands), "list");
    EXPECT_EQ(nearest("singel-failure", kCommands), "single-failures");
}

TEST(Nearest, TakesABeginning) {
    EXPECT_EQ(nearest("prob", kCommands), "probability");
    EXPECT_EQ(nearest("single", kCommands), "single-failures");
    EXPECT_EQ(nearest("T1", {"T5", "T1-1"}), "T5"); // equally near: the first
    EXPECT_EQ(nearest("T1", {"T1-1", "T5"}), "T1-1");
}

TEST(Nearest, SaysNothingWhereNothingIsNear) {
    EXPECT_EQ(nearest("importance", kCommands), "");
    EXPECT_EQ(nearest("x", kCommands), "");
    EXPECT_EQ(nearest("x", {"y"}), ""); // a slip that changes all of it
    EXPECT_EQ(nearest("", kCommands), "");
    EXPECT_EQ(nearest("check", {}), "");
}

TEST(Nearest, IsQuickWithVeryLongWords) {
    EXPECT_EQ(nearest(std::string(10'000'000, 'a'), kCommands), "");
}
