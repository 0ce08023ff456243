// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/render.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

using namespace cutwater;
using namespace cutwater::results;
using sdk::ColumnType;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

// A reader after RFC 4180, written for the test.
std::vector<std::vector<std::string>> reread(const std::string& csv) {
    std::vector<std::vector<std::string>> rows;
    std::string cell;
    bool quoted = false;
    std::vector<std::string> row;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        const char c = csv[i];
        if (quoted) {
            if (c != '"')
                cell += c;
            else if (i + 1 < csv.size() && csv[i + 1] == '"')
                cell += csv[++i];
            else
                quoted = false;
        } else if (c == '"') {
            quoted = true;
        } else if (c == ',' || c == '\n') {
            row.push_back(std::move(cell));
            cell.clear();
            if (c == '\n') rows.push_back(std::move(row)), row.clear();
        } else {
            cell += c;
        }
    }
    return rows;
}

sdk::Result sample() {
    sdk::Result result;
    sdk::Table table{
        "t",
        "First",
        {{"name", "Name", ColumnType::text, ""}, {"time", "Time", ColumnType::number, "h"}}};
    table.rows = {{std::string("comma, \"quote\"\nand line"), 0.1},
                  {std::string("=cmd|' /C calc'!A0"), -1.5},
                  {std::string("@sum"), std::numeric_limits<double>::quiet_NaN()},
                  {std::string("-1 in words"), sdk::Cell()},
                  {std::string("+49"), 1e-300},
                  {std::string("# no comment"), std::numeric_limits<double>::infinity()}};
    result.tables = {table, {"u", "Second", {{"x", "X", ColumnType::integer, ""}}, {}}};
    result.notes = {{sdk::NoteKind::caution, "Isolate, then look."}};
    return result;
}

} // namespace

TEST(RenderCsv, OneTableCanBeReadAgain) {
    sdk::Result result = sample();
    result.tables.pop_back();
    const auto rows = reread(renderCsv(result, true));
    ASSERT_EQ(rows.size(), 7u);
    EXPECT_THAT(rows[0], ElementsAre("name", "time [h]"));
    EXPECT_THAT(rows[1], ElementsAre("comma, \"quote\"\nand line", "0.1"));
    EXPECT_THAT(rows[3], ElementsAre("'@sum", ""));
    EXPECT_THAT(rows[5], ElementsAre("'+49", "1e-300"));
    EXPECT_THAT(rows[6], ElementsAre("# no comment", ""));
}

TEST(RenderCsv, TextThatASpreadsheetWouldRunIsMadeHarmless) {
    const auto rows = reread(renderCsv(sample(), true));
    EXPECT_THAT(rows[2], ElementsAre("'=cmd|' /C calc'!A0", "-1.5")); // a number stays a number
    EXPECT_THAT(rows[4], ElementsAre("'-1 in words", ""));
}

TEST(RenderCsv, SeveralTablesAreToldApart) {
    const std::string csv = renderCsv(sample(), false);
    EXPECT_THAT(csv, testing::StartsWith("# table t: First\nname,time [h]\n"));
    EXPECT_THAT(csv, HasSubstr("\n\n# table u: Second\nx\n"));
    EXPECT_THAT(csv, HasSubstr("\n\n# table notes: Notes\nkind,sentence\n"
                               "caution,\"Isolate, then look.\"\n"));
}
