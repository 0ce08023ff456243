// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/display_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::results;
using testing::ElementsAre;

TEST(DisplayWidth, CountsColumnsNotBytes) {
    EXPECT_EQ(displayWidth("fuse"), 4u);
    EXPECT_EQ(displayWidth("60 \xC2\xB0"
                           "C"),
              5u);                                           // degree sign: two bytes, one column
    EXPECT_EQ(displayWidth("e\xCC\x81"), 1u);                // e and a combining accent
    EXPECT_EQ(displayWidth("\xE8\x88\xB9\xE8\x88\xB6"), 4u); // two Chinese characters
    EXPECT_EQ(displayWidth("\xFF\xFE"), 2u);                 // no UTF-8: each byte one mark
    EXPECT_EQ(displayWidth(""), 0u);
}

TEST(Printable, LeavesNothingThatSteersATerminal) {
    EXPECT_EQ(printable("a\tb\nc"), "a b c");
    EXPECT_EQ(printable("\x1b[31mred"), "\xEF\xBF\xBD[31mred");
    EXPECT_EQ(printable("\xC2\x9B"
                        "31m"),
              "\xEF\xBF\xBD"
              "31m");                                             // the one-character form of it
    EXPECT_EQ(printable("\xE2\x82"), "\xEF\xBF\xBD\xEF\xBF\xBD"); // torn
    EXPECT_EQ(printable("\xC0\xAF"), "\xEF\xBF\xBD\xEF\xBF\xBD"); // overlong
    EXPECT_EQ(printable("\xED\xA0\x80"), "\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD"); // surrogate
    EXPECT_EQ(printable("gr\xC3\xBC\xC3\x9F"), "gr\xC3\xBC\xC3\x9F");
}

TEST(Wrapped, BreaksAtSpaces) {
    EXPECT_THAT(wrapped("impulse line plugged", 12), ElementsAre("impulse line", "plugged"));
    EXPECT_THAT(wrapped("", 10), ElementsAre(""));
    EXPECT_THAT(wrapped("   ", 10), ElementsAre(""));
    EXPECT_THAT(wrapped("a  b", 10), ElementsAre("a b"));
}

TEST(Wrapped, BreaksLongIdsWhereTheEyeExpectsIt) {
    EXPECT_THAT(wrapped("PT-1.line-plugged", 12), ElementsAre("PT-1.line-", "plugged"));
    EXPECT_THAT(wrapped("abcdefghij", 4), ElementsAre("abcd", "efgh", "ij"));
    EXPECT_THAT(wrapped("abcdefgh", 4), ElementsAre("abcd", "efgh"));
    EXPECT_THAT(wrapped("ab", 0), ElementsAre("a", "b"));
    // A character that is wider than the line must not keep it for ever.
    EXPECT_THAT(wrapped("\xE8\x88\xB9\xE8\x88\xB6", 1),
                ElementsAre("\xE8\x88\xB9", "\xE8\x88\xB6"));
}

TEST(Padded, AlignsByColumns) {
    EXPECT_EQ(padded("\xC2\xB0", 3), "\xC2\xB0  ");
    EXPECT_EQ(padded("7", 3, true), "  7");
    EXPECT_EQ(padded("long", 2), "long");
}
