// SPDX-License-Identifier: GPL-3.0-or-later
// The four analyses on the demo plant, from the shell.
#include "tests/app/cli/process.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using testing::HasSubstr;

const std::string kDemo = CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater";

QJsonObject json(const std::vector<std::string>& words) {
    std::vector<std::string> all = words;
    all.insert(all.end(), {"--format", "json"});
    const shell::Ran ran = shell::cutwater(all);
    EXPECT_EQ(ran.code, 0) << ran.err;
    return QJsonDocument::fromJson(QByteArray::fromStdString(ran.out)).object();
}

QJsonObject tableOf(const QJsonObject& result, const QString& id) {
    for (const QJsonValue& table : result["tables"].toArray())
        if (table.toObject()["id"] == id) return table.toObject();
    ADD_FAILURE() << "no table " << id.toStdString();
    return {};
}

QJsonValue cellOf(const QJsonObject& table, int row, const QString& column) {
    const QJsonArray columns = table["columns"].toArray();
    for (int c = 0; c < columns.size(); ++c)
        if (columns[c].toObject()["id"] == column) return table["rows"].toArray()[row].toArray()[c];
    ADD_FAILURE() << "no column " << column.toStdString();
    return {};
}

} // namespace

TEST(PeriodsFromTheShell, OverTime) {
    const QJsonObject result = json({"over-time", kDemo, "--top", "T4-1", "--period", "8760"});
    const QJsonObject figures = tableOf(result, "figures");
    ASSERT_EQ(figures["rows"].toArray().size(), 1);
    const double mean = cellOf(figures, 0, "mean-unavailability").toDouble();
    const double worst = cellOf(figures, 0, "worst-unavailability").toDouble();
    EXPECT_GT(mean, 0);
    EXPECT_GT(worst, mean);
    EXPECT_EQ(result["series"].toArray().size(), 3);
    // All top events of the plant, and within a reasonable time.
    EXPECT_EQ(tableOf(json({"over-time", kDemo}), "figures")["rows"].toArray().size(), 10);
}

TEST(PeriodsFromTheShell, Importance) {
    const QJsonObject result = json({"importance", kDemo, "--top", "T3-1", "--rows", "1000"});
    const QJsonArray rows = tableOf(result, "other-measures")["rows"].toArray();
    ASSERT_GT(rows.size(), 20);
    double shares = 0;
    for (int row = 0; row < rows.size(); ++row)
        shares += cellOf(tableOf(result, "other-measures"), row, "differential").toDouble();
    EXPECT_NEAR(shares, 100, 1e-9);
    EXPECT_GT(tableOf(result, "components")["rows"].toArray().size(), 5);
    EXPECT_EQ(shell::cutwater({"importance", kDemo}).code, 0);
}

TEST(PeriodsFromTheShell, Sensitivity) {
    const QJsonObject result = json({"sensitivity", kDemo, "--top", "T4-1"});
    const QJsonObject swings = tableOf(result, "swings");
    ASSERT_GT(swings["rows"].toArray().size(), 5);
    double before = 1e300;
    for (int row = 0; row < swings["rows"].toArray().size(); ++row) {
        const double width = std::abs(cellOf(swings, row, "top-at-high").toDouble() -
                                      cellOf(swings, row, "top-at-low").toDouble());
        EXPECT_LE(width, before);
        before = width;
    }
    EXPECT_EQ(shell::cutwater({"sensitivity", kDemo}).code, 0);
}

TEST(PeriodsFromTheShell, Sweep) {
    const QJsonObject result = json({"sweep", kDemo, "--top", "T4-1", "--vary", "every-week",
                                     "--from", "1 d", "--to", "4 wk", "--steps", "5"});
    const QJsonObject points = tableOf(result, "points");
    ASSERT_EQ(points["rows"].toArray().size(), 5);
    EXPECT_EQ(cellOf(points, 0, "value").toDouble(), 24);
    EXPECT_EQ(cellOf(points, 4, "value").toDouble(), 672);
    EXPECT_LT(cellOf(points, 0, "figure").toDouble(), cellOf(points, 4, "figure").toDouble());
    const shell::Ran wrong = shell::cutwater({"sweep", kDemo, "--vary", "every-weak"});
    EXPECT_EQ(wrong.code, 1);
    EXPECT_THAT(wrong.err, HasSubstr("try 'every-week'"));
}
