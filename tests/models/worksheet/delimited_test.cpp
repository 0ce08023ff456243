// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/delimited.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace cutwater::worksheet {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

namespace {

std::vector<std::vector<std::string>> cells(std::string_view text, char separator = 0) {
    std::vector<std::vector<std::string>> all;
    const auto records = readDelimited(text, separator);
    EXPECT_TRUE(records);
    if (records)
        for (const Record& record : *records)
            all.push_back(record.cells);
    return all;
}

} // namespace

TEST(Delimited, ReadsWhatSpreadsheetsWrite) {
    EXPECT_THAT(cells("a,b\r\n\"1,5\",\"say \"\"no\"\"\"\r\n"),
                ElementsAre(ElementsAre("a", "b"), ElementsAre("1,5", "say \"no\"")));
    EXPECT_THAT(cells("\xEF\xBB\xBF"
                      "a;b\n1;2"),
                ElementsAre(ElementsAre("a", "b"), ElementsAre("1", "2")));
    EXPECT_THAT(cells("a\tb\n\n1\t\n"), ElementsAre(ElementsAre("a", "b"), ElementsAre("1", "")));
    EXPECT_THAT(cells("a,b\n\"two\nlines\",x\n"),
                ElementsAre(ElementsAre("a", "b"), ElementsAre("two\nlines", "x")));
    EXPECT_THAT(cells(""), ElementsAre());
}

TEST(Delimited, KnowsTheLineOfEachRecord) {
    const auto records = readDelimited("h\n\"a\nb\"\n\nc\n");
    ASSERT_TRUE(records);
    ASSERT_EQ(records->size(), 3u);
    EXPECT_EQ((*records)[1].line, 2);
    EXPECT_EQ((*records)[2].line, 5);
}

TEST(Delimited, SaysWhatIsWrongAndWhere) {
    const auto problem = [](std::string_view text) {
        const auto records = readDelimited(text);
        EXPECT_FALSE(records) << text;
        return records ? project::Problem{} : records.problems().front();
    };
    EXPECT_THAT(problem("a,b\n\"1,2\n").what, HasSubstr("not closed"));
    EXPECT_EQ(problem("a,b\n\"1,2\n").line, 2);
    EXPECT_THAT(problem("a,b\n\"1\"x,2\n").what, HasSubstr("behind a closing"));
    EXPECT_THAT(problem("a,b\nx,\xE4\n").what, HasSubstr("not UTF-8"));
    EXPECT_EQ(problem("a,b\nx,\xE4\n").line, 2);
}

TEST(Delimited, NoCellIsRun) {
    for (const char* text : {"=1+1", "+1", "-1", "@sum", "\tx", "\nx", "'=1", "''=1"}) {
        EXPECT_EQ(harmless(text).front(), '\'') << text;
        EXPECT_EQ(asTyped(harmless(text)), text);
    }
    for (const char* text : {"", "a=1", "it's", "'quoted'", "1-2"}) {
        EXPECT_EQ(harmless(text), text);
        EXPECT_EQ(asTyped(text), text);
    }
}

TEST(Delimited, RandomTablesComeBack) {
    std::mt19937 random(3);
    const char* const pieces[] = {"a", "\"", ",", ";", "\t", "\n", "\r\n", " ", "=", "'", "ü", "-"};
    for (int round = 0; round < 300; ++round) {
        std::vector<std::vector<std::string>> table;
        const std::size_t width = 1 + random() % 4;
        for (std::size_t row = 1 + random() % 4; row > 0; --row) {
            auto& record = table.emplace_back();
            for (std::size_t i = 0; i < width; ++i) {
                std::string text;
                for (std::size_t k = random() % 5; k > 0; --k)
                    text += pieces[random() % std::size(pieces)];
                record.push_back(text);
            }
        }
        for (const char separator : {',', ';', '\t'}) {
            std::string text;
            for (const auto& record : table) {
                std::vector<std::string> safe;
                for (const std::string& cell : record)
                    safe.push_back(harmless(cell));
                text += writeRecord(safe, separator);
            }
            auto again = cells(text, separator);
            for (auto& record : again)
                for (std::string& cell : record)
                    cell = asTyped(cell);
            // A line of one empty cell is an empty line, and left out.
            std::erase_if(
                table, [](const auto& record) { return record.size() == 1 && record[0].empty(); });
            EXPECT_EQ(again, table) << text;
        }
    }
}

} // namespace cutwater::worksheet
