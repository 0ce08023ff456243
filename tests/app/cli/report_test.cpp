// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater report`: what stands in it is what the other commands print.
#include "tests/app/cli/process.h"

#include <QByteArray>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <csignal>
#include <filesystem>
#include <regex>
#include <set>
#include <thread>

using namespace shell;
using testing::HasSubstr;
using testing::Not;

namespace {

std::string demo() {
    return CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater";
}

std::string textOf(const std::string& pdf) {
    return sh("pdftotext -layout '" + pdf + "' -").out;
}

} // namespace

TEST(Report, HasTheFiguresThatTheShellPrints) {
    const Folder folder;
    const std::string path = folder.path("demo.html");
    const Ran made = cutwater({"report", demo(), "--output", path, "--quiet"});
    ASSERT_EQ(made.code, 0) << made.err;
    const std::string html = bytesOf(path);
    EXPECT_THAT(html, HasSubstr("Who signs decides"));
    EXPECT_THAT(html, HasSubstr("Place and date"));
    EXPECT_THAT(html, HasSubstr("full purge"));
    EXPECT_THAT(html, HasSubstr("<figure class=\"sheet\">"));
    EXPECT_THAT(html, HasSubstr("from memory")); // the source of a number
    EXPECT_THAT(html, HasSubstr("invented"));
    // Nothing is fetched from anywhere.
    EXPECT_THAT(html, Not(HasSubstr("src=\"http")));
    EXPECT_THAT(html, Not(HasSubstr("<script")));
    // Every top event with the figure of `cutwater probability`, in its words.
    const Ran json =
        cutwater({"probability", demo(), "--common-cause", "--format", "json", "--quiet"});
    const QJsonObject all = QJsonDocument::fromJson(QByteArray::fromStdString(json.out)).object();
    int tops = 0;
    for (const QJsonValue& table : all["tables"].toArray()) {
        if (table["id"].toString() != "top-events") continue;
        for (const QJsonValue& row : table["rows"].toArray()) {
            char figure[40];
            std::snprintf(figure, sizeof figure, "%.3e", row.toArray()[2].toDouble());
            EXPECT_THAT(html, HasSubstr("<td align=\"right\" class=\"number\">" +
                                        std::string(figure) + "</td>"));
            ++tops;
        }
    }
    EXPECT_GT(tops, 5);
}

TEST(Report, IdsOfDrawnSheetsDoNotMeet) {
    const Folder folder;
    const std::string path = folder.path("demo.html");
    ASSERT_EQ(cutwater({"report", demo(), "--output", path, "--quiet"}).code, 0);
    const std::string html = bytesOf(path);
    const std::regex pattern(" id=\"([^\"]*)\"");
    std::set<std::string> seen;
    std::size_t count = 0;
    for (std::sregex_iterator at(html.begin(), html.end(), pattern), end; at != end; ++at, ++count)
        EXPECT_TRUE(seen.insert((*at)[1]).second) << (*at)[1];
    EXPECT_GT(count, 100u);
}

TEST(Report, PdfHasTheSameWordsAndADrawingForEachSheet) {
    const Folder folder;
    const std::string path = folder.path("pumps.pdf");
    const Ran made = cutwater({"report", file("pumps.cutwater"), "--output", path, "--quiet"});
    ASSERT_EQ(made.code, 0) << made.err;
    const std::string words = textOf(path);
    EXPECT_THAT(words, HasSubstr("The top events"));
    EXPECT_THAT(words, HasSubstr("Where the numbers come from"));
    EXPECT_THAT(words, HasSubstr("Signatures"));
    EXPECT_TRUE(std::regex_search(words, std::regex("1 ?/ ?[2-9]"))) << "page 1 of some";
    // The drawing is there as text, and not as outlines of letters.
    EXPECT_THAT(words, HasSubstr("pump B does not"));
    EXPECT_LT(bytesOf(path).size(), 400000u);
    const std::string odt = folder.path("pumps.odt");
    ASSERT_EQ(cutwater({"report", file("pumps.cutwater"), "--output", odt, "--quiet"}).code, 0);
    EXPECT_EQ(bytesOf(odt).substr(0, 2), "PK");
}

TEST(Report, AsksForTheAnalysesThatAreNamed) {
    const Folder folder;
    const std::string path = folder.path("a.html");
    const Ran made = cutwater({"report", file("pumps.cutwater"), "--analysis", "cut-sets",
                               "--no-trees", "--no-signatures", "--output", path});
    ASSERT_EQ(made.code, 0) << made.err;
    const std::string html = bytesOf(path);
    EXPECT_THAT(html, HasSubstr("(cut-sets)"));
    EXPECT_THAT(html, Not(HasSubstr("(probability)")));
    EXPECT_THAT(html, Not(HasSubstr("Place and date")));
    EXPECT_THAT(html, Not(HasSubstr("<figure")));
}

TEST(Report, MistakesAreOneSentence) {
    const Folder folder;
    const auto report = [&](std::vector<std::string> words) {
        words.insert(words.begin(), {"report", file("pumps.cutwater")});
        return cutwater(words);
    };
    Ran ran = report({"--analysis", "cut-sats", "--output", folder.path("a.html")});
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err, HasSubstr("no such analysis"));
    ran = report({"--output", folder.path("a.docx")});
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err, HasSubstr(".html, .pdf, .odt"));
    ran = report({"--output", folder.path("no/such/folder/a.html")});
    EXPECT_EQ(ran.code, 1);
    EXPECT_THAT(ran.err, HasSubstr("a.html"));
    ran = report({"--report", "nobody", "--output", folder.path("a.html")});
    EXPECT_EQ(ran.code, 2);
    EXPECT_THAT(ran.err, HasSubstr("paper-report"));
}

TEST(Report, IsStoppedByASignalAndLeavesNoFile) {
    const Folder folder;
    const std::string path = folder.write("tangle.cutwater", tangle(300, 2000));
    const std::string out = folder.path("out.html");
    Wish wish;
    wish.meanwhile = [&](long long pid) {
        std::this_thread::sleep_for(std::chrono::milliseconds(1200));
        kill(static_cast<pid_t>(pid), SIGINT);
    };
    const Ran ran = cutwater({"report", path, "--analysis", "cut-sets", "--output", out}, wish);
    EXPECT_EQ(ran.code, 3) << ran.err;
    EXPECT_FALSE(std::filesystem::exists(out));
}
