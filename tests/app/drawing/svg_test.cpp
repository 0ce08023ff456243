// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/svg.h"
#include "tests/app/drawing/samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <pugixml.hpp>

#include <set>

namespace cutwater {
namespace {

using drawing::Picture;
using drawing::toSvg;
using ::testing::HasSubstr;
using ::testing::Not;

std::vector<Picture> pictures(const project::Project& project) {
    std::vector<Picture> result;
    const auto answer = test::drawTop(project);
    if (answer.content)
        for (const drawing::Sheet& sheet : answer.content->sheets)
            result.push_back(sheet.picture);
    EXPECT_FALSE(result.empty());
    return result;
}

TEST(Svg, IsWellFormedAndHoldsEveryNode) {
    std::set<std::string> nodes;
    const project::Project project = test::everySymbol();
    for (const Picture& picture : pictures(project)) {
        pugi::xml_document document;
        const std::string svg = toSvg(picture);
        const auto parsed = document.load_buffer(svg.data(), svg.size());
        ASSERT_TRUE(parsed) << parsed.description();
        std::set<std::string> ids;
        for (const pugi::xpath_node& found : document.select_nodes("//g")) {
            const pugi::xml_node group = found.node();
            EXPECT_TRUE(ids.insert(group.attribute("id").value()).second)
                << group.attribute("id").value() << " twice";
            const std::string kind = group.attribute("class").value();
            if (kind == "event" || kind == "gate") {
                nodes.insert(group.attribute("data-node").value());
                EXPECT_STRNE(group.child("title").text().get(), "");
                EXPECT_STRNE(group.child("desc").text().get(), "");
            }
        }
        EXPECT_STRNE(document.child("svg").child("title").text().get(), "");
        EXPECT_STRNE(document.child("svg").child("desc").text().get(), "");
    }
    for (const project::Event& event : project.events)
        EXPECT_TRUE(nodes.contains(event.id)) << event.id;
    for (const project::Gate& gate : project.gates)
        EXPECT_TRUE(nodes.contains(gate.id)) << gate.id;
}

TEST(Svg, NamesComeBackAsTheyWere) {
    const project::Project project = test::everySymbol();
    const std::string svg = toSvg(pictures(project).front());
    pugi::xml_document document;
    ASSERT_TRUE(document.load_buffer(svg.data(), svg.size()));
    const pugi::xml_node top = document.select_node("//g[@data-node='G-top']").node();
    EXPECT_EQ(std::string(top.child("title").text().get()), project.gates[0].name + " (G-top)");
    std::string words;
    for (const pugi::xml_node text : top.children("text"))
        words += std::string(text.text().get()) + " ";
    EXPECT_EQ(words, project.gates[0].name + " G-top ");
}

TEST(Svg, IsTheSameEveryTime) {
    const project::Project project = test::randomProject(4, 60);
    const std::vector<Picture> first = pictures(project), second = pictures(project);
    ASSERT_EQ(first.size(), second.size());
    for (std::size_t i = 0; i < first.size(); ++i)
        EXPECT_EQ(toSvg(first[i]), toSvg(second[i]));
}

TEST(Svg, CharactersThatXmlForbidsAreReplaced) {
    Picture picture;
    picture.width = picture.height = 10;
    drawing::Text text;
    text.words = std::string("a\x01"
                             "b\xFF"
                             "c\xC3(d\xEF\xBF\xBF"
                             "e\xED\xA0\x80"
                             "f\xC3\xA4");
    drawing::Group group;
    group.id = "g";
    group.title = "\"<&>\"";
    drawing::add(group.marks, text);
    picture.groups.push_back(group);
    const std::string svg = toSvg(picture);
    EXPECT_THAT(svg, Not(HasSubstr("\x01")));
    EXPECT_THAT(svg, Not(HasSubstr("\xFF")));
    EXPECT_THAT(svg, HasSubstr("&quot;&lt;&amp;&gt;&quot;"));
    pugi::xml_document document;
    ASSERT_TRUE(document.load_buffer(svg.data(), svg.size()));
    const std::string back = document.select_node("//text").node().text().get();
    EXPECT_EQ(back, "a\xEF\xBF\xBD"
                    "b\xEF\xBF\xBD"
                    "c\xEF\xBF\xBD(d\xEF\xBF\xBD\xEF\xBF\xBD"
                    "\xEF\xBF\xBD"
                    "e\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD"
                    "f\xC3\xA4");
}

TEST(Svg, NumbersAreShort) {
    Picture picture;
    picture.width = 100;
    picture.height = 0.1 + 0.2;
    EXPECT_THAT(toSvg(picture), HasSubstr("viewBox=\"0 0 100 0.3\""));
}

} // namespace
} // namespace cutwater
