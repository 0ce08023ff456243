// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/graphviz-layout/layers.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace cutwater::graphviz {
namespace {

using project::Outcome;
using project::Problem;
using project::Problems;
using sdk::LayoutGraph;

constexpr double kStopWidth = 6; // points that a passing line keeps free in a row

Problem problem(std::string what, std::string remedy, std::string where = {}) {
    Problem result;
    result.what = std::move(what);
    result.remedy = std::move(remedy);
    result.where = std::move(where);
    return result;
}

Problems checkInput(const LayoutGraph& graph) {
    Problems problems;
    if (graph.nodes.size() > kMaxNodes) {
        problems.push_back(
            problem(fmt::format("the graph has {} boxes; at most {} are laid out at once",
                                graph.nodes.size(), kMaxNodes),
                    "split it into sheets"));
        return problems;
    }
    for (const sdk::LayoutNode& node : graph.nodes) {
        const bool fine = std::isfinite(node.width) && std::isfinite(node.height) &&
                          node.width > 0 && node.height > 0 && node.width < 1e5 &&
                          node.height < 1e5;
        if (!fine)
            problems.push_back(problem(fmt::format("the box of {} measures {} by {} points",
                                                   node.id, node.width, node.height),
                                       "give it a width and a height over 0 and below 100000",
                                       "node " + node.id));
    }
    for (std::size_t i = 0; i < graph.edges.size(); ++i)
        if (graph.edges[i].parent >= graph.nodes.size() ||
            graph.edges[i].child >= graph.nodes.size())
            problems.push_back(problem(fmt::format("edge {} leads to a box that does not exist", i),
                                       "give the positions of two boxes of the graph"));
    return problems;
}

// Every box that Kahn's walk could not reach has a parent among the others: going up from any of
// them must come round.
std::string namedCircle(const LayoutGraph& graph, const std::vector<std::size_t>& waiting) {
    std::vector<std::size_t> parentOf(graph.nodes.size(), graph.nodes.size());
    for (const sdk::LayoutEdge& edge : graph.edges)
        if (waiting[edge.parent] > 0 && waiting[edge.child] > 0) parentOf[edge.child] = edge.parent;
    std::size_t node = 0;
    while (waiting[node] == 0)
        ++node;
    std::vector<bool> seen(graph.nodes.size(), false);
    while (!seen[node]) {
        seen[node] = true;
        node = parentOf[node];
    }
    std::vector<std::string> names{graph.nodes[node].id};
    for (std::size_t at = parentOf[node]; at != node; at = parentOf[at])
        names.push_back(graph.nodes[at].id);
    names.push_back(graph.nodes[node].id);
    std::reverse(names.begin(), names.end());
    if (names.size() > 12) names.insert(names.erase(names.begin() + 6, names.end() - 5), "...");
    return fmt::format("{}", fmt::join(names, " > "));
}

Outcome<std::vector<int>> rowsOf(const LayoutGraph& graph,
                                 const std::vector<std::vector<std::size_t>>& outgoing) {
    const std::size_t count = graph.nodes.size();
    std::vector<std::size_t> waiting(count, 0), ready;
    std::vector<bool> hasParent(count, false);
    for (const sdk::LayoutEdge& edge : graph.edges) {
        ++waiting[edge.child];
        hasParent[edge.child] = true;
    }
    for (std::size_t i = 0; i < count; ++i)
        if (waiting[i] == 0) ready.push_back(i);
    std::vector<int> row(count, 0);
    for (std::size_t i = 0; i < ready.size(); ++i)
        for (const std::size_t e : outgoing[ready[i]]) {
            const std::size_t child = graph.edges[e].child;
            row[child] = std::max(row[child], row[ready[i]] + 1);
            if (--waiting[child] == 0) ready.push_back(child);
        }
    if (ready.size() < count)
        return problem("the graph runs in a circle: " + namedCircle(graph, waiting),
                       "remove one of these connections");
    // A second root need not stand in the top row: it comes down to its highest child.
    for (std::size_t i = 0; i < count; ++i) {
        if (hasParent[i] || outgoing[i].empty()) continue;
        int highest = row[graph.edges[outgoing[i].front()].child];
        for (const std::size_t e : outgoing[i])
            highest = std::min(highest, row[graph.edges[e].child]);
        row[i] = highest - 1;
    }
    return row;
}

} // namespace

Outcome<Layers> makeLayers(const LayoutGraph& graph) {
    if (Problems problems = checkInput(graph); !problems.empty()) return problems;
    std::vector<std::size_t> order(graph.edges.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return graph.edges[a].order < graph.edges[b].order;
    });
    std::vector<std::vector<std::size_t>> outgoing(graph.nodes.size());
    for (const std::size_t e : order)
        outgoing[graph.edges[e].parent].push_back(e);

    Outcome<std::vector<int>> rows = rowsOf(graph, outgoing);
    if (!rows) return rows.problems();
    Layers layers;
    layers.boxes = graph.nodes.size();
    layers.row = std::move(*rows);
    layers.firstTwin.resize(graph.edges.size());
    for (const sdk::LayoutNode& node : graph.nodes)
        layers.width.push_back(node.width);

    std::map<std::pair<std::size_t, std::size_t>, std::size_t> drawn;
    for (std::size_t parent = 0; parent < layers.boxes; ++parent)
        for (const std::size_t e : outgoing[parent]) {
            const std::size_t child = graph.edges[e].child;
            const auto [twin, isFirst] = drawn.try_emplace({parent, child}, e);
            layers.firstTwin[e] = twin->second;
            if (!isFirst) continue;
            std::size_t upper = parent;
            for (int row = layers.row[parent] + 1; row < layers.row[child]; ++row) {
                if (layers.row.size() >= kMaxSlots)
                    return problem("the graph has too many long connections to be laid out",
                                   "split it into sheets");
                layers.row.push_back(row);
                layers.width.push_back(kStopWidth);
                layers.segments.push_back({upper, layers.row.size() - 1, e});
                upper = layers.row.size() - 1;
            }
            layers.segments.push_back({upper, child, e});
        }
    for (const int row : layers.row)
        layers.rows = std::max(layers.rows, row + 1);
    return layers;
}

} // namespace cutwater::graphviz
