// SPDX-License-Identifier: GPL-3.0-or-later
// What lies at the top, and what every text file keeps to: licence line, size, no paths of one
// machine.
#include "tests/house/source_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <cstring>
#include <regex>
#include <set>

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

constexpr std::size_t kLargestSource = 20'000; // bytes; aim at 15,000

using Paths = std::vector<std::string>;

Paths strangersAtTheTop(const Paths& files) {
    static const std::set<std::string> known{"CMakeLists.txt", "CMakePresets.json",
                                             "README.md",      "DEVELOPERS.md",
                                             "LICENSE",        "app",
                                             "plugins",        "models",
                                             "tests",          "docs",
                                             "share"};
    Paths found;
    for (const std::string& file : files) {
        const std::string name = file.substr(0, file.find('/'));
        if (!name.starts_with(".") && !known.contains(name) &&
            (found.empty() || found.back() != name))
            found.push_back(name);
    }
    return found;
}

bool needsLicenceLine(const std::string& file, const std::string& text) {
    return house::isCode(file) || file.ends_with("CMakeLists.txt") || file.ends_with(".cmake") ||
           file.ends_with(".sh") || text.starts_with("#!");
}

bool hasLicenceLine(const std::string& text) {
    const auto all = house::lines(text);
    const std::size_t line = text.starts_with("#!") ? 1 : 0;
    return all.size() > line &&
           all[line].find("SPDX-License-Identifier: GPL-3.0-or-later") != std::string::npos;
}

// The first path that only one machine has. Tests may name the system's folder for temporary files.
std::string machinePath(const std::string& file, const std::string& text) {
    static const std::string home = "/ho"
                                    "me/",
                             root = "/ro"
                                    "ot/",
                             work = "/wo"
                                    "rk/",
                             temporary = "/tm"
                                         "p/";
    for (const std::string& path : {home, root, work, temporary}) {
        if (path == temporary && file.starts_with("tests/")) continue;
        for (auto at = text.find(path); at != std::string::npos; at = text.find(path, at + 1)) {
            const unsigned char before = at > 0 ? text[at - 1] : ' ';
            if (!std::isalnum(before) && !std::strchr("./-_}", before)) return path;
        }
    }
    return "";
}

const Paths& tree() {
    static const Paths files = house::filesUnder(CUTWATER_SOURCE_DIR);
    return files;
}

std::string textOf(const std::string& file) {
    return house::readText(fs::path(CUTWATER_SOURCE_DIR) / file);
}

} // namespace

TEST(Top, HoldsTheAgreedThingsOnly) {
    EXPECT_THAT(strangersAtTheTop(tree()), IsEmpty());
    for (const char* name : {"README.md", "DEVELOPERS.md", "LICENSE", ".ci/run"})
        EXPECT_TRUE(fs::exists(fs::path(CUTWATER_SOURCE_DIR) / name)) << name;
}

TEST(Top, AStrangerIsFound) {
    EXPECT_THAT(strangersAtTheTop({".gitignore", "README.md", "app/cli/main.cpp", "tools/a",
                                   "tools/b", "notes.txt"}),
                ElementsAre("tools", "notes.txt"));
}

TEST(Top, BuildFoldersAndGitAreNotLookedAt) {
    house::TemporaryFolder folder;
    folder.plant("build/dev/a.txt", "");
    folder.plant("build-x/a.txt", "");
    folder.plant(".git/config", "");
    folder.plant("app/build/a.txt", "");
    folder.plant(".ci/run", "");
    EXPECT_THAT(house::filesUnder(folder.path()), ElementsAre(".ci/run", "app/build/a.txt"));
}

TEST(Licence, StandsInEverySource) {
    Paths without;
    for (const std::string& file : tree())
        if (const std::string text = textOf(file);
            needsLicenceLine(file, text) && !hasLicenceLine(text))
            without.push_back(file);
    EXPECT_THAT(without, IsEmpty());
}

TEST(Licence, AMissingLineIsFound) {
    EXPECT_TRUE(needsLicenceLine("a.cpp", ""));
    EXPECT_TRUE(needsLicenceLine("run", "#!/bin/sh\n"));
    EXPECT_FALSE(needsLicenceLine("a.md", "# A\n"));
    EXPECT_FALSE(hasLicenceLine("int x;\n"));
    EXPECT_FALSE(hasLicenceLine("#!/bin/sh\necho\n"));
    EXPECT_TRUE(hasLicenceLine("#!/bin/sh\n# SPDX-License-Identifier: GPL-3.0-or-later\n"));
}

TEST(Size, SourcesStayShort) {
    Paths large;
    for (const std::string& file : tree())
        if (house::isCode(file) &&
            fs::file_size(fs::path(CUTWATER_SOURCE_DIR) / file) > kLargestSource)
            large.push_back(file);
    EXPECT_THAT(large, IsEmpty()) << "split them: one idea in each file";
}

TEST(Paths, OfOneMachineStandNowhere) {
    Paths found;
    for (const std::string& file : tree())
        if (const std::string path = machinePath(file, textOf(file)); !path.empty())
            found.push_back(file + " names " + path);
    EXPECT_THAT(found, IsEmpty());
}

TEST(Paths, APlantedOneIsFound) {
    const std::string home = "/ho"
                             "me/someone",
                      temporary = "\"/tm"
                                  "p/x\"";
    EXPECT_EQ(machinePath("app/cli/a.cpp", "open(\"" + home + "\")"), "/ho"
                                                                      "me/");
    EXPECT_EQ(machinePath("app/cli/a.cpp", temporary), "/tm"
                                                       "p/");
    EXPECT_EQ(machinePath("tests/cli/a.cpp", temporary), "");
    EXPECT_EQ(machinePath("docs/a.md", "see example.org" + home + " and docs" + home), "");
}
