// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/display_text.h"
#include "app/results/render.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <sstream>

using namespace cutwater;
using namespace cutwater::results;
using sdk::ColumnType;
using testing::HasSubstr;
using testing::Not;

namespace {

sdk::Result oneTable(std::vector<sdk::Column> columns, std::vector<std::vector<sdk::Cell>> rows) {
    sdk::Result result;
    result.tables.push_back({"t", "Table", std::move(columns), std::move(rows)});
    return result;
}

std::size_t widest(const std::string& text) {
    std::istringstream lines(text);
    std::size_t width = 0;
    for (std::string line; std::getline(lines, line);)
        width = std::max(width, displayWidth(line));
    return width;
}

} // namespace

TEST(RenderText, AlignsTextLeftAndNumbersRight) {
    const std::string text = renderText(
        oneTable({{"a", "Name", ColumnType::text, ""}, {"b", "N", ColumnType::integer, ""}},
                 {{std::string("caf\xC3\xA9"), std::int64_t{7}},
                  {std::string("fuse"), std::int64_t{1234}}}),
        80);
    EXPECT_THAT(text, HasSubstr("Name     N\n----  ----\ncaf\xC3\xA9     7\nfuse  1234\n"));
}

TEST(RenderText, Probabilities) {
    const std::string text = renderText(oneTable({{"p", "P", ColumnType::probability, ""}},
                                                 {{1.23456e-7},
                                                  {0.0},
                                                  {1.0},
                                                  {0.5},
                                                  {1 - 1e-9},
                                                  {sdk::Cell()},
                                                  {std::numeric_limits<double>::infinity()}}),
                                        80);
    for (const char* shown : {"1.235e-07", "5.000e-01", "1-1.000e-09", "beyond all numbers"})
        EXPECT_THAT(text, HasSubstr(shown));
    EXPECT_THAT(text, HasSubstr(" 0\n"));
    EXPECT_THAT(text, HasSubstr(" 1\n"));
}

TEST(RenderText, FitsTheWidthWithLongLists) {
    std::string many;
    for (int i = 0; i < 60; ++i)
        many += "EV-" + std::to_string(i) + ".stuck-open, ";
    const auto result = oneTable({{"top", "Top", ColumnType::reference, ""},
                                  {"events", "Events", ColumnType::reference, ""},
                                  {"p", "Probability", ColumnType::probability, ""}},
                                 {{std::string("T1"), many, 1e-3}});
    for (const std::size_t width : {40u, 60u, 80u, 200u}) {
        const std::string text = renderText(result, width);
        EXPECT_LE(widest(text), width);
        EXPECT_THAT(text, HasSubstr("EV-59."));
    }
}

TEST(RenderText, ManyColumnsBecomeBlocks) {
    std::vector<sdk::Column> columns;
    std::vector<sdk::Cell> row;
    for (int i = 0; i < 8; ++i) {
        columns.push_back({"c", "Column " + std::to_string(i), ColumnType::text, ""});
        row.emplace_back("some longer text number " + std::to_string(i));
    }
    row[3] = sdk::Cell();
    const std::string text = renderText(oneTable(columns, {row}), 80);
    EXPECT_LE(widest(text), 80u);
    EXPECT_THAT(text, HasSubstr("  Column 7  some longer text number 7\n"));
    EXPECT_THAT(text, Not(HasSubstr("Column 3"))); // nothing to say
}

TEST(RenderText, AnEmptyTableSaysSo) {
    EXPECT_THAT(renderText(oneTable({{"a", "A", ColumnType::text, ""}}, {}), 80),
                HasSubstr("(none)"));
}

TEST(RenderText, CautionsAreLastAndBoundedIsSaid) {
    sdk::Result result;
    result.title = "T";
    result.notes = {{sdk::NoteKind::caution, "Isolate first."},
                    {sdk::NoteKind::assumption, "Independent."},
                    {sdk::NoteKind::warning, "Sum is large."}};
    result.exactness = sdk::Exactness::bounded;
    const std::string text = renderText(result, 80);
    EXPECT_LT(text.find("Sum is large."), text.find("Independent."));
    EXPECT_LT(text.find("Independent."), text.find("Isolate first."));
    EXPECT_THAT(text, HasSubstr("Not everything here is exact"));
    result.exactness = sdk::Exactness::exact;
    EXPECT_THAT(renderText(result, 80), Not(HasSubstr("Not everything")));
}

TEST(RenderText, ANameCannotSteerTheTerminal) {
    const std::string text = renderText(
        oneTable({{"a", "A", ColumnType::text, ""}}, {{std::string("x\x1b]0;owned\x07y")}}), 80);
    EXPECT_EQ(text.find('\x1b'), std::string::npos);
    EXPECT_EQ(text.find('\x07'), std::string::npos);
}
