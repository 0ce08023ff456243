// SPDX-License-Identifier: GPL-3.0-or-later
// --format, --output, --table and --width of the real program.
#include "tests/app/cli/process.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace shell;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

namespace {

QJsonObject json(const Ran& ran) {
    EXPECT_EQ(ran.code, 0) << ran.err;
    QJsonParseError error;
    const auto document = QJsonDocument::fromJson(QByteArray::fromStdString(ran.out), &error);
    EXPECT_EQ(error.error, QJsonParseError::NoError);
    return document.object();
}

QJsonObject table(const QJsonObject& answer, const QString& id) {
    for (const auto& value : answer["tables"].toArray())
        if (value.toObject()["id"].toString() == id) return value.toObject();
    return {};
}

} // namespace

TEST(Formats, JsonHoldsTheFigures) {
    const QJsonObject answer =
        json(cutwater({"probability", file("pumps.cutwater"), "--format", "json"}));
    const QJsonObject tops = table(answer, "top-events");
    const QJsonArray row = tops["rows"].toArray()[0].toArray();
    EXPECT_EQ(tops["columns"].toArray()[2].toObject()["id"].toString(), "probability");
    EXPECT_NEAR(row[2].toDouble(), 1 - 0.95 * 0.98, 1e-15); // by hand, see plants.h
    EXPECT_EQ(answer["exactness"].toString(), "exact");
}

TEST(Formats, EveryAnswerIsWellFormedJson) {
    for (const char* analysis : {"cut-sets", "path-sets", "probability", "single-failures"})
        EXPECT_FALSE(json(cutwater({analysis, file("pumps.cutwater"), "--format=json"}))["tables"]
                         .toArray()
                         .isEmpty())
            << analysis;
    EXPECT_TRUE(json(cutwater({"list", "--format=json"})).contains("tables"));
    const QJsonObject list = json(cutwater({"list", file("pumps.cutwater"), "--format=json"}));
    EXPECT_EQ(table(list, "top-events")["rows"].toArray()[0].toArray()[0].toString(), "T1");
    const QJsonObject check = json(cutwater({"check", file("pumps.cutwater"), "--format=json"}));
    EXPECT_TRUE(table(check, "problems")["rows"].toArray().isEmpty());
    const Ran broken = cutwater({"check", file("broken.cutwater"), "--format=json"});
    EXPECT_EQ(broken.code, 1);
    EXPECT_TRUE(QJsonDocument::fromJson(QByteArray::fromStdString(broken.out)).isObject());
}

TEST(Formats, OneTableAsCsv) {
    const Ran ran =
        cutwater({"cut-sets", file("pumps.cutwater"), "--format", "csv", "--table", "sets"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, testing::StartsWith("top,rank,order,events,names,probability,share [%]\n"
                                             "T1,1,1,panel,\"control panel \"\"dead\"\", no "
                                             "lamps\",0.05,"));
    EXPECT_THAT(ran.out, HasSubstr("T1,2,2,\"pump-a, pump-b\","));
}

TEST(Formats, APlugInsOddValuesSurvive) {
    const std::vector<std::string> words = {"fixture-good", file("pumps.cutwater"),
                                            "--plugins",    fixtureFolder("fixture-good"),
                                            "--hours",      "2 wk",
                                            "--memory",     "64"};
    auto with = [&](std::vector<std::string> more) {
        more.insert(more.begin(), words.begin(), words.end());
        return cutwater(more);
    };
    const QJsonArray rows = table(json(with({"--format", "json"})), "given")["rows"].toArray();
    EXPECT_EQ(rows[0].toArray()[0].toString(), "=1+1");
    EXPECT_EQ(rows[1].toArray()[1].toDouble(), 336);
    EXPECT_TRUE(rows[2].toArray()[1].isNull());
    EXPECT_EQ(rows[3].toArray()[1].toDouble(), 64);
    const Ran csv = with({"--format", "csv", "--table", "given"});
    EXPECT_EQ(csv.out, "name,value\n'=1+1,3\n\"hours, \"\"quoted\"\"\",336\nnot a number,\n"
                       "memory,64\n");
}

TEST(Formats, AnUnknownTableIsAUsageError) {
    const Ran ran = cutwater({"cut-sets", file("pumps.cutwater"), "--table", "set"});
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err, HasSubstr("did you mean sets?"));
    EXPECT_THAT(ran.out, IsEmpty());
}

// As root a rename would put a plain file in the place of a pipe, and of /dev/null as well.
TEST(Output, GoesIntoAPipeThatStaysOne) {
    const Folder folder;
    const std::string pipe = "'" + folder.path("pipe") + "'";
    const std::string got = folder.path("got");
    const Ran ran = sh("mkfifo " + pipe + "; timeout 20 cat " + pipe + " > '" + got +
                       "' & timeout 20 \"$CUTWATER\" cut-sets '" + file("pumps.cutwater") +
                       "' -o " + pipe + " && wait && test -p " + pipe);
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(bytesOf(got), HasSubstr("pump-a, pump-b"));
}

TEST(Output, IsWrittenWholeOrNotAtAll) {
    const Folder folder;
    const std::string path = folder.write("answer.txt", "old");
    EXPECT_EQ(cutwater({"cut-sets", file("broken.cutwater"), "--output", path}).code, 1);
    EXPECT_EQ(bytesOf(path), "old"); // no answer, no change
    const Ran ran = cutwater({"cut-sets", file("pumps.cutwater"), "-o", path});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, IsEmpty());
    EXPECT_THAT(bytesOf(path), HasSubstr("pump-a, pump-b"));
    const Ran nowhere =
        cutwater({"cut-sets", file("pumps.cutwater"), "-o", folder.path("no/such/x")});
    EXPECT_EQ(nowhere.code, 1);
    EXPECT_THAT(nowhere.err, HasSubstr("cannot be written"));
    EXPECT_EQ(cutwater({"cut-sets", file("pumps.cutwater"), "-o", folder.path("")}).code, 1);
}

TEST(Output, FitsTheTerminal) {
    for (const char* columns : {"40", "80", "132"}) {
        Wish wish;
        wish.environment = {std::string("COLUMNS=") + columns};
        const Ran ran = cutwater({"cut-sets", file("pumps.cutwater")}, wish);
        std::size_t line = 0;
        for (const char c : ran.out) {
            line = c == '\n' ? 0 : line + 1;
            ASSERT_LE(line, std::stoul(columns));
        }
    }
    EXPECT_EQ(cutwater({"cut-sets", file("pumps.cutwater"), "--width", "5"}).code, 2);
}

TEST(Output, AReaderThatLeavesIsNoError) {
    // The answer is far longer than a pipe holds; head leaves after one line.
    const std::string demo =
        std::string(CUTWATER_SOURCE_DIR) + "/share/examples/sandpiper-bay.cutwater";
    const Ran ran = sh("\"$CUTWATER\" cut-sets '" + demo +
                       "' --limit 5000 | head -n 1; echo \"code ${PIPESTATUS[0]}\"");
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, HasSubstr("code 0"));
    EXPECT_THAT(ran.err, IsEmpty());
}

TEST(Output, AFullDiskIsAnError) {
    const Ran ran = sh("\"$CUTWATER\" list > /dev/full");
    EXPECT_EQ(ran.code, 1);
    EXPECT_THAT(ran.err, HasSubstr("disk full"));
}

TEST(Output, IsTheSameFromRunToRun) {
    const std::string demo =
        std::string(CUTWATER_SOURCE_DIR) + "/share/examples/sandpiper-bay.cutwater";
    const Ran first = cutwater({"cut-sets", demo, "--format", "json"});
    const Ran second = cutwater({"cut-sets", demo, "--format", "json"});
    EXPECT_EQ(first.code, 0);
    EXPECT_EQ(first.out, second.out);
}
