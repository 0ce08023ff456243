// SPDX-License-Identifier: GPL-3.0-or-later
// The libraries keep the same directions as the includes. CMake writes the list that is read here.
#include "tests/house/include_rules.h"
#include "tests/house/source_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <regex>

using testing::ElementsAre;
using testing::IsEmpty;

namespace {

// Lines "folder|target|libraries" to breaches, one sentence each.
std::vector<std::string> linkBreaches(const std::string& list) {
    struct Target {
        std::string room, name, libraries;
    };
    static const std::regex pattern(R"(([^|]*)\|([^|]*)\|(.*))");
    std::vector<Target> targets;
    std::map<std::string, std::string> roomOfTarget;
    for (const std::string& line : house::lines(list)) {
        std::smatch match;
        if (!std::regex_match(line, match, pattern)) continue;
        targets.push_back({house::roomOf(match.str(1) + "/"), match[2], match[3]});
        roomOfTarget[match[2]] = targets.back().room;
    }
    static const std::regex word(R"([A-Za-z0-9_]+(::[A-Za-z0-9_]+)?)");
    std::vector<std::string> found;
    for (const Target& target : targets) {
        std::set<std::string> libraries; // each once, though a public one stands in two lists
        for (std::sregex_iterator it(target.libraries.begin(), target.libraries.end(), word), end;
             it != end; ++it)
            libraries.insert(std::regex_replace(it->str(), std::regex("^Cutwater::"), "cutwater_"));
        for (const std::string& library : libraries) {
            const auto ours = roomOfTarget.find(library);
            const bool allowed = ours != roomOfTarget.end()
                                     ? house::mayInclude(target.room, ours->second)
                                 : library.starts_with("Qt6::")
                                     ? house::mayUseQt(target.room, "Qt" + library.substr(5))
                                     : true;
            if (!allowed) found.push_back(target.name + " may not link " + library);
        }
    }
    return found;
}

} // namespace

TEST(LinkRules, TheTargetsKeepThem) {
    const std::string list = house::readText(CUTWATER_LINKS_FILE);
    EXPECT_THAT(list, testing::HasSubstr("models/logic|cutwater_logic|"));
    EXPECT_THAT(linkBreaches(list), IsEmpty());
}

TEST(LinkRules, PlantedBreachesAreFound) {
    EXPECT_THAT(linkBreaches("models/project|cutwater_project|fmt::fmt\n"
                             "models/logic|cutwater_logic|Cutwater::project $<BUILD_INTERFACE:x>\n"
                             "models/document|cutwater_document|cutwater_project Qt6::Core\n"
                             "plugins/sdk|cutwater_sdk|cutwater_project Qt6::Core Qt6::Gui\n"
                             "plugins/sums|plugin_sums|cutwater_sdk $<LINK_ONLY:cutwater_face>\n"
                             "app/drawing|cutwater_face|cutwater_sdk Qt6::Gui\n"),
                ElementsAre("cutwater_logic may not link cutwater_project",
                            "cutwater_document may not link Qt6::Core",
                            "cutwater_sdk may not link Qt6::Gui",
                            "plugin_sums may not link cutwater_face"));
}
