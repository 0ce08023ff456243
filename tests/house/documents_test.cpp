// SPDX-License-Identifier: GPL-3.0-or-later
// What the documents point at is there: links, scripts, the list of packages.
#include "tests/house/source_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <regex>
#include <set>
#include <sstream>

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

using Words = std::vector<std::string>;

std::string withoutCodeBlocks(const std::string& text) {
    std::string kept;
    bool code = false;
    for (const std::string& line : house::lines(text)) {
        if (line.starts_with("```"))
            code = !code;
        else if (!code)
            kept += line + "\n";
    }
    return kept;
}

// Targets of links in a Markdown text that point into the checkout, without their #anchors.
Words localLinks(const std::string& text) {
    static const std::regex pattern(R"(\]\(([^)\s]+)\))");
    const std::string prose = withoutCodeBlocks(text);
    Words found;
    for (std::sregex_iterator it(prose.begin(), prose.end(), pattern), end; it != end; ++it) {
        const std::string target = it->str(1).substr(0, it->str(1).find('#'));
        if (!target.empty() && target.find("://") == std::string::npos &&
            !target.starts_with("mailto:"))
            found.push_back(target);
    }
    return found;
}

Words deadLinks(const fs::path& top) {
    Words dead;
    for (const std::string& file : house::filesUnder(top)) {
        if (!file.ends_with(".md")) continue;
        for (const std::string& link : localLinks(house::readText(top / file)))
            if (!fs::exists((top / file).parent_path() / link))
                dead.push_back(file + " -> " + link);
    }
    return dead;
}

bool mayRun(const fs::path& file) {
    return fs::exists(file) &&
           (fs::status(file).permissions() & fs::perms::owner_exec) != fs::perms::none;
}

const fs::path top = CUTWATER_SOURCE_DIR;

} // namespace

TEST(Documents, LinksLeadSomewhere) {
    EXPECT_THAT(deadLinks(top), IsEmpty());
}

TEST(Documents, ADeadLinkIsFound) {
    house::TemporaryFolder folder;
    folder.plant("docs/a.md", "[b](b.md#part) [c](c.md) [d](https://example.org/) [e](#here)\n"
                              "```\n[f](f.md)\n```\n");
    folder.plant("docs/b.md", "");
    EXPECT_THAT(deadLinks(folder.path()), ElementsAre("docs/a.md -> c.md"));
}

TEST(Documents, ScriptsThatAreNamedCanBeRun) {
    static const std::regex pattern(R"(share/scripts/[a-z-]+(?![a-z.-]))");
    std::set<std::string> named;
    for (const char* file : {"README.md", "DEVELOPERS.md", ".ci/run"}) {
        const std::string text = house::readText(top / file);
        for (std::sregex_iterator it(text.begin(), text.end(), pattern), end; it != end; ++it)
            named.insert(it->str());
    }
    EXPECT_THAT(named, testing::IsSupersetOf({"share/scripts/demo", "share/scripts/test"}));
    for (const std::string& script : named)
        EXPECT_TRUE(mayRun(top / script)) << script;
    EXPECT_TRUE(mayRun(top / ".ci/run"));
}

TEST(Documents, EveryDecisionIsInTheIndex) {
    const std::string index = house::readText(top / "docs/decisions/README.md");
    for (const std::string& page : house::filesUnder(top / "docs/decisions"))
        EXPECT_TRUE(page == "README.md" || index.find("(" + page + ")") != std::string::npos)
            << page;
}

TEST(Packages, EachLineIsGroupNameAndPurpose) {
    std::set<std::string> names;
    for (const std::string& line :
         house::lines(house::readText(top / "share/scripts/packages.txt"))) {
        if (line.starts_with("#")) continue;
        std::istringstream words(line);
        std::string group, name, purpose;
        words >> group >> name >> purpose;
        EXPECT_THAT(group, testing::AnyOf("build", "test", "check", "extra")) << line;
        EXPECT_FALSE(purpose.empty()) << line;
        EXPECT_TRUE(names.insert(name).second) << name << " stands twice";
    }
    EXPECT_GT(names.size(), 10u);
}
