// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold of every diagram, whichever sheets it is cut into.
#include "app/drawing/diagram.h"
#include "app/drawing/sheet_frame.h"
#include "tests/app/drawing/samples.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <map>
#include <set>

namespace cutwater {
namespace {

using drawing::Box;
using drawing::Diagram;
using drawing::DrawnBox;
using drawing::Group;
using drawing::ItemRole;
using drawing::Sheet;
using drawing::SymbolKind;
using drawing::Text;
using drawing::Wishes;
using project::Project;
using ::testing::HasSubstr;

Diagram drawn(const Project& project, const Wishes& wishes = {}) {
    const sdk::Answer<Diagram> answer = test::drawTop(project, wishes);
    for (const project::Problem& problem : answer.problems)
        ADD_FAILURE() << problem.what << "; " << problem.remedy;
    return answer.content.value_or(Diagram{});
}

std::vector<Project> variety() {
    return {test::everySymbol(),         test::randomProject(1, 12), test::randomProject(2, 90),
            test::randomProject(3, 300), test::wideGate(1),          test::wideGate(45),
            test::chainOfGates(40)};
}

bool apart(const Box& a, const Box& b) {
    return a.right() < b.left || b.right() < a.left || a.bottom() < b.top || b.bottom() < a.top;
}

// Text and lines of the tree, for "nothing lies outside".
Box extent(const Text& text) {
    const double left = text.anchor == drawing::Anchor::start    ? text.at.x
                        : text.anchor == drawing::Anchor::middle ? text.at.x - text.width / 2
                                                                 : text.at.x - text.width;
    return {left, text.at.y - text.size * 0.8, text.width, text.size};
}

TEST(Diagram, EveryNodeIsDrawnOnOneSheetAsItself) {
    for (const Project& project : variety()) {
        std::map<std::string, int> times;
        for (const Sheet& sheet : drawn(project).sheets)
            for (const DrawnBox& box : sheet.boxes)
                if (!box.transfer && box.role == ItemRole::itself) ++times[box.node];
        for (const project::Event& event : project.events)
            EXPECT_EQ(times[event.id], 1) << project.name << ": " << event.id;
        for (const project::Gate& gate : project.gates)
            EXPECT_EQ(times[gate.id], 1) << project.name << ": " << gate.id;
    }
}

TEST(Diagram, EveryInputOfEveryGateIsShown) {
    for (const Project& project : variety()) {
        std::map<std::string, std::size_t> shown, wanted;
        for (const Sheet& sheet : drawn(project).sheets)
            for (const DrawnBox& box : sheet.boxes)
                if (box.role != ItemRole::continuation) ++shown[box.node];
        for (const project::Gate& gate : project.gates) {
            for (const project::Reference& input : gate.inputs)
                ++wanted[input.id];
            if (!gate.condition.id.empty()) ++wanted[gate.condition.id];
        }
        // The root of a sheet stands there and as a transfer on the sheet it was cut from.
        for (const auto& [node, count] : wanted)
            EXPECT_GE(shown[node], count) << project.name << ": " << node;
    }
}

TEST(Diagram, TransfersPointToEachOther) {
    for (const Project& project : variety()) {
        const Diagram diagram = drawn(project);
        std::map<std::string, const DrawnBox*> home;
        std::map<std::string, int> homeSheet;
        std::map<std::string, std::set<int>> pointing;
        for (const Sheet& sheet : diagram.sheets)
            for (const DrawnBox& box : sheet.boxes) {
                if (box.role == ItemRole::continuation) continue;
                if (box.transfer) {
                    pointing[box.node].insert(sheet.number);
                } else {
                    home[box.node] = &box;
                    homeSheet[box.node] = sheet.number;
                }
            }
        for (const Sheet& sheet : diagram.sheets)
            for (const DrawnBox& box : sheet.boxes)
                if (box.transfer && box.role != ItemRole::continuation) {
                    EXPECT_EQ(box.sheet, homeSheet[box.node]) << box.node;
                }
        for (const auto& [node, box] : home)
            EXPECT_EQ(std::set<int>(box->usedOn.begin(), box->usedOn.end()), pointing[node])
                << project.name << ": " << node;
    }
}

TEST(Diagram, EverySheetButTheFirstIsReachedFromAnother) {
    for (const Project& project : variety()) {
        const Diagram diagram = drawn(project);
        std::set<int> reached{1};
        for (const Sheet& sheet : diagram.sheets)
            for (const DrawnBox& box : sheet.boxes)
                if (box.transfer) reached.insert(box.sheet);
        EXPECT_EQ(reached.size(), diagram.sheets.size()) << project.name;
    }
}

TEST(Diagram, TypeIsNeverBelowTheSmallestOnAnyPaper) {
    for (const Project& project : variety())
        for (const drawing::Paper paper : {drawing::Paper::a4, drawing::Paper::a3})
            for (const drawing::Orientation orientation :
                 {drawing::Orientation::automatic, drawing::Orientation::portrait,
                  drawing::Orientation::landscape}) {
                Wishes wishes;
                wishes.paper = paper;
                wishes.orientation = orientation;
                for (const Sheet& sheet : drawn(project, wishes).sheets)
                    EXPECT_GE(smallestType(sheet.picture), drawing::kSmallestType - 1e-6)
                        << project.name << " sheet " << sheet.number;
            }
}

TEST(Diagram, PaperHasTheSizeThatWasAskedFor) {
    Wishes wishes;
    wishes.paper = drawing::Paper::a3;
    wishes.orientation = drawing::Orientation::portrait;
    const Diagram diagram = drawn(test::randomProject(2, 40), wishes);
    EXPECT_NEAR(diagram.sheets.at(0).picture.width, 297 / 25.4 * 72, 1e-6);
    EXPECT_NEAR(diagram.sheets.at(0).picture.height, 420 / 25.4 * 72, 1e-6);
}

TEST(Diagram, BoxesAreApartAndInsideThePaper) {
    for (const Project& project : variety())
        for (const Sheet& sheet : drawn(project).sheets)
            for (std::size_t a = 0; a < sheet.boxes.size(); ++a) {
                const Box& box = sheet.boxes[a].place;
                EXPECT_GT(box.left, 28) << sheet.boxes[a].node;
                EXPECT_GT(box.top, 28) << sheet.boxes[a].node;
                EXPECT_LT(box.right(), sheet.picture.width - 28) << sheet.boxes[a].node;
                EXPECT_LT(box.bottom(), sheet.picture.height - 28) << sheet.boxes[a].node;
                for (std::size_t b = a + 1; b < sheet.boxes.size(); ++b)
                    EXPECT_TRUE(apart(box, sheet.boxes[b].place))
                        << project.name << " sheet " << sheet.number << ": " << sheet.boxes[a].node
                        << " and " << sheet.boxes[b].node;
            }
}

TEST(Diagram, NoTextLiesOnAnotherOrOutsideTheFrame) {
    for (const Project& project : variety())
        for (const Sheet& sheet : drawn(project).sheets) {
            std::vector<std::pair<Box, std::string>> texts;
            for (const Group& group : sheet.picture.groups)
                for (const drawing::Mark& mark : group.marks)
                    if (const Text* text = std::get_if<Text>(&mark))
                        texts.emplace_back(extent(*text), text->words);
            for (std::size_t a = 0; a < texts.size(); ++a) {
                EXPECT_GT(texts[a].first.left, 28) << texts[a].second;
                EXPECT_LT(texts[a].first.right(), sheet.picture.width - 28) << texts[a].second;
                EXPECT_LT(texts[a].first.bottom(), sheet.picture.height - 28) << texts[a].second;
                for (std::size_t b = a + 1; b < texts.size(); ++b)
                    EXPECT_TRUE(apart(texts[a].first, texts[b].first))
                        << project.name << " sheet " << sheet.number << ": '" << texts[a].second
                        << "' and '" << texts[b].second << "'";
            }
        }
}

TEST(Diagram, TheFrameSaysWhatASheetMustSay) {
    const Diagram diagram = drawn(test::randomProject(2, 90));
    ASSERT_GT(diagram.sheets.size(), 1u);
    for (const Sheet& sheet : diagram.sheets) {
        std::string all;
        for (const Group& group : sheet.picture.groups)
            for (const drawing::Mark& mark : group.marks)
                if (const Text* text = std::get_if<Text>(&mark)) all += text->words + "\n";
        EXPECT_THAT(all, HasSubstr(std::to_string(sheet.number) + " of " +
                                   std::to_string(diagram.sheets.size())));
        EXPECT_THAT(all, HasSubstr("Random tree"));
        EXPECT_THAT(all, HasSubstr("Boiler stops"));
        EXPECT_THAT(all, HasSubstr("2026-03-01"));
        EXPECT_THAT(all, HasSubstr("This sheet helps thinking. It replaces no maker's manual"));
    }
}

TEST(Diagram, TheLegendExplainsTheSymbolsOfTheSheet) {
    for (const Sheet& sheet : drawn(test::everySymbol()).sheets) {
        std::string legend;
        for (const Group& group : sheet.picture.groups)
            for (const drawing::Mark& mark : group.marks)
                if (const Text* text = std::get_if<Text>(&mark); text && group.id == "legend")
                    legend += text->words + "\n";
        for (const DrawnBox& box : sheet.boxes)
            EXPECT_THAT(legend, HasSubstr(drawing::legendOf(box.symbol)));
    }
}

TEST(Diagram, ASharedGateIsDrawnOnceAndReferredToElsewhere) {
    Project project = test::everySymbol();
    project.gates[1].inputs.push_back({"G-vote", {}}); // already an input of the top
    const Diagram diagram = drawn(project);
    int transfers = 0;
    for (const Sheet& sheet : diagram.sheets)
        for (const DrawnBox& box : sheet.boxes)
            if (box.node == "G-vote" && box.transfer) ++transfers;
    EXPECT_GE(transfers, 1);
}

TEST(Diagram, MarkedNodesAreHeavierAndHaveADotNotOnlyAnotherColour) {
    Wishes wishes;
    wishes.marked = {"e-s1"};
    const Diagram diagram = drawn(test::everySymbol(), wishes);
    std::map<std::string, double> heaviest;
    std::map<std::string, std::size_t> marks;
    for (const Sheet& sheet : diagram.sheets)
        for (const Group& group : sheet.picture.groups)
            for (const drawing::Mark& mark : group.marks) {
                if (group.kind != "event") continue;
                ++marks[group.node];
                if (const drawing::Path* path = std::get_if<drawing::Path>(&mark))
                    heaviest[group.node] = std::max(heaviest[group.node], path->width);
            }
    EXPECT_GT(heaviest["e-s1"], 2 * heaviest["e-s2"]);
    EXPECT_EQ(marks["e-s1"], marks["e-s2"] + 1);
}

TEST(Diagram, ValuesStandAtTheirEvents) {
    Wishes wishes;
    wishes.values = {{"e-s1", "2.10e-04"}};
    bool found = false;
    for (const Sheet& sheet : drawn(test::everySymbol(), wishes).sheets)
        for (const Group& group : sheet.picture.groups)
            for (const drawing::Mark& mark : group.marks)
                if (const Text* text = std::get_if<Text>(&mark))
                    if (text->words == "2.10e-04") {
                        EXPECT_EQ(group.node, "e-s1");
                        found = true;
                    }
    EXPECT_TRUE(found);
}

TEST(Diagram, TwoThousandEventsTakeSeconds) {
    const auto start = std::chrono::steady_clock::now();
    const Diagram diagram = drawn(test::randomProject(5, 2000));
    EXPECT_GT(diagram.sheets.size(), 50u);
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(60));
}

TEST(Diagram, AChainOfAHundredThousandGatesIsRefusedWithAWayOut) {
    const sdk::Answer<Diagram> answer = test::drawTop(test::chainOfGates(100000));
    EXPECT_EQ(answer.ending, sdk::Ending::overLimit);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("60000"));
    EXPECT_THAT(answer.problems[0].remedy, HasSubstr("lower gate"));
}

TEST(Diagram, MoreSheetsThanAllowedAreRefusedWithTheirNumber) {
    Wishes wishes;
    wishes.maxSheets = 3;
    const sdk::Answer<Diagram> answer = test::drawTop(test::chainOfGates(200), wishes);
    EXPECT_EQ(answer.ending, sdk::Ending::overLimit);
    EXPECT_THAT(answer.problems.at(0).what, HasSubstr("more than 3"));
}

TEST(Diagram, AnEventAloneIsATree) {
    Project project = test::everySymbol();
    project.tops[0].node.id = "e-s1";
    const Diagram diagram = drawn(project);
    ASSERT_EQ(diagram.sheets.size(), 1u);
    ASSERT_EQ(diagram.sheets[0].boxes.size(), 1u);
    EXPECT_EQ(diagram.sheets[0].boxes[0].symbol, SymbolKind::basic);
}

TEST(Diagram, ALoopEndsInATransferAndAMissingNodeInASentence) {
    Project loop = test::chainOfGates(3);
    loop.gates.back().inputs.push_back({"G-0", {}});
    EXPECT_EQ(drawn(loop).sheets.size(), 1u);

    Project missing = test::chainOfGates(3);
    missing.gates.back().inputs.push_back({"nowhere", {}});
    const sdk::Answer<Diagram> answer = test::drawTop(missing);
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    EXPECT_THAT(answer.problems.at(0).what, HasSubstr("nowhere"));
    EXPECT_THAT(answer.problems.at(0).where, HasSubstr("G-2"));
}

} // namespace
} // namespace cutwater
