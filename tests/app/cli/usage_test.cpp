// SPDX-License-Identifier: GPL-3.0-or-later
// Help, and every way to type it wrong.
#include "tests/app/cli/process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

using namespace shell;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

// Exit 2, nothing on standard output, one sentence on the other stream.
void expectUsage(const std::vector<std::string>& words, const std::string& part) {
    const Ran ran = cutwater(words);
    EXPECT_EQ(ran.code, 2) << part;
    EXPECT_THAT(ran.out, IsEmpty());
    EXPECT_THAT(ran.err, HasSubstr(part));
    EXPECT_THAT(ran.err, testing::StartsWith("cutwater: "));
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
}

} // namespace

TEST(Help, IsEverywhere) {
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"--help"}, {"-h"}, {"help"}}) {
        const Ran ran = cutwater(words);
        EXPECT_EQ(ran.code, 0);
        for (const char* part : {"Usage:", "check", "cut-sets", "draw", "--format", "Exit codes"})
            EXPECT_THAT(ran.out, HasSubstr(part));
    }
    for (const char* name : {"check", "draw", "list", "new", "help", "cut-sets", "path-sets",
                             "probability", "single-failures"}) {
        const Ran one = cutwater({"help", name});
        EXPECT_EQ(one.code, 0) << name;
        EXPECT_THAT(one.out, HasSubstr(std::string("Usage: cutwater ") + name));
        EXPECT_EQ(cutwater({name, "--help"}).out, one.out) << name;
    }
}

TEST(Help, ShowsDeclaredParameters) {
    const std::string help = cutwater({"cut-sets", "--help"}).out;
    for (const char* part :
         {"--top ID", "--limit N", "Range: 1 to 10000000", "Standard: 1000",
          "--sort order|probability", "Standard: order", "--mission NUMBER", "0 h or more"})
        EXPECT_THAT(help, HasSubstr(part));
}

TEST(Version, IsPrinted) {
    const Ran ran = cutwater({"--version"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_THAT(ran.out, testing::MatchesRegex("cutwater [0-9]+\\.[0-9]+\\.[0-9]+\n"));
}

TEST(Usage, UnknownWordsGetTheNearestKnownOne) {
    expectUsage({"cut-set", "f"}, "did you mean cut-sets?");
    expectUsage({"chekc", "f"}, "did you mean check?");
    expectUsage({"help", "probabilty"}, "did you mean probability?");
    expectUsage({"zebra", "f"}, "`cutwater list`");
    expectUsage({"cut-sets", "f", "--limti", "3"}, "did you mean --limit?");
    expectUsage({"cut-sets", file("pumps.cutwater"), "--top", "T2"}, "did you mean T1?");
    expectUsage({"cut-sets", file("pumps.cutwater"), "--top", "nowhere"}, "cutwater list FILE");
    expectUsage({"cut-sets", "f", "--sort", "ordr"}, "try 'order'");
    expectUsage({"check", "f", "--format", "jsn"}, "try 'json'");
}

TEST(Usage, EveryMistakeIsOneSentence) {
    expectUsage({}, "cutwater --help");
    expectUsage({"check"}, "needs a file");
    expectUsage({"check", "a", "b"}, "'b'");
    expectUsage({"cut-sets", "f", "--limit", "0"}, "from 1 to 10000000");
    expectUsage({"cut-sets", "f", "--limit", "many"}, "not a whole number");
    expectUsage({"cut-sets", "f", "--limit"}, "needs a value");
    expectUsage({"cut-sets", "f", "--min-probability", "nan"}, "not a number");
    expectUsage({"cut-sets", "f", "--mission", "-1"}, "out of range");
    expectUsage({"cut-sets", "f", "--mission", "3 A"}, "not a number");
    expectUsage({"cut-sets", "f", "--memory", "1"}, "16");
    expectUsage({"check", "f", "--plugins", "/no/such/folder"}, "no such folder");
    expectUsage({"--frobnicate"}, "no option");
    expectUsage({"check", "f", "--quiet", "--quiet"}, "twice");
    expectUsage({"new", "-"}, "name of a file");
}

TEST(Usage, OddBytesOnTheCommandLine) {
    expectUsage({"\x1b[2Jxxxxxxxxx"}, "no command");
    expectUsage({std::string(100000, 'a')}, "no command");
    const Ran ran = cutwater({"check", "no\nsuch\x1b file"});
    EXPECT_EQ(ran.code, 1);
    EXPECT_EQ((ran.out + ran.err).find('\x1b'), std::string::npos);
}
