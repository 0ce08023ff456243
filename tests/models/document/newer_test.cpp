// SPDX-License-Identifier: GPL-3.0-or-later
// Files of other versions: what a newer minor one says is kept, a newer major one is refused.
#include "models/document/document.h"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

namespace cutwater::document {

using ::testing::HasSubstr;

namespace {

std::string contents(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string fileOfVersion(const std::string& version) {
    return "<cutwater version=\"" + version + "\"/>";
}

} // namespace

TEST(Newer, FileComesOutAsItWentIn) {
    const std::string text =
        contents(CUTWATER_SOURCE_DIR "/tests/models/document/newer/future.cutwater");
    ASSERT_FALSE(text.empty());
    const auto loaded = parse(text);
    ASSERT_TRUE(loaded) << toSentence(loaded.problems().front());
    EXPECT_EQ(loaded->project.newerMinorVersion, 7);
    EXPECT_EQ(loaded->project.kept.attributes.size(), 1u);
    EXPECT_EQ(loaded->project.kept.elements.size(), 1u);
    ASSERT_EQ(loaded->project.components.size(), 1u);
    EXPECT_EQ(loaded->project.components[0].kept.attributes[0].second, "red");
    EXPECT_THAT(loaded->project.components[0].kept.elements[0],
                HasSubstr("<![CDATA[and <this>]]>"));
    const auto written = write(loaded->project);
    ASSERT_TRUE(written);
    EXPECT_EQ(*written, text);
}

TEST(Newer, WhatIsKnownCanBeChangedAndTheRestStays) {
    auto loaded =
        parse(contents(CUTWATER_SOURCE_DIR "/tests/models/document/newer/future.cutwater"));
    ASSERT_TRUE(loaded);
    loaded->project.components[0].name = "fuel pump";
    loaded->project.components.emplace_back().id = "b";
    const auto written = write(loaded->project);
    ASSERT_TRUE(written);
    EXPECT_THAT(*written, HasSubstr("version=\"1.7\""));
    EXPECT_THAT(*written, HasSubstr("<name>fuel pump</name>"));
    EXPECT_THAT(*written, HasSubstr("    <line n=\"1\">kept  as it is &amp; &lt;so&gt;</line>"));
    EXPECT_THAT(*written, HasSubstr("<staggered>true</staggered>"));
    EXPECT_THAT(*written, HasSubstr("until=\"port\""));
}

TEST(Newer, SameContentUnderOurVersionIsAMistake) {
    std::string text = contents(CUTWATER_SOURCE_DIR "/tests/models/document/newer/future.cutwater");
    text.replace(text.find("1.7"), 3, "1.1");
    const auto loaded = parse(text);
    ASSERT_FALSE(loaded);
    // Each attribute and element that is kept above is a problem here.
    EXPECT_EQ(loaded.problems().size(), 17u); // 9 attributes, 8 elements
    for (const project::Problem& problem : loaded.problems()) {
        EXPECT_THAT(problem.what, HasSubstr("unknown "));
        EXPECT_GT(problem.line, 0);
    }
}

TEST(Newer, WhatCannotBeKeptIsRefusedNotLost) {
    for (const char* inside :
         {"<events><event id='e' kind='triggered'/></events>",
          "<project><name language='en'>x</name></project>",
          "<project><name>a<b/>c</name></project>",
          "<gates><gate id='g' kind='or'><input ref='e' port='1'/></gate></gates>"}) {
        const auto loaded = parse(std::string("<cutwater version='1.4'>") + inside + "</cutwater>");
        ASSERT_FALSE(loaded) << inside;
        EXPECT_THAT(loaded.problems()[0].remedy, HasSubstr("version 1.4")) << inside;
        EXPECT_THAT(loaded.problems()[0].remedy, HasSubstr("newer")) << inside;
    }
}

TEST(Newer, MajorVersionIsRefusedWithOneSentence) {
    const auto loaded = parse("<cutwater version=\"2.0\">\n<nothing/><we/>know</cutwater>");
    ASSERT_FALSE(loaded);
    ASSERT_EQ(loaded.problems().size(), 1u);
    EXPECT_EQ(toSentence(loaded.problems()[0], "a.cutwater"),
              "a.cutwater:1: error: the file is of version 2.0, which is newer than this program's "
              "1.1; open it with a newer Cutwater.");
}

TEST(Newer, VersionsThatAreNone) {
    for (const char* version : {"", "1", "1.", ".0", "1.0.0", "one", "-1.0", "1.-1", "0.9", "1.x",
                                "99999999999.0", "1.99999999999", " 1.0"})
        EXPECT_FALSE(parse(fileOfVersion(version))) << version;
    EXPECT_TRUE(parse(fileOfVersion("1.0")));
    EXPECT_TRUE(parse(fileOfVersion("1.12")));
    const auto missing = parse("<cutwater/>");
    ASSERT_FALSE(missing);
    ASSERT_EQ(missing.problems().size(), 1u);
    EXPECT_THAT(missing.problems()[0].remedy, HasSubstr("version=\"1.1\""));
}

} // namespace cutwater::document
