// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/characters.h"
#include "models/document/lines.h"
#include "models/document/numbers.h"

#include <clocale>
#include <cstring>
#include <gtest/gtest.h>
#include <limits>
#include <random>

namespace cutwater::document {

TEST(Numbers, ComeBackBitByBit) {
    std::mt19937_64 random(7);
    for (int i = 0; i < 200'000; ++i) {
        const std::uint64_t bits = random();
        double value;
        std::memcpy(&value, &bits, sizeof value);
        if (!(value - value == 0)) // infinite or NaN
            continue;
        double again = 0;
        ASSERT_EQ(readNumber(numberText(value), again), NumberFault::none) << numberText(value);
        ASSERT_EQ(std::memcmp(&value, &again, sizeof value), 0) << numberText(value);
    }
}

TEST(Numbers, AreWrittenShort) {
    EXPECT_EQ(numberText(0.1), "0.1");
    EXPECT_EQ(numberText(3e-7), "3e-07");
    EXPECT_EQ(numberText(8760), "8760");
    EXPECT_EQ(numberText(-0.5), "-0.5");
}

TEST(Numbers, OnlyPlainOnesAreRead) {
    double value = 0;
    for (const char* good : {"1", "-1", "1.5", ".5", "5.", "1e3", "1E-3", " 2 ", "\n3\t"})
        EXPECT_EQ(readNumber(good, value), NumberFault::none) << good;
    for (const char* bad : {"", " ", "nan", "NaN", "inf", "INF", "-inf", "infinity", "0x10",
                            "0x1p3", "1,5", "1.5x", "1 2", "+1", "--1", "1e", "e5", ".", "one"})
        EXPECT_EQ(readNumber(bad, value), NumberFault::notANumber) << bad;
    for (const char* wide : {"1e999", "-1e999", "1e-999"})
        EXPECT_EQ(readNumber(wide, value), NumberFault::outOfRange) << wide;
    int whole = 0;
    EXPECT_EQ(readWhole("1000000000", whole), NumberFault::none);
    EXPECT_EQ(whole, 1000000000);
    EXPECT_EQ(readWhole("2.5", whole), NumberFault::notANumber);
    EXPECT_EQ(readWhole("1e3", whole), NumberFault::notANumber);
    EXPECT_EQ(readWhole("3000000000", whole), NumberFault::outOfRange);
}

TEST(Numbers, DoNotCareForTheLocale) {
    const std::string before = std::setlocale(LC_ALL, nullptr);
    // Where no locale with a decimal comma is installed, this checks no more than the others.
    if (!std::setlocale(LC_ALL, "de_DE.UTF-8")) std::setlocale(LC_ALL, "fr_FR.UTF-8");
    double value = 0;
    EXPECT_EQ(readNumber("0.5", value), NumberFault::none);
    EXPECT_EQ(value, 0.5);
    EXPECT_EQ(numberText(1234.5), "1234.5");
    std::setlocale(LC_ALL, before.c_str());
}

TEST(Characters, FindsWhatIsNotTextOfOurs) {
    const auto offset = [](std::string_view text) { return findBadCharacter(text).offset; };
    constexpr auto none = std::string_view::npos;
    EXPECT_EQ(offset(""), none);
    EXPECT_EQ(offset("plain text, longer than eight bytes\n\t\r"), none);
    EXPECT_EQ(offset("üöä 🔥 \u2028 \xEF\xBF\xBD"), none);
    EXPECT_EQ(offset(std::string_view("0123456789\0", 11)), 10u);
    EXPECT_EQ(offset("01234567890123\x01"), 14u);
    EXPECT_EQ(offset("abc\x1F"), 3u);
    EXPECT_EQ(offset("abc\xE9t\xE9"), 3u);     // Latin-1
    EXPECT_EQ(offset("\xC0\xAF"), 0u);         // overlong
    EXPECT_EQ(offset("\xE0\x80\xAF"), 0u);     // overlong
    EXPECT_EQ(offset("\xED\xA0\x80"), 0u);     // a surrogate
    EXPECT_EQ(offset("\xF4\x90\x80\x80"), 0u); // beyond U+10FFFF
    EXPECT_EQ(offset("a\xF0\x9F\x94"), 1u);    // cut off
    EXPECT_EQ(offset("\xEF\xBF\xBE"), 0u);     // U+FFFE
    EXPECT_EQ(offset("\xEF\xBF\xBF"), 0u);     // U+FFFF
    EXPECT_EQ(offset("\x80"), 0u);
    // Wherever it stands against the steps of eight.
    for (std::size_t i = 0; i < 24; ++i) {
        std::string text(24, 'x');
        text[i] = '\x02';
        EXPECT_EQ(offset(text), i);
    }
}

TEST(Lines, AreFoundInAnyOrder) {
    std::string text;
    std::vector<int> lines;
    std::mt19937 random(3);
    for (int line = 1; line <= 500; ++line) {
        const std::size_t length = random() % 5 + (line == 250 ? 1000 : 0);
        text.append(length, 'x').push_back('\n');
        lines.insert(lines.end(), length + 1, line);
    }
    LineTable forward(text), chance(text);
    for (std::size_t i = 0; i < text.size(); ++i)
        ASSERT_EQ(forward.lineOf(i), lines[i]);
    for (int i = 0; i < 5000; ++i) {
        const std::size_t at = random() % text.size();
        ASSERT_EQ(chance.lineOf(at), lines[at]);
    }
    EXPECT_EQ(LineTable("").lineOf(0), 1);
}

} // namespace cutwater::document
