// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/document.h"
#include "tests/models/document/random_project.h"

#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace cutwater::document {

namespace {

std::string sentences(const project::Problems& problems) {
    std::string all;
    for (const project::Problem& problem : problems)
        all += toSentence(problem) + '\n';
    return all;
}

void expectRoundTrip(const project::Project& project) {
    const auto text = write(project);
    ASSERT_TRUE(text) << sentences(text.problems());
    const auto again = parse(*text);
    ASSERT_TRUE(again) << sentences(again.problems()) << *text;
    EXPECT_TRUE(again->project == project) << *text;
    const auto twice = write(again->project);
    ASSERT_TRUE(twice);
    EXPECT_EQ(*twice, *text);
}

std::string contents(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

} // namespace

TEST(RoundTrip, EmptyProject) {
    expectRoundTrip({});
}

TEST(RoundTrip, RandomProjects) {
    for (std::uint32_t seed = 0; seed < 400; ++seed) {
        SCOPED_TRACE(seed);
        expectRoundTrip(test::randomProject(seed, 4, false));
        if (HasFatalFailure() || HasNonfatalFailure()) return;
    }
}

TEST(RoundTrip, RandomProjectsOfANewerMinorVersion) {
    for (std::uint32_t seed = 0; seed < 400; ++seed) {
        SCOPED_TRACE(seed);
        expectRoundTrip(test::randomProject(seed, 4, true));
        if (HasFatalFailure() || HasNonfatalFailure()) return;
    }
}

TEST(RoundTrip, HandWrittenFileComesOutAsItWentIn) {
    std::string text = contents(CUTWATER_SOURCE_DIR "/tests/models/document/files/full.cutwater");
    ASSERT_FALSE(text.empty());
    const auto loaded = parse(text);
    ASSERT_TRUE(loaded) << sentences(loaded.problems());
    // Comments are not kept; everything else stands in the order and form that we write.
    const auto comment = text.find("<!--");
    text.erase(comment, text.find("-->\n") + 4 - comment);
    const auto written = write(loaded->project);
    ASSERT_TRUE(written);
    EXPECT_EQ(*written, text);
}

} // namespace cutwater::document
