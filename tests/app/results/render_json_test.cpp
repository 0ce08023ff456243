// SPDX-License-Identifier: GPL-3.0-or-later
// What is written is read again by a parser that is not ours.
#include "app/results/json_text.h"
#include "app/results/render.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gtest/gtest.h>

#include <cstdlib>
#include <limits>

using namespace cutwater;
using namespace cutwater::results;

namespace {

QJsonObject reread(const sdk::Result& result) {
    const std::string text = renderJson(result, {"cut-sets", "0.1.0", "a \"b\".cutwater"});
    QJsonParseError error;
    const auto document = QJsonDocument::fromJson(QByteArray::fromStdString(text), &error);
    EXPECT_EQ(error.error, QJsonParseError::NoError) << error.errorString().toStdString() << text;
    return document.object();
}

sdk::Result everything() {
    sdk::Result result;
    result.title = "Title";
    result.exactness = sdk::Exactness::bounded;
    sdk::Table table{"t",
                     "Table \"one\"",
                     {{"a", "A", sdk::ColumnType::text, ""},
                      {"b", "B", sdk::ColumnType::number, "h"},
                      {"c", "C", sdk::ColumnType::integer, ""}}};
    table.rows.push_back(
        {std::string("line\nbreak \\ \"quote\" \x01 caf\xC3\xA9"), 1e-300, std::int64_t{1} << 40});
    table.rows.push_back({sdk::Cell(), std::numeric_limits<double>::quiet_NaN(), sdk::Cell()});
    table.rows.push_back(
        {std::string("\xFF torn"), -std::numeric_limits<double>::infinity(), std::int64_t{-1}});
    result.tables.push_back(table);
    result.tables.push_back({"empty", "Empty", {}, {}});
    sdk::Series series;
    series.id = "s";
    series.kind = sdk::PlotKind::bar;
    series.x = {1, 2};
    series.y = {0.1, std::numeric_limits<double>::infinity()};
    series.labels = {"one", "two"};
    result.series.push_back(series);
    result.notes.push_back({sdk::NoteKind::caution, "Isolate."});
    result.marks.push_back({"t", 1, {"e1", "e2"}});
    return result;
}

} // namespace

TEST(RenderJson, ComesBackWhole) {
    const QJsonObject json = reread(everything());
    EXPECT_EQ(json["command"].toString(), "cut-sets");
    EXPECT_EQ(json["file"].toString(), "a \"b\".cutwater");
    EXPECT_EQ(json["exactness"].toString(), "bounded");
    const QJsonObject table = json["tables"].toArray()[0].toObject();
    EXPECT_EQ(table["title"].toString(), "Table \"one\"");
    EXPECT_EQ(table["columns"].toArray()[1].toObject()["unit"].toString(), "h");
    const QJsonArray rows = table["rows"].toArray();
    EXPECT_EQ(rows[0].toArray()[0].toString(), QString::fromUtf8("line\nbreak \\ \"quote\" \x01 "
                                                                 "caf\xC3\xA9"));
    EXPECT_EQ(rows[0].toArray()[1].toDouble(), 1e-300);
    EXPECT_EQ(rows[0].toArray()[2].toInteger(), std::int64_t{1} << 40);
    EXPECT_TRUE(rows[1].toArray()[0].isNull());
    EXPECT_TRUE(rows[1].toArray()[1].isNull()); // NaN
    EXPECT_TRUE(rows[2].toArray()[1].isNull()); // infinity
    EXPECT_EQ(rows[2].toArray()[0].toString(), QString::fromUtf8("\xEF\xBF\xBD torn"));
    const QJsonObject series = json["series"].toArray()[0].toObject();
    EXPECT_EQ(series["kind"].toString(), "bar");
    EXPECT_TRUE(series["y"].toArray()[1].isNull());
    EXPECT_EQ(json["notes"].toArray()[0].toObject()["kind"].toString(), "caution");
    EXPECT_EQ(json["marks"].toArray()[0].toObject()["nodes"].toArray().size(), 2);
}

TEST(RenderJson, KeepsItsKeysWhereThereIsNothingToSay) {
    const QJsonObject json = reread({});
    for (const char* key : {"cutwater", "command", "version", "file", "title", "exactness",
                            "tables", "series", "notes", "marks"})
        EXPECT_TRUE(json.contains(QLatin1String(key))) << key;
}

TEST(JsonNumber, KeepsEveryDigit) {
    for (const double value : {0.1, 1.0 / 3, 5e-324, 1.7976931348623157e308, -0.0, 123456789.0}) {
        // strtod, not stod: the smallest number is no error.
        EXPECT_EQ(std::strtod(jsonNumber(value).c_str(), nullptr), value);
    }
}
