// SPDX-License-Identifier: GPL-3.0-or-later
// The host against good plug-ins, bad ones, and files that are none.
#include "plugins/sdk/host.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <random>

namespace fs = std::filesystem;
using namespace cutwater;
using sdk::PluginKind;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

fs::path fixture(const std::string& id) {
    return fs::path(CUTWATER_FIXTURES) / id / (id + ".so");
}

std::string bytesOf(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

class HostTest : public testing::Test {
protected:
    fs::path folder;

    void SetUp() override {
        std::string pattern = (fs::temp_directory_path() / "cutwater-host-XXXXXX").string();
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        folder = pattern;
    }
    void TearDown() override { fs::remove_all(folder); }

    void put(const std::string& id, const std::string& as = {}) {
        fs::copy_file(fixture(id), folder / (as.empty() ? id + ".so" : as));
    }
    void write(const std::string& name, const std::string& bytes) {
        std::ofstream(folder / name, std::ios::binary) << bytes;
    }
    // The one sentence about the one file that is left out.
    std::string onlyRejection(sdk::Host& host) {
        EXPECT_EQ(host.rejected().size(), 1u);
        return host.rejected().empty() ? "" : host.rejected().front().sentence;
    }
    std::string rejectionOf(const std::string& id) {
        put(id);
        sdk::Host host({folder.string()});
        EXPECT_TRUE(host.plugins().empty());
        const std::string sentence = onlyRejection(host);
        EXPECT_THAT(sentence, HasSubstr(id + ".so"));
        EXPECT_EQ(sentence.back(), '.');
        return sentence;
    }
};

} // namespace

TEST_F(HostTest, AGoodPlugInIsKnownByItsMetadataAndWorks) {
    put("fixture-good");
    sdk::Host host({folder.string()});
    ASSERT_EQ(host.plugins().size(), 1u);
    const sdk::PluginFacts& facts = host.plugins().front();
    EXPECT_EQ(facts.id, "fixture-good");
    EXPECT_EQ(facts.kind, PluginKind::analysis);
    EXPECT_EQ(facts.version, "1.2.3");
    EXPECT_EQ(facts.summary, "A plug-in for the tests.");
    EXPECT_TRUE(host.rejected().empty());

    sdk::Analysis* const analysis = host.analysis("fixture-good");
    ASSERT_NE(analysis, nullptr);
    EXPECT_EQ(host.analysis("fixture-good"), analysis); // loaded once
    project::Project project;
    project.name = "X";
    const auto answer = sdk::runGuarded(*analysis, facts, project, {}, {});
    ASSERT_TRUE(answer.content);
    EXPECT_EQ(answer.content->title, "What X was given");
    EXPECT_EQ(host.layout("fixture-good"), nullptr);
    EXPECT_EQ(host.analysis("no-such"), nullptr);
}

TEST_F(HostTest, OfTwoWithOneIdTheFirstInTheAlphabetIsUsed) {
    put("fixture-double", "b.so");
    put("fixture-good", "a.so");
    sdk::Host host({folder.string()});
    ASSERT_EQ(host.plugins().size(), 1u);
    EXPECT_THAT(host.plugins()[0].file, HasSubstr("a.so"));
    const std::string sentence = onlyRejection(host);
    EXPECT_THAT(sentence, HasSubstr("b.so"));
    EXPECT_THAT(sentence, HasSubstr("another analysis with the id 'fixture-good'"));
}

TEST_F(HostTest, AFolderThatIsNamedTwiceIsOneFolder) {
    put("fixture-good");
    sdk::Host host({folder.string(), folder.string() + "/."});
    EXPECT_EQ(host.plugins().size(), 1u);
    EXPECT_TRUE(host.rejected().empty());
}

TEST_F(HostTest, OnlyTheGivenFoldersAreLookedInto) {
    fs::create_directory(folder / "below");
    fs::copy_file(fixture("fixture-good"), folder / "below" / "good.so");
    sdk::Host host({folder.string()});
    EXPECT_TRUE(host.plugins().empty());
    EXPECT_TRUE(host.rejected().empty());
}

TEST_F(HostTest, OneThatThrowsWhenMadeIsLeftOutAndTheRestGoesOn) {
    put("fixture-throws-when-made");
    put("fixture-good");
    sdk::Host host({folder.string()});
    EXPECT_EQ(host.plugins().size(), 2u); // its metadata is right: nothing was run yet
    EXPECT_TRUE(host.rejected().empty());
    EXPECT_EQ(host.analysis("fixture-throws-when-made"), nullptr);
    EXPECT_THAT(onlyRejection(host), HasSubstr("no licence for this ship"));
    EXPECT_EQ(host.analysis("fixture-throws-when-made"), nullptr); // not tried, not said again
    EXPECT_EQ(host.rejected().size(), 1u);
    EXPECT_NE(host.analysis("fixture-good"), nullptr);
}

TEST_F(HostTest, OneThatIsNotWhatItSaysIsLeftOut) {
    put("fixture-hollow");
    sdk::Host host({folder.string()});
    EXPECT_EQ(host.analysis("fixture-hollow"), nullptr);
    EXPECT_THAT(onlyRejection(host), HasSubstr("does not implement the analysis interface"));
}

TEST_F(HostTest, AnotherInterfaceVersionIsNamed) {
    const std::string sentence = rejectionOf("fixture-old-interface");
    EXPECT_THAT(sentence, HasSubstr("cutwater.Analysis/0"));
    EXPECT_THAT(sentence, HasSubstr(CUTWATER_ANALYSIS_IID));
}

TEST_F(HostTest, APlugInOfAnotherProgram) {
    EXPECT_THAT(rejectionOf("fixture-stranger"), HasSubstr("org.example.ImageFilter/2"));
}

TEST_F(HostTest, MetadataWithoutALine) {
    EXPECT_THAT(rejectionOf("fixture-no-summary"), HasSubstr("no \"summary\""));
}

TEST_F(HostTest, AnIdThatCannotBeTyped) {
    EXPECT_THAT(rejectionOf("fixture-bad-id"), HasSubstr("'Bad Id!'"));
}

TEST_F(HostTest, MetadataThatContradictsTheCode) {
    EXPECT_THAT(rejectionOf("fixture-wrong-word"), HasSubstr("interface 'layout'"));
}

TEST_F(HostTest, ASharedLibraryWithoutMetadata) {
    EXPECT_THAT(rejectionOf("fixture-plain"), HasSubstr("not a plug-in"));
}

TEST_F(HostTest, FilesThatAreNoLibraries) {
    write("1-text.so", "I am a text file.\n");
    write("2-empty.so", "");
    std::mt19937 random(7);
    std::string noise(100'000, '\0');
    for (char& c : noise)
        c = static_cast<char>(random());
    write("3-random.so", noise);
    write("4-torn.so", bytesOf(fixture("fixture-good")).substr(0, 3000));
    write("5-header.so", std::string("\x7f"
                                     "ELF\2\1\1",
                                     7) +
                             noise);
    fs::create_symlink("/nowhere/at/all", folder / "6-dead-link.so");
    ASSERT_EQ(mkfifo((folder / "7-pipe.so").c_str(), 0600), 0);
    write("readme.txt", "not called like a plug-in: nobody's business");
    sdk::Host host({folder.string()});
    EXPECT_TRUE(host.plugins().empty());
    ASSERT_EQ(host.rejected().size(), 7u);
    const char* reasons[] = {"not a plug-in", "empty",     "not a plug-in",     "not a plug-in",
                             "not a plug-in", "not there", "not a regular file"};
    for (std::size_t i = 0; i < 7; ++i)
        EXPECT_THAT(host.rejected()[i].sentence, HasSubstr(reasons[i])) << i;
}

TEST_F(HostTest, AnUnreadableFile) {
    if (geteuid() == 0) GTEST_SKIP() << "root may read everything";
    put("fixture-good");
    fs::permissions(folder / "fixture-good.so", fs::perms::none);
    sdk::Host host({folder.string()});
    EXPECT_THAT(onlyRejection(host), HasSubstr("may not be read"));
}

// Qt writes its version behind a mark into each plug-in: here one claims to come from Qt 6.99.
TEST_F(HostTest, APlugInForANewerQt) {
    std::string bytes = bytesOf(fixture("fixture-good"));
    const std::string mark("qt-project!\0\1\6", 14); // ELF note, version of the format, Qt's major
    const std::size_t at = bytes.find(mark);
    ASSERT_NE(at, std::string::npos);
    bytes[at + mark.size()] = 99; // and minor number
    write("newer.so", bytes);
    sdk::Host host({folder.string()});
    EXPECT_TRUE(host.plugins().empty());
    EXPECT_THAT(onlyRejection(host), HasSubstr("built for Qt 6.99"));
}

TEST_F(HostTest, AFolderThatIsNotThere) {
    sdk::Host host({(folder / "no-such").string()});
    EXPECT_TRUE(host.plugins().empty());
    EXPECT_THAT(onlyRejection(host), HasSubstr("no folder here"));
}

TEST_F(HostTest, TheOrderIsTheSameHoweverTheFolderIsFilled) {
    put("fixture-misbehaves");
    put("fixture-good");
    put("fixture-hollow");
    sdk::Host host({folder.string()});
    std::vector<std::string> ids;
    for (const sdk::PluginFacts& facts : host.plugins())
        ids.push_back(facts.id);
    EXPECT_THAT(ids, ElementsAre("fixture-good", "fixture-hollow", "fixture-misbehaves"));
}

TEST(StandardPluginFolder, IsTheInstalledOneWhereItIsThere) {
    std::string pattern = (fs::temp_directory_path() / "cutwater-place-XXXXXX").string();
    ASSERT_NE(mkdtemp(pattern.data()), nullptr);
    const fs::path prefix = pattern;
    fs::create_directories(prefix / "bin");
    EXPECT_EQ(sdk::standardPluginFolder((prefix / "bin").string()),
              (prefix / "plugins-out").string());
    fs::create_directories(prefix / "lib/cutwater/plugins");
    EXPECT_EQ(sdk::standardPluginFolder((prefix / "bin").string()),
              (prefix / "lib/cutwater/plugins").string());
    fs::remove_all(prefix);
}
