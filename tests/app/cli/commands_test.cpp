// SPDX-License-Identifier: GPL-3.0-or-later
// What the commands say about good files.
#include "tests/app/cli/process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace shell;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

TEST(Check, AGoodFileIsFine) {
    const Ran ran = cutwater({"check", file("pumps.cutwater")});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, HasSubstr("0 errors"));
    EXPECT_THAT(ran.out, HasSubstr("3 events, 2 gates, 1 top event"));
    EXPECT_THAT(cutwater({"check", "--quiet", file("pumps.cutwater")}).out,
                Not(HasSubstr("events")));
}

TEST(Check, EveryProblemHasItsLine) {
    const std::string path = file("broken.cutwater");
    const Ran ran = cutwater({"check", path});
    EXPECT_EQ(ran.code, 1);
    EXPECT_THAT(ran.out, HasSubstr(path + ":10: error: ")); // probability 1.5
    EXPECT_THAT(ran.out, HasSubstr(path + ":18: error: ")); // nobody
    EXPECT_THAT(ran.out, HasSubstr("nobody"));
    EXPECT_THAT(ran.out, HasSubstr("1000000000"));
    EXPECT_THAT(ran.out, HasSubstr("3 errors"));
}

TEST(Check, StandardInputIsAFileToo) {
    Wish wish;
    wish.input = bytesOf(file("pumps.cutwater"));
    EXPECT_EQ(cutwater({"check", "-"}, wish).code, 0);
    wish.input = bytesOf(file("broken.cutwater"));
    const Ran ran = cutwater({"check", "-"}, wish);
    EXPECT_EQ(ran.code, 1);
    EXPECT_THAT(ran.out, HasSubstr("standard input:18: error: "));
}

TEST(List, ShowsPlugInsAndTopEvents) {
    const Ran all = cutwater({"list"});
    EXPECT_EQ(all.code, 0);
    for (const char* id : {"cut-sets", "path-sets", "probability", "single-failures"})
        EXPECT_THAT(all.out, HasSubstr(id));
    const Ran tops = cutwater({"list", file("pumps.cutwater")});
    EXPECT_EQ(tops.code, 0);
    EXPECT_THAT(tops.out, HasSubstr("The machine stops"));
}

TEST(List, SaysWhatWasLeftOutAndGoesOn) {
    const Ran ran = cutwater({"list", "--plugins", fixtureFolder("fixture-old-interface"),
                              "--plugins=" + fixtureFolder("fixture-good")});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, HasSubstr("another version of the"));
    EXPECT_THAT(ran.out, HasSubstr("fixture-good"));
    EXPECT_THAT(ran.out, HasSubstr("cut-sets"));
}

TEST(New, MakesAFileThatCanBeAsked) {
    const Folder folder;
    const std::string path = folder.path("mine.cutwater");
    EXPECT_EQ(cutwater({"new", path, "--name", "My & \"own\" plant"}).code, 0);
    EXPECT_EQ(cutwater({"check", path}).code, 0);
    const Ran ran = cutwater({"single-failures", path});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, HasSubstr("panel-no-power"));
    EXPECT_THAT(cutwater({"list", path}).out, HasSubstr("My & \"own\" plant"));
}

TEST(New, NeverOverwrites) {
    const Folder folder;
    const std::string path = folder.write("mine.cutwater", "precious");
    const Ran ran = cutwater({"new", path});
    EXPECT_EQ(ran.code, 1);
    EXPECT_THAT(ran.err, HasSubstr("not touched"));
    EXPECT_EQ(bytesOf(path), "precious");
    EXPECT_EQ(cutwater({"new", folder.path("no/such/folder/x")}).code, 1);
}

TEST(Analyses, AnswerInTextWithoutNoiseOnTheOtherStream) {
    for (const char* analysis : {"cut-sets", "path-sets", "probability", "single-failures"}) {
        const Ran ran = cutwater({analysis, file("pumps.cutwater")});
        EXPECT_EQ(ran.code, 0) << analysis;
        EXPECT_THAT(ran.err, IsEmpty()) << analysis;
        EXPECT_THAT(ran.out, HasSubstr("T1")) << analysis;
        EXPECT_THAT(ran.out, HasSubstr("Who signs decides")) << analysis;
    }
}

TEST(Analyses, EventsWithoutNumbersAreNamedWhereTheyStand) {
    const std::string path = file("no-numbers.cutwater");
    const Ran sets = cutwater({"cut-sets", path});
    EXPECT_EQ(sets.code, 0);
    EXPECT_THAT(sets.out, HasSubstr("No number: a, b."));
    const Ran ran = cutwater({"probability", path});
    EXPECT_EQ(ran.code, 1);
    EXPECT_THAT(ran.out, IsEmpty());
    EXPECT_THAT(ran.err, HasSubstr(path + ":7: error: event a"));
    EXPECT_THAT(ran.err, HasSubstr(path + ":10: error: event b"));
}

TEST(Analyses, APlugInThatMisbehavesIsNamedAndNothingCrashes) {
    const std::string folder = fixtureFolder("fixture-misbehaves");
    for (const char* how : {"exception", "number", "nothing", "ragged", "stray-mark", "silent"}) {
        const Ran ran = cutwater(
            {"fixture-misbehaves", file("pumps.cutwater"), "--plugins", folder, "--how", how});
        EXPECT_EQ(ran.code, 1) << how;
        EXPECT_THAT(ran.err, HasSubstr("plug-in fixture-misbehaves")) << how;
    }
    EXPECT_EQ(cutwater({"fixture-misbehaves", file("pumps.cutwater"), "--plugins", folder, "--how",
                        "memory"})
                  .code,
              3);
    const Ran made = cutwater({"fixture-throws-when-made", file("pumps.cutwater"), "--plugins",
                               fixtureFolder("fixture-throws-when-made")});
    EXPECT_EQ(made.code, 1);
    EXPECT_THAT(made.err, HasSubstr("no licence for this ship"));
}

TEST(Demo, TheHiddenFuseIsFound) {
    const std::string demo =
        std::string(CUTWATER_SOURCE_DIR) + "/share/examples/sandpiper-bay.cutwater";
    const Ran ran = cutwater({"single-failures", demo, "--top", "T3-1", "--table",
                              "single-failures", "--format", "csv"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, HasSubstr("F7"));
}
