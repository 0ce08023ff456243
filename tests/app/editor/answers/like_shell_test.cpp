// SPDX-License-Identifier: GPL-3.0-or-later
// The editor and the shell answer the same for the same file, to the last digit.
#include "app/editor/answers/live_answer.h"

#include "models/document/document.h"
#include "tests/app/cli/process.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>

using namespace cutwater;

namespace {

using Row = std::map<std::string, QJsonValue>;

// The rows of a table by column id.
std::vector<Row> rowsOf(const QJsonObject& result, const QString& table) {
    std::vector<Row> rows;
    for (const QJsonValue& one : result["tables"].toArray()) {
        if (one["id"].toString() != table) continue;
        const QJsonArray columns = one["columns"].toArray();
        for (const QJsonValue& cells : one["rows"].toArray()) {
            Row& row = rows.emplace_back();
            for (int c = 0; c < columns.size(); ++c)
                row[columns[c]["id"].toString().toStdString()] = cells.toArray()[c];
        }
    }
    return rows;
}

QJsonObject shellSays(const std::vector<std::string>& words) {
    std::vector<std::string> all = words;
    all.insert(all.end(), {"--format", "json", "--quiet"});
    const shell::Ran ran = shell::cutwater(all);
    EXPECT_EQ(ran.code, 0) << ran.err;
    return QJsonDocument::fromJson(QByteArray::fromStdString(ran.out)).object();
}

std::string demo() {
    return CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater";
}

} // namespace

TEST(LikeTheShell, TheDemoProject) {
    const auto loaded = document::load(demo());
    ASSERT_TRUE(loaded);
    const QJsonObject chances = shellSays({"probability", demo(), "--common-cause"});
    const QJsonObject sets = shellSays({"cut-sets", demo(), "--limit", "1", "--common-cause"});
    const QJsonObject singles = shellSays({"single-failures", demo()});
    const auto chance = rowsOf(chances, "top-events");
    ASSERT_EQ(chance.size(), loaded->project.tops.size());
    ASSERT_GT(chance.size(), 5u);

    const auto recall = std::make_shared<logic::Recall>();
    for (const Row& row : chance) {
        const std::string top = row.at("top").toString().toStdString();
        SCOPED_TRACE(top);
        editor::LiveMeans means;
        means.recall = recall; // as the editor does: modules of other trees are known already
        const editor::LiveAnswer live = editor::computeLive(loaded->project, top, means);
        ASSERT_EQ(live.ending, editor::LiveAnswer::Ending::answered);
        ASSERT_TRUE(live.figure);
        EXPECT_EQ(live.figure->upper, row.at("probability").toDouble());
        EXPECT_EQ(live.setCount, std::to_string(row.at("sets").toInteger()));

        std::map<std::uint32_t, std::string> mine, theirs;
        for (const editor::OrderCount& one : live.orders)
            mine[one.order] = one.sets;
        for (const Row& count : rowsOf(sets, "counts"))
            if (count.at("top").toString().toStdString() == top)
                theirs[static_cast<std::uint32_t>(count.at("order").toInteger())] =
                    std::to_string(count.at("sets").toInteger());
        EXPECT_EQ(mine, theirs);

        std::map<std::string, double> alone, aloneInShell;
        for (const editor::SingleFailure& one : live.singles)
            if (one.nodes.size() == 1) alone[one.nodes.front()] = one.probability.value_or(-1);
        for (const char* const table : {"single-failures", "dormant"})
            for (const Row& one : rowsOf(singles, table))
                if (one.at("top").toString().toStdString() == top)
                    aloneInShell[one.at("event").toString().toStdString()] =
                        one.at("probability").toDouble(-1);
        EXPECT_EQ(alone, aloneInShell);
        const auto common = static_cast<std::size_t>(
            std::count_if(live.singles.begin(), live.singles.end(),
                          [](const auto& one) { return one.nodes.size() > 1; }));
        EXPECT_EQ(live.singleCount, aloneInShell.size() + common);
    }
}
