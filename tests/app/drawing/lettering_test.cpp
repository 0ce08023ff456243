// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/lettering.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using drawing::wrap;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

// Every byte of a character's first one is 1 wide, so that the expected lines can be counted.
double counted(const std::string& words, double, bool) {
    double width = 0;
    for (const char c : words)
        if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) ++width;
    return width;
}

std::vector<std::string> wrapped(const std::string& text, double width, std::size_t most = 9) {
    return wrap(text, width, most, 1, false, counted);
}

TEST(Wrap, BreaksAtSpacesAndFoldsThem) {
    EXPECT_THAT(wrapped("no  flame\nproven at start", 9),
                ElementsAre("no flame", "proven at", "start"));
}

TEST(Wrap, BreaksAfterHyphenSlashAndDot) {
    EXPECT_THAT(wrapped("G-no-flame", 6), ElementsAre("G-no-", "flame"));
    EXPECT_THAT(wrapped("FV-1.left/closed", 10), ElementsAre("FV-1.left/", "closed"));
}

TEST(Wrap, BreaksAWordThatIsTooLongBetweenCharacters) {
    EXPECT_THAT(wrapped("abcdefgh", 3), ElementsAre("abc", "def", "gh"));
    EXPECT_THAT(wrapped("\xC3\xA4\xC3\xB6\xC3\xBC", 2),
                ElementsAre("\xC3\xA4\xC3\xB6", "\xC3\xBC"));
}

TEST(Wrap, EndsWithAnEllipsisWhereLinesAreMissing) {
    EXPECT_THAT(wrapped("one two three four", 5, 2), ElementsAre("one", "two\xE2\x80\xA6"));
    EXPECT_THAT(wrapped("\xC3\xA4\xC3\xB6\xC3\xBC\xC3\xA4\xC3\xB6", 3, 1),
                ElementsAre("\xC3\xA4\xC3\xB6\xE2\x80\xA6"));
}

TEST(Wrap, NothingIsNoLine) {
    EXPECT_THAT(wrapped("", 5), IsEmpty());
    EXPECT_THAT(wrapped(" \n ", 5), IsEmpty());
}

TEST(Wrap, ARoomNarrowerThanALetterStillEnds) {
    EXPECT_THAT(wrapped("abc", 0.5), ElementsAre("a", "b", "c"));
}

TEST(Lettering, AFontIsThereAndItsLettersDiffer) {
    const auto lettering = drawing::findLettering();
    ASSERT_TRUE(lettering) << lettering.problems()[0].what;
    const double narrow = lettering->measure("iiiiii", 7, false);
    const double wide = lettering->measure("WWWWWW", 7, false);
    EXPECT_GT(narrow, 0);
    EXPECT_GT(wide, narrow * 1.5); // boxes for missing letters would all be as wide
    EXPECT_NEAR(lettering->measure("WWWWWW", 14, false), 2 * wide, 1e-9);
}

} // namespace
} // namespace cutwater
