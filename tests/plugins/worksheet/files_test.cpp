// SPDX-License-Identifier: GPL-3.0-or-later
// Tables, workbooks, pictures and libraries, in and out of the program.
#include "tests/app/cli/process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

const std::string kDemo = CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater";

} // namespace

TEST(WorksheetFiles, CsvAndTsvComeBackUnchanged) {
    const shell::Folder folder;
    for (const char* name : {"w.csv", "w.tsv"}) {
        const std::string table = folder.path(name);
        ASSERT_EQ(shell::cutwater({"convert", kDemo, table}).code, 0);
        const auto ran = shell::cutwater(
            {"import-rows", kDemo, table, "--output", folder.path("again.cutwater")});
        EXPECT_EQ(ran.code, 0) << ran.err;
        EXPECT_THAT(ran.out, HasSubstr("234 taken, of them 234 unchanged"));
        EXPECT_EQ(shell::bytesOf(folder.path("again.cutwater")), shell::bytesOf(kDemo));
    }
}

TEST(WorksheetFiles, ATableMakesANewProject) {
    const shell::Folder folder;
    const auto table = folder.write("new.csv", "tag,failure mode,cause,S\nP-1,stops,wear,5\n");
    const auto ran = shell::cutwater({"convert", table, folder.path("new.cutwater")});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(shell::bytesOf(folder.path("new.cutwater")),
                AllOf(HasSubstr("<tag>P-1</tag>"), HasSubstr("<severity-rating>5<")));
    const auto bad = folder.write("bad.csv", "tag,failure mode,S\nP-1,stops,50\n");
    EXPECT_THAT(shell::cutwater({"convert", bad, folder.path("x.cutwater")}).err,
                HasSubstr("bad.csv:2: error"));
}

// The rows that cannot be taken are named; unless asked for, nothing is then written.
TEST(WorksheetFiles, ImportReportsWhatItRefuses) {
    const shell::Folder folder;
    const auto table = folder.write("t.csv", "component;mode;Grade;remark\n"
                                             "ET-1;fouled;4;=cmd()\n"
                                             "ET-1x;fouled;4;x\n");
    const std::string made = folder.path("made.cutwater");
    const auto preview = shell::cutwater(
        {"import-rows", kDemo, table, "--match", "Grade=severity-rating", "--width", "200"});
    EXPECT_EQ(preview.code, 1);
    EXPECT_THAT(preview.out, AllOf(HasSubstr("Preview: nothing is written"),
                                   HasSubstr("no component \"ET-1x\"; did you mean")));
    const auto refused = shell::cutwater(
        {"import-rows", kDemo, table, "--match", "Grade=severity-rating", "--output", made});
    EXPECT_EQ(refused.code, 1);
    EXPECT_THAT(refused.err, HasSubstr("nothing is written"));
    EXPECT_TRUE(shell::bytesOf(made).empty());
    const auto partly = shell::cutwater({"import-rows", kDemo, table, "--match",
                                         "Grade=severity-rating", "--partial", "--output", made});
    EXPECT_EQ(partly.code, 1);
    EXPECT_THAT(shell::bytesOf(made), HasSubstr("<remark>=cmd()</remark>"));
    // Out again, no spreadsheet runs it.
    ASSERT_EQ(shell::cutwater({"convert", made, folder.path("out.csv")}).code, 0);
    EXPECT_THAT(shell::bytesOf(folder.path("out.csv")),
                AllOf(HasSubstr(",'=cmd(),"), Not(HasSubstr(",=cmd"))));
    EXPECT_EQ(shell::cutwater({"import-rows", kDemo, table, "--match", "Colour=remark"}).code, 1);
}

TEST(WorksheetFiles, AWorkbookIsTheSameEachTime) {
    const shell::Folder folder;
    ASSERT_EQ(shell::cutwater({"convert", kDemo, folder.path("a.xlsx")}).code, 0);
    ASSERT_EQ(shell::cutwater({"convert", kDemo, folder.path("b.xlsx")}).code, 0);
    const std::string bytes = shell::bytesOf(folder.path("a.xlsx"));
    EXPECT_THAT(bytes, StartsWith("PK"));
    EXPECT_THAT(bytes, AllOf(HasSubstr("xl/worksheets/sheet4.xml"), HasSubstr("sharedStrings")));
    EXPECT_EQ(bytes, shell::bytesOf(folder.path("b.xlsx")));
    const auto back =
        shell::cutwater({"convert", folder.path("a.xlsx"), folder.path("c.cutwater")});
    EXPECT_EQ(back.code, 2);
    EXPECT_THAT(back.err, HasSubstr("no plug-in reads"));
}

TEST(WorksheetFiles, TheRiskMatrixIsDrawn) {
    const shell::Folder folder;
    const auto svg = shell::cutwater({"draw-risk", kDemo, "--type", "svg", "--what", "modes"});
    EXPECT_EQ(svg.code, 0) << svg.err;
    EXPECT_THAT(svg.out, AllOf(HasSubstr("SI 4 Catastrophic"), HasSubstr("FI 7 Frequent"),
                               HasSubstr("cell-7-4"), HasSubstr("replaces no maker")));
    ASSERT_EQ(
        shell::cutwater({"draw-risk", kDemo, "--what", "modes", "--output", folder.path("r.png")})
            .code,
        0);
    EXPECT_THAT(shell::bytesOf(folder.path("r.png")), StartsWith("\x89PNG"));
    EXPECT_EQ(shell::cutwater({"draw-risk", kDemo, "--output", folder.path("r.doc")}).code, 2);
}

TEST(LibraryFromTheShell, ListsAndShows) {
    const auto all = shell::cutwater({"library", "--width", "200"});
    EXPECT_EQ(all.code, 0) << all.err;
    EXPECT_THAT(all.out, AllOf(HasSubstr("ignition-electrodes"), HasSubstr("sequence-controller")));
    const auto one = shell::cutwater({"library", "fuse", "--width", "200"});
    EXPECT_THAT(one.out, AllOf(HasSubstr("WASH-1400"),
                               HasSubstr("to be checked against the source"), HasSubstr("1e-06")));
    EXPECT_THAT(shell::cutwater({"library", "fuze"}).err, HasSubstr("did you mean fuse?"));
    EXPECT_EQ(shell::cutwater({"library", "--group", "nothing"}).code, 2);
}

TEST(LibraryFromTheShell, AComponentRemembersAndHearsTheNews) {
    const shell::Folder folder;
    const std::string text = "<cutwater-library version=\"1.1\"><library><id>mine</id></library>"
                             "<types><type id=\"siren\" revision=\"1\"><name>siren</name>"
                             "<mode id=\"silent\"><name>silent</name><no-rate>none</no-rate>"
                             "</mode></type></types></cutwater-library>";
    const std::string own = folder.write("mine.cutlib", text);
    const std::string made = folder.path("made.cutwater");
    const auto ran = shell::cutwater({"take", kDemo, "siren", "HO-1", "--tag", "HO-1", "--parent",
                                      "B1", "--library", own, "--output", made});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(shell::bytesOf(made),
                AllOf(HasSubstr("<from-library library=\"mine\" type=\"siren\" revision=\"1\"/>"),
                      HasSubstr("<mode id=\"HO-1.silent\">")));
    const auto news = [&] { return shell::cutwater({"library-news", made, "--library", own}).out; };
    EXPECT_THAT(news(), HasSubstr("(none)"));
    std::string newer = text;
    newer.replace(newer.find("revision=\"1\""), 12, "revision=\"2\"");
    newer.replace(newer.find("<name>silent"), 12, "<name>mute");
    folder.write("mine.cutlib", newer);
    EXPECT_THAT(news(), AllOf(HasSubstr("another revision"), HasSubstr("mute")));
    EXPECT_THAT(shell::cutwater({"library-news", made}).out, HasSubstr("not at hand"));
    EXPECT_EQ(shell::cutwater({"take", kDemo, "siren", "ET-1", "--library", own}).code, 2);
}
