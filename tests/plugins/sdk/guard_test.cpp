// SPDX-License-Identifier: GPL-3.0-or-later
// Plug-ins that misbehave while they run: the program goes on and says who it was.
#include "plugins/sdk/guard.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater;
using testing::HasSubstr;

namespace {

class Guard : public testing::Test {
protected:
    sdk::Host host{{std::string(CUTWATER_FIXTURES) + "/fixture-misbehaves"}};
    const sdk::PluginFacts* facts = host.find(sdk::PluginKind::analysis, "fixture-misbehaves");
    sdk::Analysis* analysis = host.analysis("fixture-misbehaves");

    void SetUp() override {
        ASSERT_NE(facts, nullptr);
        ASSERT_NE(analysis, nullptr);
    }

    sdk::Answer<sdk::Result> run(const std::string& how) {
        sdk::Values values;
        values.set("how", sdk::Value(how));
        return sdk::runGuarded(*analysis, *facts, {}, values, {});
    }
};

} // namespace

TEST_F(Guard, AnExceptionBecomesAFailedAnswerThatNamesThePlugIn) {
    const auto answer = run("exception");
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    EXPECT_FALSE(answer.content);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_EQ(answer.problems[0].what, "plug-in fixture-misbehaves failed: the bilge is full");
    EXPECT_THAT(answer.problems[0].remedy, HasSubstr(facts->file));
}

TEST_F(Guard, SoDoesAnythingElseThatIsThrown) {
    const auto answer = run("number");
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_EQ(answer.problems[0].what, "plug-in fixture-misbehaves failed");
}

TEST_F(Guard, NoMoreMemoryIsALimit) {
    EXPECT_EQ(run("memory").ending, sdk::Ending::overLimit);
}

TEST_F(Guard, AnAnswerWithoutContentIsAFailure) {
    const auto answer = run("nothing");
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("finished without an answer"));
}

TEST_F(Guard, AFailureWithoutAReasonGetsOne) {
    const auto answer = run("silent");
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 1u);
}

TEST_F(Guard, ARaggedTableDoesNotReachTheFaces) {
    const auto answer = run("ragged");
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    EXPECT_FALSE(answer.content);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("a row of 1 cells for 2 columns"));
}

TEST_F(Guard, NorDoesAMarkAtARowThatIsNotThere) {
    EXPECT_EQ(run("stray-mark").ending, sdk::Ending::failed);
}

TEST_F(Guard, ParametersMayThrowToo) {
    project::Project project;
    ASSERT_TRUE(sdk::parametersOf(*analysis, *facts, &project));
    project.name = "parameters throw";
    const auto thrown = sdk::parametersOf(*analysis, *facts, &project);
    ASSERT_FALSE(thrown);
    EXPECT_THAT(thrown.problems()[0].what, HasSubstr("no parameters"));
    project.name = "twice";
    const auto twice = sdk::parametersOf(*analysis, *facts, &project);
    ASSERT_FALSE(twice);
    EXPECT_THAT(twice.problems()[0].what, HasSubstr("'how' twice"));
}
