// SPDX-License-Identifier: GPL-3.0-or-later
// The four analyses as somebody at a shell uses them, on the demo.
#include "tests/app/cli/process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace shell;
using testing::HasSubstr;
using testing::Not;

namespace {

const std::string kDemo = CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater";

Ran ask(const std::string& analysis, std::vector<std::string> words) {
    words.insert(words.begin(), {analysis, kDemo});
    return cutwater(words);
}

// The cell of a CSV row that begins with `begin`; no quotes before it.
double cell(const std::string& csv, const std::string& begin, int column) {
    std::size_t at = csv.find("\n" + begin + ",");
    if (at == std::string::npos) return -1;
    for (++at; column > 0; --column)
        at = csv.find(',', at) + 1;
    return std::strtod(csv.c_str() + at, nullptr);
}

} // namespace

TEST(DependenceProgram, CommonCausesOfTheWaterProtection) {
    const Ran ran = ask("common-cause", {"--top", "T4-1", "--format", "csv", "--table", "effects"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_GT(cell(ran.out, "T4-1,CC-scale-1", 4), 90); // its share of the top, in %
    const Ran text = ask("common-cause", {"--top", "T2-1"});
    EXPECT_THAT(text.out, HasSubstr("MV-1A.not-shut + MV-1B.not-shut"));
}

TEST(DependenceProgram, TheSameSeedIsTheSameAnswerOnAnyNumberOfThreads) {
    const auto run = [](const char* seed, const char* threads) {
        return ask("uncertainty", {"--top", "T3-1", "--samples", "20000", "--seed", seed,
                                   "--threads", threads, "--format", "json"});
    };
    const Ran one = run("7", "1");
    ASSERT_EQ(one.code, 0) << one.err;
    EXPECT_EQ(one.out, run("7", "2").out);
    EXPECT_EQ(one.out, run("7", "8").out);
    EXPECT_NE(one.out, run("8", "2").out);
}

TEST(DependenceProgram, AProtectionInItsBand) {
    const Ran ran = ask("safety-function", {"--top", "G-fuel-not-shut-1", "--voting", "1oo2",
                                            "--rate", "1e-5", "--beta", "0.1"});
    ASSERT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, testing::AllOf(HasSubstr("SIL 3 band"), HasSubstr("competent person"),
                                        HasSubstr("with common")));
}

TEST(DependenceProgram, F7AndX43InBoiler1Only) {
    const auto singles = [](const char* bus) {
        return ask("redundancy", {"--load", bus, "--format", "csv", "--table", "single-failures"});
    };
    const Ran first = singles("CB-1"), second = singles("CB-2");
    ASSERT_EQ(first.code, 0) << first.err;
    EXPECT_THAT(first.out, testing::AllOf(HasSubstr("F7.open"), HasSubstr("X4:3.loose")));
    ASSERT_EQ(second.code, 0) << second.err;
    EXPECT_THAT(second.out, Not(HasSubstr("F27A.open")));
    EXPECT_THAT(second.out, Not(HasSubstr("X5:3.loose")));
}

TEST(DependenceProgram, SlipsEndInASentence) {
    EXPECT_EQ(ask("uncertainty", {"--samples", "5"}).code, 2);
    EXPECT_EQ(ask("safety-function", {"--voting", "3oo2", "--rate", "1"}).code, 2);
    const Ran load = ask("redundancy", {"--load", "CB-9"});
    EXPECT_NE(load.code, 0);
    EXPECT_THAT(load.err, HasSubstr("there is no component 'CB-9'"));
}
