// SPDX-License-Identifier: GPL-3.0-or-later
// The analyses of the worksheet on the demo plant.
#include "tests/app/cli/process.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>

namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

const std::string kDemo = CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater";

// Rows of a table of the JSON answer: column -> cell.
struct Table {
    std::vector<std::map<QString, QJsonValue>> rows;
};

std::map<QString, Table> answer(std::vector<std::string> words) {
    words.insert(words.end(), {"--format", "json"});
    const shell::Ran ran = shell::cutwater(words);
    EXPECT_EQ(ran.code, 0) << ran.err;
    std::map<QString, Table> tables;
    const auto root = QJsonDocument::fromJson(QByteArray::fromStdString(ran.out)).object();
    for (const QJsonValue& one : root["tables"].toArray()) {
        const QJsonObject table = one.toObject();
        const QJsonArray columns = table["columns"].toArray();
        for (const QJsonValue& row : table["rows"].toArray()) {
            auto& cells = tables[table["id"].toString()].rows.emplace_back();
            for (int i = 0; i < columns.size(); ++i)
                cells[columns[i].toObject()["id"].toString()] = row.toArray()[i];
        }
    }
    return tables;
}

std::map<QString, QJsonValue> rowWith(const Table& table, const QString& column,
                                      const QString& cell) {
    for (const auto& row : table.rows)
        if (row.at(column).toString() == cell) return row;
    ADD_FAILURE() << "no row with " << cell.toStdString();
    return {};
}

} // namespace

TEST(FmeaFromTheShell, HasARowForEachFailureMode) {
    auto tables = answer({"fmea", kDemo, "--columns", "all"});
    EXPECT_EQ(tables["worksheet"].rows.size(), 234u);
    const auto fouled = rowWith(tables["worksheet"], "id", "ET-1.fouled");
    EXPECT_EQ(fouled.at("rpn").toInt(), 3 * 8 * 3);
    EXPECT_EQ(fouled.at("rpn-after").toInt(), 3 * 5 * 3);
    // 0.00295 a start by the log (18 of 6264 starts), 3132 starts a year.
    EXPECT_NEAR(fouled.at("frequency").toDouble(), 9, 0.5);
    EXPECT_EQ(fouled.at("frequency-index").toInt(), 7);
    EXPECT_EQ(fouled.at("severity-index").toInt(), 1);
    EXPECT_EQ(fouled.at("risk-index").toInt(), 8);
    EXPECT_GE(tables["dormant"].rows.size(), 42u);
    EXPECT_EQ(rowWith(tables["actions"], "id", "FUEL.sooting").at("overdue").toString(), "yes");
    EXPECT_EQ(tables["scales"].rows.size(), 30u);
}

TEST(FmeaFromTheShell, SaysWhatTheNumbersAreWorthAndWarnsThePerson) {
    const shell::Ran ran = shell::cutwater({"fmea", kDemo, "--component", "ET-1"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, AllOf(HasSubstr("only 120 can occur"), HasSubstr("full purge"),
                               HasSubstr("Operating mode"), HasSubstr("ET-1.gap-wide"),
                               Not(HasSubstr("ET-2.fouled"))));
}

TEST(FmeaFromTheShell, MistakesNameWhatIsNear) {
    const auto column = shell::cutwater({"fmea", kDemo, "--columns", "end-efect"});
    EXPECT_EQ(column.code, 1);
    EXPECT_THAT(column.err, HasSubstr("write end-effect"));
    EXPECT_THAT(shell::cutwater({"fmea", kDemo, "--component", "ET-9"}).err, HasSubstr("ET-"));
    EXPECT_THAT(shell::cutwater({"fmea", kDemo, "--today", "soon"}).err,
                HasSubstr("which is not a date"));
}

TEST(RiskMatrixFromTheShell, PlacesTheTopEvents) {
    auto tables = answer({"risk-matrix", kDemo});
    EXPECT_EQ(tables["matrix"].rows.size(), 7u);
    for (const auto& row : tables["placed"].rows)
        EXPECT_EQ(row.at("risk-index").toInt(),
                  row.at("frequency-index").toInt() + row.at("severity-index").toInt());
    const auto lowWater = rowWith(tables["placed"], "id", "T4-1");
    EXPECT_EQ(lowWater.at("severity-index").toInt(), 4);
    // Each of the ten top events and 234 modes is either placed or named with the reason.
    EXPECT_EQ(tables["placed"].rows.size() + tables["not-placed"].rows.size(), 244u);
    for (const auto& row : tables["not-placed"].rows)
        EXPECT_FALSE(row.at("why").toString().isEmpty());
    EXPECT_THAT(shell::cutwater({"risk-matrix", kDemo, "--what", "tops"}).out,
                HasSubstr("common-cause groups are not"));
    const auto counted =
        shell::cutwater({"risk-matrix", kDemo, "--what", "tops", "--common-cause"});
    EXPECT_THAT(counted.out, HasSubstr("Common causes are counted"));
    EXPECT_THAT(counted.out, testing::Not(HasSubstr("common-cause groups are not")));
    EXPECT_THAT(shell::cutwater({"coverage", kDemo, "--common-cause"}).out,
                HasSubstr("Common causes are counted"));
    // T1 is asked about at each start.
    EXPECT_THAT(rowWith(tables["placed"], "id", "T1-1").at("how").toString().toStdString(),
                HasSubstr("asked 3132 times a year"));
}

TEST(CoverageFromTheShell, PutsSeverityBesideProbability) {
    auto tables = answer({"coverage", kDemo});
    EXPECT_EQ(rowWith(tables["modes-in-no-tree"], "id", "SV-1A.stuck").at("component").toString(),
              "SV-1A");
    EXPECT_EQ(tables["events-in-no-row"].rows.size(), 4u);
    const auto both = rowWith(tables["end-effects"], "top", "T5");
    EXPECT_EQ(both.at("severity").toString(), "severe");
    EXPECT_GT(both.at("probability").toDouble(), 0);
    EXPECT_THAT(rowWith(tables["end-effects"], "end-effect",
                        "high pressure is held by the safety valves alone")
                    .at("remark")
                    .toString()
                    .toStdString(),
                HasSubstr("no tree answers for it"));
}

TEST(ProposalsFromTheShell, ATreeIsProposedAndAccepted) {
    const std::string effect = "high pressure is held by the safety valves alone";
    EXPECT_GT(answer({"tree-proposals", kDemo})["end-effects"].rows.size(), 5u);
    EXPECT_FALSE(answer({"tree-proposals", kDemo, "--effect", effect})["proposals"].rows.empty());
    const shell::Folder folder;
    const std::string made = folder.path("made.cutwater");
    const auto ran =
        shell::cutwater({"accept", kDemo, "--effect", effect, "--take", "all", "--output", made});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(shell::cutwater({"check", made}).code, 0);
    EXPECT_THAT(shell::cutwater({"list", made, "--width", "300"}).out, HasSubstr(effect));
    // Now a tree answers for it.
    EXPECT_FALSE(rowWith(answer({"coverage", made})["end-effects"], "end-effect",
                         QString::fromStdString(effect))
                     .at("top")
                     .toString()
                     .isEmpty());
    EXPECT_EQ(shell::cutwater({"accept", kDemo, "--effect", effect, "--take", "P77"}).code, 2);
    EXPECT_EQ(shell::cutwater({"accept", kDemo, "--effect", "nothing", "--take", "all"}).code, 2);
}

TEST(ProposalsFromTheShell, ACommonCauseIsAcceptedWithAFactorAndItsSource) {
    const auto first = answer({"cause-proposals", kDemo, "--new"})["proposals"].rows.front();
    const std::string id = first.at("proposal").toString().toStdString();
    const shell::Folder folder;
    const std::string made = folder.path("made.cutwater");
    const auto ran = shell::cutwater({"accept", kDemo, "--causes", id, "--beta", "0.1", "--source",
                                      "invented for this test", "--output", made});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(shell::cutwater({"check", made}).code, 0);
    // It is in a group now, and numbered as before.
    const auto now = rowWith(answer({"cause-proposals", made})["proposals"], "proposal",
                             QString::fromStdString(id));
    EXPECT_THAT(now.at("groups").toString().toStdString(), HasSubstr("ccf-"));
    for (const std::vector<std::string>& wrong : std::vector<std::vector<std::string>>{
             {"--causes", id},
             {"--causes", id, "--beta", "2", "--source", "x"},
             {"--causes", "C9999", "--beta", "0.1", "--source", "x"},
             {"--causes", "", "--beta", "0.1", "--source", "x"}}) {
        std::vector<std::string> words{"accept", kDemo};
        words.insert(words.end(), wrong.begin(), wrong.end());
        EXPECT_EQ(shell::cutwater(words).code, 2);
    }
}

// The demo's hidden common cause: one branch fuse feeds both protections of Boiler 1.
TEST(ProposalsFromTheShell, CommonCausesComeWithTheirReason) {
    auto tables = answer({"cause-proposals", kDemo, "--shared", "supply"});
    const auto fuse = rowWith(tables["proposals"], "by", "F12");
    EXPECT_THAT(fuse.at("events").toString().toStdString(),
                AllOf(HasSubstr("LT-1."), HasSubstr("LR-1.stuck-made")));
    EXPECT_THAT(fuse.at("gates").toString().toStdString(), HasSubstr("G-both-protections-1"));
    EXPECT_THAT(fuse.at("reason").toString().toStdString(), HasSubstr("F12 supplies"));
}
