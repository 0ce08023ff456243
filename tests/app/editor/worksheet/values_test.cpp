// SPDX-License-Identifier: GPL-3.0-or-later
// The pure parts: tables as HTML, the clipboard, order, plans of a paste, finding.
#include "app/editor/worksheet/cell_clipboard.h"
#include "app/editor/worksheet/find_cells.h"
#include "tests/app/editor/worksheet/desk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace cutwater::editor {

using ::testing::ElementsAre;

namespace {

TextBlock block(std::initializer_list<QStringList> rows) {
    return rows;
}

} // namespace

// As a spreadsheet puts it on the clipboard, with all that stands around a table there.
TEST(TableHtml, ReadsWhatSpreadsheetsWrite) {
    const QString html = "<html><head><style>td { color: red } </style><meta charset=utf-8></head>"
                         "<body><!-- <td>not this</td> --><p>before</p>"
                         "<TABLE border=0><colgroup><col width=64></colgroup>\n"
                         " <tr height=20>\n  <td class=xl65>Pump &amp; valve</td>\n"
                         "  <td>two<br>\n  lines</td>\n </tr>\n"
                         " <tr><td colspan=2 rowspan=\"2\">wide</td><td>c</td></tr>\n"
                         " <tr><td>d &lt;1&gt; &#176;&#xB5;</td></tr>"
                         "<tr><td><b>5</b></td><td></td></tr></TABLE><table><tr><td>no</td></tr>"
                         "</table></body></html>";
    EXPECT_EQ(tableFromHtml(html), block({{"Pump & valve", "two\nlines"},
                                          {"wide", "", "c"},
                                          {"", "", QString("d <1> ") + QChar(0xB0) + QChar(0xB5)},
                                          {"5", ""}}));
    EXPECT_TRUE(tableFromHtml("<p>no table at all</p>").empty());
}

TEST(TableHtml, SurvivesWhatIsBroken) {
    for (const char* html :
         {"<table", "<table><tr><td", "<table><td>a", "</td></table>", "<table><tr>",
          "<table><tr><td colspan=99999999 rowspan=-3>x", "<!-- <table>", "<style>"})
        EXPECT_LE(tableFromHtml(html).size(), 2u) << html;
    QString deep = "<table>";
    for (int i = 0; i < 20000; ++i)
        deep += "<tr><td><table>";
    EXPECT_LE(tableFromHtml(deep).size(), 20001u);
}

// Any texts there and back again, by each of the ways that keep all of it.
TEST(CellClipboard, BringsBackWhatWasCopied) {
    std::mt19937 random(3);
    const QStringList pieces = {"a", " ", "=1+1", "\"",    "\t", "\n", ",",
                                ";", "'", "<b>",  "&amp;", "-",  "@"};
    for (int round = 0; round < 300; ++round) {
        TextBlock cells;
        const std::size_t rows = random() % 4 + 1, columns = random() % 4 + 1;
        for (std::size_t row = 0; row < rows; ++row) {
            QStringList line;
            for (std::size_t column = 0; column < columns; ++column) {
                QString text;
                for (std::size_t i = random() % 5; i > 0; --i)
                    text += pieces[static_cast<qsizetype>(random() % 13)];
                line.append(text);
            }
            cells.push_back(line);
        }
        const std::unique_ptr<QMimeData> data(cellsToMime(cells, std::vector<bool>(columns, true)));
        EXPECT_EQ(cellsFromMime(*data), cells);
        if (rows * columns == 1) continue; // one cell alone is no table
        QMimeData csv, tsv;
        csv.setData("text/csv", data->data("text/csv"));
        EXPECT_EQ(cellsFromMime(csv), cells);
        tsv.setText(data->text());
        if (columns > 1) {
            EXPECT_EQ(cellsFromMime(tsv), cells) << data->text().toStdString();
        }
    }
}

TEST(CellClipboard, LetsNoSpreadsheetRunAText) {
    const std::unique_ptr<QMimeData> data(cellsToMime({{"=1+1", "-5"}}, {true, false}));
    EXPECT_EQ(data->text(), "'=1+1\t-5");
    EXPECT_TRUE(data->html().contains("<td>'=1+1</td><td>-5</td>"));
    EXPECT_EQ(QString(data->data("text/csv")), "'=1+1,-5\n");
    QMimeData html;
    html.setHtml(data->html());
    EXPECT_EQ(cellsFromMime(html), block({{"=1+1", "-5"}}));
}

TEST(CellClipboard, TakesTextAsItStandsWhereItIsNoTable) {
    QMimeData data;
    data.setText("\"Start\" lamp\tx\ny\tz"); // quotation marks that are none of a table
    EXPECT_EQ(cellsFromMime(data), block({{"\"Start\" lamp", "x"}, {"y", "z"}}));
    data.setText("one, two; three");
    EXPECT_EQ(cellsFromMime(data), block({{"one, two; three"}}));
    EXPECT_EQ(cellsFromMime(data, true), block({{"one", " two; three"}}));
    data.setText("\"two\nlines\"\tb\r\n\r\nc\td\r\n");
    EXPECT_EQ(cellsFromMime(data), block({{"two\nlines", "b"}, {""}, {"c", "d"}}));
    data.setText("");
    EXPECT_TRUE(cellsFromMime(data).empty());
}

TEST(Arrange, SortsNumbersAsNumbersAndTagsAsPeopleDo) {
    project::Project p = test::smallSheet();
    const auto ids = [&](const Arrangement& wanted) {
        const SheetData data(std::make_shared<const project::Project>(p));
        QStringList all;
        for (const std::size_t row : arranged(data, {}, wanted))
            all.append(QString::fromStdString(data.id(row)));
        return all;
    };
    Arrangement wanted;
    wanted.keys = {{sheetColumn("severity-rating"), false}};
    EXPECT_EQ(ids(wanted).mid(0, 4),
              (QStringList{"P-2.leaks", "P-1.leaks", "P-1.sticks", "P-2.sticks"}));
    wanted.keys = {{sheetColumn("severity-rating"), true}}; // what is empty is last either way
    EXPECT_EQ(ids(wanted).mid(0, 4),
              (QStringList{"P-1.sticks", "P-1.leaks", "P-2.leaks", "P-2.sticks"}));
    std::swap(p.modes[4], p.modes[6]); // V-10 before V-1
    wanted.keys = {{sheetColumn("mode"), false}, {sheetColumn("component"), false}};
    EXPECT_EQ(ids(wanted).mid(0, 4),
              (QStringList{"P-1.leaks", "P-2.leaks", "V-1.leaks", "V-10.leaks"}));
    wanted.keys = {{sheetColumn("severity"), true}}; // by its weight: severe before minor
    EXPECT_TRUE(ids(wanted).front().endsWith("sticks"));
}

TEST(Arrange, FiltersByAllThatIsGiven) {
    const SheetData data(std::make_shared<const project::Project>(test::smallSheet()));
    Arrangement wanted;
    const auto count = [&] { return arranged(data, {}, wanted).size(); };
    wanted.words = "pump LEAKS"; // in different cells, whatever the capitals
    EXPECT_EQ(count(), 2u);
    wanted.words = "sleaks"; // no word reaches over two cells
    EXPECT_EQ(count(), 0u);
    wanted.words.clear();
    wanted.filters[sheetColumn("severity-rating")].least = 9;
    EXPECT_EQ(count(), 2u);
    wanted.filters[sheetColumn("severity-rating")].most = 9;
    EXPECT_EQ(count(), 1u);
    wanted.filters = {{sheetColumn("severity"), {QSet<QString>{"severe"}, {}, {}, {}}}};
    EXPECT_EQ(count(), 4u);
    wanted.filters[sheetColumn("component")].contains = "v-";
    EXPECT_EQ(count(), 2u);
    wanted = {};
    wanted.dormantOnly = true;
    EXPECT_EQ(count(), 1u);
}

TEST(Arrange, GroupsTheWorstSeverityFirst) {
    const SheetData data(std::make_shared<const project::Project>(test::smallSheet()));
    Arrangement wanted;
    wanted.group = GroupBy::severity;
    const auto rows = arranged(data, {}, wanted);
    ASSERT_EQ(rows.size(), 8u);
    EXPECT_EQ(groupOf(data, rows[0], GroupBy::severity), "severe");
    EXPECT_EQ(groupOf(data, rows[4], GroupBy::severity), "minor");
}

TEST(FindCells, WholeOrPartWithOrWithoutCapitals) {
    EXPECT_TRUE(isFound("No Steam", {"steam", false, false}));
    EXPECT_FALSE(isFound("No Steam", {"steam", false, true}));
    EXPECT_FALSE(isFound("No Steam", {"steam", true, false}));
    EXPECT_TRUE(isFound("STEAM", {"steam", true, false}));
    EXPECT_TRUE(isFound("", {"", true, false})); // empty cells, to be filled
    EXPECT_FALSE(isFound("a", {"", false, false}));
    EXPECT_EQ(placesIn("a A a", {"a", false, false}), 3);
    EXPECT_EQ(replaced("a A a", {"a", false, true}, "b"), "b A b");
    EXPECT_EQ(replaced("a A a", {"b", false, true}, "c"), "a A a");
}

TEST(SheetColumns, KnowEveryColumnOfTheWorksheet) {
    for (const worksheet::Column& column : worksheet::columns()) {
        const int place = sheetColumn(column.id);
        ASSERT_GE(place, 0) << column.id << " is not on the page";
        const SheetColumn& shown = sheetColumns()[static_cast<std::size_t>(place)];
        EXPECT_EQ(shown.isTyped(), column.write || column.id == "component") << column.id;
        EXPECT_FALSE(shown.tip.isEmpty());
        EXPECT_GT(shown.width, 0);
    }
    for (const ColumnSet& set : columnSets())
        EXPECT_FALSE(set.columns.empty()) << set.id.toStdString();
    EXPECT_EQ(columnSet("everything")->columns.size(), sheetColumns().size());
}

} // namespace cutwater::editor
