// SPDX-License-Identifier: GPL-3.0-or-later
// The diagram's values: folds, marked paths, search, drops, captions, inks.
#include "app/drawing/palette.h"
#include "app/editor/diagram/captions.h"
#include "app/editor/diagram/compose.h"
#include "app/editor/diagram/drop.h"
#include "app/editor/diagram/folds.h"
#include "app/editor/diagram/marked_path.h"
#include "app/editor/diagram/search.h"
#include "app/editor/diagram/walk.h"
#include "tests/app/editor/diagram/stage.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using namespace editor;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::UnorderedElementsAre;

std::shared_ptr<const Tree> treeOf(project::Project project, const project::Id& top = "T1") {
    auto tree = makeTree(std::make_shared<const project::Project>(std::move(project)), top);
    EXPECT_TRUE(tree);
    return tree ? *tree : nullptr;
}

Page pageOf(const Tree& tree, const Folds& folds = {}, const Captions& captions = {}) {
    const auto lettering = drawing::findLettering();
    EXPECT_TRUE(lettering);
    LabelCache labels;
    const test::Layout layout;
    auto page = composeTree(tree, folds, captions, *lettering, labels, layout, {});
    EXPECT_TRUE(page.content);
    return page.content.value_or(Page{});
}

std::size_t find(const Page& page, const std::string& node, const std::string& parent = {}) {
    for (std::size_t b = 0; b < page.boxes.size(); ++b)
        if (page.boxes[b].node == node && (parent.empty() || page.boxes[b].parent == parent))
            return b;
    return kNoBox;
}

TEST(TreeValue, CountsWhatLiesBelowAndHowOftenItIsUsed) {
    const auto tree = treeOf(test::smallTree());
    EXPECT_EQ(tree->times.at("a"), 2U);
    EXPECT_EQ(tree->times.at("y"), 2U);
    EXPECT_EQ(tree->eventsBelow[tree->homeOf("a")], 2U);
    // b has y (elsewhere) and z, and c refers to a.
    EXPECT_EQ(tree->eventsBelow[tree->homeOf("c")], 3U);
    EXPECT_TRUE(tree->reaches("c", "x"));
    EXPECT_FALSE(tree->reaches("b", "x"));
}

TEST(TreeValue, AMissingTopIsASentence) {
    const auto tree =
        makeTree(std::make_shared<const project::Project>(test::smallTree()), "nowhere");
    ASSERT_FALSE(tree);
    EXPECT_FALSE(tree.problems().front().what.empty());
}

TEST(FoldsValue, ASmallTreeIsOpenAndALargeOneIsFoldedLevelByLevel) {
    EXPECT_THAT(settleFolds(*treeOf(test::smallTree()), {}, {}, kFirstVisible), IsEmpty());
    const auto tree = treeOf(test::largeTree(2000));
    const Folds folds = settleFolds(*tree, {}, {}, kFirstVisible);
    const Page page = pageOf(*tree, folds);
    EXPECT_LE(page.boxes.size(), kFirstVisible);
    EXPECT_GT(page.boxes.size(), kFirstVisible / 3);
    // What hides says so, and nothing below a folded gate is shown.
    for (const PageBox& box : page.boxes) {
        if (!box.folded) continue;
        EXPECT_TRUE(box.inputs.empty());
        EXPECT_EQ(box.words.folded.substr(0, 2), "+ ");
    }
}

TEST(FoldsValue, NeverMoreThanTheMostAndRevealedAllTheSame) {
    const auto tree = treeOf(test::largeTree(6000));
    const project::Id last = tree->project->events.back().id;
    const Folds folds = settleFolds(*tree, {}, {{last}}, kMostVisible);
    EXPECT_LE(pageOf(*tree, folds).boxes.size(), kMostVisible + 50);
    EXPECT_FALSE(isHidden(*tree, folds, {last}));
}

TEST(FoldsValue, UnfoldingOneGateShowsItsInputsOnly) {
    const auto tree = treeOf(test::largeTree(2000));
    Folds folds = settleFolds(*tree, {}, {}, kFirstVisible);
    const Page before = pageOf(*tree, folds);
    const auto closed = std::find_if(before.boxes.begin(), before.boxes.end(),
                                     [](const PageBox& box) { return box.folded; });
    ASSERT_NE(closed, before.boxes.end());
    folds.erase(closed->node);
    const std::size_t inputs = tree->index.gate(closed->node)->inputs.size();
    EXPECT_EQ(pageOf(*tree, folds).boxes.size(), before.boxes.size() + inputs);
}

TEST(FoldsValue, WhatAFoldedGateHidesIsFound) {
    const auto tree = treeOf(test::smallTree());
    const Folds folds{"b", "top"};
    EXPECT_TRUE(isHidden(*tree, folds, {"z"}));
    EXPECT_FALSE(isHidden(*tree, folds, {"top"}));
    EXPECT_FALSE(isHidden(*tree, folds, {"stranger"}));
    EXPECT_THAT(revealed(*tree, folds, {{"z"}}), IsEmpty());
    EXPECT_THAT(revealed(*tree, folds, {{"s"}}), UnorderedElementsAre("b"));
    EXPECT_THAT(gatesBelow(*tree, "c"), UnorderedElementsAre("c", "b"));
}

TEST(MarkedPath, ACutSetReachesTheTopThroughTheGatesThatItMakesHappen) {
    const auto tree = treeOf(test::smallTree());
    const MarkedPath both = markedPath(*tree, {"x", "y"});
    EXPECT_TRUE(both.reachesTop);
    // y makes b happen, b and a make c happen.
    EXPECT_THAT(both.nodes, UnorderedElementsAre("x", "y", "a", "b", "c", "top"));
    const MarkedPath one = markedPath(*tree, {"s"});
    EXPECT_THAT(one.nodes, UnorderedElementsAre("s", "top"));
}

TEST(MarkedPath, TooFewEventsMarkOnlyThemselves) {
    const auto tree = treeOf(test::smallTree());
    const MarkedPath path = markedPath(*tree, {"x", "z"});
    EXPECT_FALSE(path.reachesTop);
    EXPECT_THAT(path.nodes, UnorderedElementsAre("x", "z"));
    EXPECT_THAT(markedPath(*tree, {}).nodes, IsEmpty());
}

TEST(MarkedPath, VotesInhibitsAndHouseEvents) {
    project::Project project;
    for (const char* id : {"p", "q", "r", "c", "h"}) {
        project::Event event;
        event.id = id;
        if (std::string(id) == "c") event.kind = project::EventKind::conditioning;
        if (std::string(id) == "h") {
            event.kind = project::EventKind::house;
            event.state = true;
        }
        project.events.push_back(event);
    }
    project::Gate vote, inhibit;
    vote.id = "v";
    vote.kind = project::GateKind::vote;
    vote.k = 2;
    for (const char* id : {"p", "q", "r"})
        vote.inputs.push_back({id, {}});
    inhibit.id = "i";
    inhibit.kind = project::GateKind::inhibit;
    inhibit.inputs = {{"v", {}}, {"h", {}}};
    inhibit.condition.id = "c";
    project.gates = {vote, inhibit};
    const auto tree = treeOf(project, "i");
    EXPECT_FALSE(markedPath(*tree, {"p", "q"}).reachesTop);
    EXPECT_FALSE(markedPath(*tree, {"p", "c"}).reachesTop);
    const MarkedPath path = markedPath(*tree, {"p", "r", "c"});
    EXPECT_TRUE(path.reachesTop);
    EXPECT_THAT(path.nodes, UnorderedElementsAre("p", "r", "c", "v", "i", "h"));
}

TEST(MarkedPath, AChainOfAHundredThousandGatesDoesNotOverflow) {
    project::Project project;
    project::Event event;
    event.id = "e";
    project.events.push_back(event);
    constexpr int kDeep = 25000;
    for (int i = 0; i < kDeep; ++i) {
        project::Gate gate;
        gate.id = "g" + std::to_string(i);
        gate.inputs = {{i + 1 < kDeep ? "g" + std::to_string(i + 1) : "e", {}}};
        project.gates.push_back(gate);
    }
    const auto tree = treeOf(project, "g0");
    EXPECT_EQ(markedPath(*tree, {"e"}).nodes.size(), static_cast<std::size_t>(kDeep) + 1);
    EXPECT_EQ(gatesBelow(*tree, "g0").size(), static_cast<std::size_t>(kDeep));
}

TEST(Search, ByIdNameAndSeveralWordsInTheOrderOfTheTree) {
    const auto tree = treeOf(test::smallTree());
    EXPECT_THAT(findNodes(*tree, "pump"), ElementsAre("a", "x", "y"));
    EXPECT_THAT(findNodes(*tree, "STOPS pump b"), ElementsAre("y"));
    EXPECT_THAT(findNodes(*tree, "s").front(), "s"); // the id itself first
    EXPECT_THAT(findNodes(*tree, "  "), IsEmpty());
    EXPECT_THAT(findNodes(*tree, "no such thing"), IsEmpty());
}

TEST(Drop, IntoAGateBesideAnEventAndNeverBelowItself) {
    const auto tree = treeOf(test::smallTree());
    const Page page = pageOf(*tree);
    const DropPlan into =
        planDrop(*tree, page, find(page, "z", "b"), find(page, "a", "top"), false, false);
    EXPECT_TRUE(into.allowed);
    EXPECT_EQ(into.place, (project::edits::Place{"a", project::edits::kLast}));
    EXPECT_EQ(into.use, (project::edits::Use{"z", "b", 1}));
    const DropPlan after =
        planDrop(*tree, page, find(page, "z", "b"), find(page, "x", "a"), true, true);
    EXPECT_TRUE(after.allowed && after.shares && after.beside);
    EXPECT_EQ(after.place, (project::edits::Place{"a", 1}));
    for (const auto& [source, target, share] :
         std::vector<std::tuple<std::size_t, std::size_t, bool>>{
             {find(page, "c", "top"), find(page, "b", "c"), false}, // below itself
             {find(page, "top"), find(page, "a", "top"), false},
             {find(page, "x", "a"), find(page, "a", "top"), true}, // there already
             {find(page, "y", "b"), find(page, "a", "top"), false},
             {find(page, "x", "a"), kNoBox, false},
             {find(page, "x", "a"), find(page, "x", "a"), false}}) {
        const DropPlan plan = planDrop(*tree, page, source, target, false, share);
        EXPECT_FALSE(plan.allowed);
        EXPECT_FALSE(plan.sentence.isEmpty());
    }
}

TEST(Walk, FollowsLinesAndRows) {
    const auto tree = treeOf(test::smallTree());
    const Page page = pageOf(*tree);
    const std::size_t a = find(page, "a", "top"), x = find(page, "x"), y = find(page, "y", "a");
    EXPECT_EQ(walk(page, a, Direction::up), 0U);
    EXPECT_EQ(page.boxes[walk(page, a, Direction::down)].parent, "a");
    EXPECT_EQ(walk(page, x, Direction::right), y);
    EXPECT_EQ(page.boxes[walk(page, y, Direction::right)].node, "b"); // across parents
    EXPECT_EQ(walk(page, x, Direction::left), kNoBox);
    EXPECT_EQ(walk(page, x, Direction::down), kNoBox);
    EXPECT_EQ(walk(page, 0, Direction::up), kNoBox);
}

TEST(Pages, NoTwoBoxesOverlapAndLinesEndAtTheirBoxes) {
    for (const std::size_t events : {5U, 60U, 300U}) {
        const auto tree = treeOf(test::largeTree(events));
        const Page page = pageOf(*tree);
        for (std::size_t i = 0; i < page.boxes.size(); ++i)
            for (std::size_t j = i + 1; j < page.boxes.size(); ++j) {
                const drawing::Box a = frameOf(page.boxes[i]), b = frameOf(page.boxes[j]);
                const bool apart = a.right() < b.left || b.right() < a.left || a.bottom() < b.top ||
                                   b.bottom() < a.top;
                EXPECT_TRUE(apart) << page.boxes[i].node << " and " << page.boxes[j].node;
            }
        for (const PageLine& line : page.lines) {
            const drawing::Box upper = frameOf(page.boxes[line.upper]);
            const drawing::Box lower = frameOf(page.boxes[line.lower]);
            EXPECT_NEAR(line.route.front().x, upper.middle(), 1e-6);
            EXPECT_NEAR(line.route.front().y, upper.bottom(), 1e-6);
            EXPECT_NEAR(line.route.back().x, lower.middle(), 1e-6);
            EXPECT_NEAR(line.route.back().y, lower.top, 1e-6);
        }
    }
}

TEST(Pages, InputsStandInTheProjectsOrder) {
    const auto tree = treeOf(test::largeTree(120));
    const Page page = pageOf(*tree);
    for (const PageBox& box : page.boxes)
        for (std::size_t i = 1; i < box.inputs.size(); ++i) {
            EXPECT_LT(page.boxes[box.inputs[i - 1]].at.x, page.boxes[box.inputs[i]].at.x);
            EXPECT_LT(page.boxes[box.inputs[i - 1]].input, page.boxes[box.inputs[i]].input);
        }
}

TEST(CaptionsValue, ProbabilitiesStandUnderTheEvents) {
    const auto tree = treeOf(test::smallTree());
    const Captions captions = captionsFor(*tree->project, tree->index, CaptionKind::probabilities);
    EXPECT_EQ(captions.words.at("x"), "1.00e-03");
    const Page page = pageOf(*tree, {}, captions);
    EXPECT_EQ(page.boxes[find(page, "x")].words.under, "1.00e-03");
    // A transfer says where the event is drawn instead.
    EXPECT_EQ(page.boxes[find(page, "y", "b")].words.under, "below a");
}

TEST(LookValue, EveryInkIsReadableOnLightAndDark) {
    QPalette dark;
    dark.setColor(QPalette::Base, QColor(28, 31, 36));
    for (const Look& look : {Look(QPalette(Qt::white)), Look(dark)}) {
        using namespace drawing;
        // 4.5 : 1 for words (WCAG 2.1, 1.4.3), 3 : 1 for lines and frames (1.4.11).
        for (const Ink& ground :
             {kWhite, kGateFill, kEventFill, kUndevelopedFill, kHouseFill, kConditionFill}) {
            EXPECT_GE(contrast(look.colour(kBlack), look.colour(ground)), 4.5);
            EXPECT_GE(contrast(look.colour(kSoft), look.colour(ground)), 4.5);
            EXPECT_GE(contrast(look.colour(kMarked), look.colour(ground)), 3);
        }
        for (const QColor& ground : {look.ground(), look.paper()}) {
            EXPECT_GE(contrast(look.colour(kBlack), ground), 4.5);
            EXPECT_GE(contrast(look.words(), ground), 4.5);
            EXPECT_GE(contrast(look.colour(kMarked), ground), 3);
            EXPECT_GE(contrast(look.selected(), ground), 3);
            EXPECT_GE(contrast(look.hit(), ground), 3);
            EXPECT_GE(contrast(look.refused(), ground), 3);
        }
    }
}

} // namespace
} // namespace cutwater
