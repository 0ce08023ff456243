// SPDX-License-Identifier: GPL-3.0-or-later
// The demo as a file: it loads without a word of complaint and is written back byte for byte.
#include "models/document/document.h"
#include "tests/house/demo/demo.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

using namespace cutwater;

namespace {

std::string text() {
    std::ifstream file(demo::path(), std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

TEST(DemoFile, LoadsWithoutAWarning) {
    const auto loaded = document::load(demo::path());
    ASSERT_TRUE(loaded) << project::toSentence(loaded.problems().front());
    for (const auto& problem : loaded->warnings)
        ADD_FAILURE() << project::toSentence(problem);
}

TEST(DemoFile, ValidatesWithoutAWord) {
    for (const auto& problem : project::validate(demo::project()))
        ADD_FAILURE() << project::toSentence(problem);
}

TEST(DemoFile, IsWrittenBackByteForByte) {
    const auto written = document::write(demo::project());
    ASSERT_TRUE(written) << project::toSentence(written.problems().front());
    const std::string before = text();
    if (*written == before) return;
    const auto [left, right] =
        std::mismatch(before.begin(), before.end(), written->begin(), written->end());
    const auto line = 1 + std::count(before.begin(), left, '\n');
    FAIL() << "first difference in line " << line << ": the file has '"
           << std::string(left, std::find(left, before.end(), '\n')) << "', the writer '"
           << std::string(right, std::find(right, written->end(), '\n')) << "'";
}

TEST(DemoFile, KeepsOneFactALineAndNoTabs) {
    const std::string file = text();
    EXPECT_EQ(file.find('\t'), std::string::npos);
    EXPECT_EQ(file.find('\r'), std::string::npos);
    EXPECT_EQ(file.find(" \n"), std::string::npos);
}

// What the guide promises to say in the file itself.
TEST(DemoFile, SaysThatItIsInvented) {
    EXPECT_THAT(demo::project().description, testing::HasSubstr("invented"));
    EXPECT_THAT(demo::project().cautions, testing::Contains(testing::HasSubstr("does not exist")));
}

} // namespace
