// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/graphviz-layout/placement.h"
#include "tests/plugins/graphviz-layout/geometry.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <cmath>
#include <thread>

#include <malloc.h>

namespace cutwater {
namespace {

using graphviz::place;
using sdk::LayoutGraph;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

LayoutGraph placed(const LayoutGraph& graph, const sdk::Values& values = {}) {
    const sdk::Answer<LayoutGraph> answer = place(graph, values, {});
    EXPECT_EQ(answer.ending, sdk::Ending::finished);
    for (const project::Problem& problem : answer.problems)
        ADD_FAILURE() << problem.what;
    return answer.content.value_or(LayoutGraph{});
}

TEST(GraphvizLayout, EmptyGraphIsAnEmptySheet) {
    const LayoutGraph result = placed({});
    EXPECT_TRUE(result.nodes.empty());
    EXPECT_EQ(result.width, 0);
    EXPECT_EQ(result.height, 0);
}

TEST(GraphvizLayout, OneBoxStandsInTheCorner) {
    LayoutGraph graph;
    graph.nodes.push_back({"top", 80, 50, {}});
    const LayoutGraph result = placed(graph);
    EXPECT_NEAR(result.nodes[0].centre.x, 40, 1);
    EXPECT_NEAR(result.nodes[0].centre.y, 25, 1e-9);
    EXPECT_NEAR(result.width, 80, 2);
    EXPECT_NEAR(result.height, 50, 1e-9);
}

TEST(GraphvizLayout, RandomTreesHaveNoOverlapAndRightAngledLines) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const LayoutGraph result = placed(test::randomGraph(seed, 2 + seed * 2, 0));
        EXPECT_THAT(test::complaints(result), IsEmpty()) << "seed " << seed;
        EXPECT_THAT(test::sharedStretches(result), IsEmpty()) << "seed " << seed;
    }
}

TEST(GraphvizLayout, SharedSubtreesStandOnceBelowAllTheirParents) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const LayoutGraph result = placed(test::randomGraph(seed, 10 + seed, 2 + seed / 4));
        EXPECT_THAT(test::complaints(result), IsEmpty()) << "seed " << seed;
        EXPECT_THAT(test::sharedStretches(result), IsEmpty()) << "seed " << seed;
    }
}

TEST(GraphvizLayout, InputsOfATreeKeepTheirOrder) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        LayoutGraph graph = test::randomGraph(seed, 60, 0);
        // The order counts, not the place in the list.
        std::reverse(graph.edges.begin(), graph.edges.end());
        const LayoutGraph result = placed(graph);
        for (const sdk::LayoutEdge& a : result.edges)
            for (const sdk::LayoutEdge& b : result.edges)
                if (a.parent == b.parent && a.order < b.order) {
                    EXPECT_LT(result.nodes[a.child].centre.x, result.nodes[b.child].centre.x)
                        << "seed " << seed;
                }
    }
}

TEST(GraphvizLayout, TheParentOfTwoStandsBetweenThem) {
    LayoutGraph graph;
    for (const char* id : {"top", "left", "right"})
        graph.nodes.push_back({id, 80, 50, {}});
    graph.edges = {{0, 1, 0, {}}, {0, 2, 1, {}}};
    const LayoutGraph result = placed(graph);
    EXPECT_NEAR(result.nodes[0].centre.x, (result.nodes[1].centre.x + result.nodes[2].centre.x) / 2,
                2);
}

TEST(GraphvizLayout, ACircleIsRefusedAndNamed) {
    LayoutGraph graph = test::chain(4);
    graph.edges.push_back({3, 1, 0, {}});
    const sdk::Answer<LayoutGraph> answer = place(graph, {}, {});
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 1u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("g1 > g2 > g3 > g1"));
    EXPECT_FALSE(answer.problems[0].remedy.empty());
}

TEST(GraphvizLayout, AnEdgeToItselfIsACircle) {
    LayoutGraph graph = test::chain(1);
    graph.edges.push_back({0, 0, 0, {}});
    const sdk::Answer<LayoutGraph> answer = place(graph, {}, {});
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    EXPECT_THAT(answer.problems.at(0).what, HasSubstr("g0 > g0"));
}

TEST(GraphvizLayout, WrongSizesAndEndsAreRefusedByName) {
    LayoutGraph graph = test::chain(3);
    graph.nodes[1].width = std::nan("");
    graph.nodes[2].height = -1;
    graph.edges[0].child = 99;
    const sdk::Answer<LayoutGraph> answer = place(graph, {}, {});
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_EQ(answer.problems.size(), 3u);
    EXPECT_THAT(answer.problems[0].what, HasSubstr("g1"));
    EXPECT_THAT(answer.problems[1].what, HasSubstr("g2"));
    EXPECT_THAT(answer.problems[2].what, HasSubstr("edge 0"));
}

TEST(GraphvizLayout, MoreThanFiveThousandBoxesAreOverTheLimit) {
    const sdk::Answer<LayoutGraph> answer = place(test::chain(5001), {}, {});
    EXPECT_EQ(answer.ending, sdk::Ending::overLimit);
    EXPECT_THAT(answer.problems.at(0).what, HasSubstr("5001"));
}

TEST(GraphvizLayout, AChainOfFiveThousandIsLaidOut) {
    const LayoutGraph result = placed(test::chain(5000));
    EXPECT_GT(result.height, 5000 * 60.0);
    EXPECT_NEAR(result.width, 60, 8);
}

TEST(GraphvizLayout, TwoThousandBoxesTakeSeconds) {
    const auto start = std::chrono::steady_clock::now();
    const LayoutGraph result = placed(test::randomGraph(7, 2000, 0));
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(60));
    EXPECT_THAT(test::complaints(result), IsEmpty());
}

TEST(GraphvizLayout, FiveHundredInputsStandSideBySide) {
    LayoutGraph graph;
    graph.nodes.push_back({"top", 80, 50, {}});
    for (int i = 0; i < 500; ++i) {
        graph.nodes.push_back({"e" + std::to_string(i), 80, 50, {}});
        graph.edges.push_back({0, graph.nodes.size() - 1, i, {}});
    }
    EXPECT_THAT(test::complaints(placed(graph)), IsEmpty());
}

TEST(GraphvizLayout, SeveralTreesStandSideBySide) {
    LayoutGraph graph;
    for (int i = 0; i < 6; ++i)
        graph.nodes.push_back({"n" + std::to_string(i), 80, 50, {}});
    graph.edges = {{0, 1, 0, {}}, {2, 3, 0, {}}, {3, 4, 0, {}}};
    EXPECT_THAT(test::complaints(placed(graph)), IsEmpty());
}

TEST(GraphvizLayout, TwinEdgesHaveOneLine) {
    LayoutGraph graph = test::chain(2);
    graph.edges.push_back({0, 1, 1, {}});
    const LayoutGraph result = placed(graph);
    EXPECT_THAT(test::complaints(result), IsEmpty());
    EXPECT_EQ(result.edges[0].route, result.edges[1].route);
}

TEST(GraphvizLayout, GapsAreThoseThatWereAskedFor) {
    LayoutGraph graph;
    for (const char* id : {"top", "left", "right"})
        graph.nodes.push_back({id, 80, 50, {}});
    graph.edges = {{0, 1, 0, {}}, {0, 2, 1, {}}};
    sdk::Values values;
    values.set("node-gap", 30.0);
    values.set("row-gap", 70.0);
    const LayoutGraph result = placed(graph, values);
    EXPECT_NEAR(result.nodes[2].centre.x - result.nodes[1].centre.x, 110, 2);
    EXPECT_NEAR(result.nodes[1].centre.y - result.nodes[0].centre.y, 120, 1e-9);
}

TEST(GraphvizLayout, TheSameGraphIsPlacedTheSameWay) {
    const LayoutGraph graph = test::randomGraph(3, 120, 10);
    const LayoutGraph first = placed(graph), second = placed(graph);
    for (std::size_t i = 0; i < graph.nodes.size(); ++i)
        EXPECT_EQ(first.nodes[i].centre, second.nodes[i].centre);
    for (std::size_t i = 0; i < graph.edges.size(); ++i)
        EXPECT_EQ(first.edges[i].route, second.edges[i].route);
}

TEST(GraphvizLayout, ManyLayoutsLoseNoMemory) {
    const LayoutGraph graph = test::randomGraph(5, 60, 8);
    const auto layOut = [&](int times) {
        for (int i = 0; i < times; ++i)
            placed(graph);
        return mallinfo2().uordblks;
    };
    const std::size_t before = layOut(20), after = layOut(200);
    EXPECT_LT(after, before + 20000); // 100 bytes a layout would show
}

TEST(GraphvizLayout, SaysNothingOnTheTerminal) {
    ::testing::internal::CaptureStdout();
    ::testing::internal::CaptureStderr();
    placed(test::randomGraph(5, 80, 20));
    EXPECT_EQ(::testing::internal::GetCapturedStdout(), "");
    EXPECT_EQ(::testing::internal::GetCapturedStderr(), "");
}

TEST(GraphvizLayout, ThreadsWaitForEachOther) {
    std::vector<std::thread> threads;
    std::atomic<int> good{0};
    for (std::uint64_t t = 0; t < 4; ++t)
        threads.emplace_back([t, &good] {
            for (std::uint64_t i = 0; i < 10; ++i) {
                const sdk::Answer<LayoutGraph> answer =
                    place(test::randomGraph(t * 100 + i + 1, 40, 4), {}, {});
                if (answer.content && test::complaints(*answer.content).empty()) ++good;
            }
        });
    for (std::thread& thread : threads)
        thread.join();
    EXPECT_EQ(good, 40);
}

TEST(GraphvizLayout, StopsWhenItIsToldTo) {
    std::stop_source source;
    source.request_stop();
    sdk::Job job;
    job.stop = source.get_token();
    const sdk::Answer<LayoutGraph> answer = place(test::chain(3), {}, job);
    EXPECT_EQ(answer.ending, sdk::Ending::cancelled);
    EXPECT_FALSE(answer.content);
}

} // namespace
} // namespace cutwater
