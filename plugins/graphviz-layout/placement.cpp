// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/graphviz-layout/placement.h"

#include "plugins/graphviz-layout/centring.h"
#include "plugins/graphviz-layout/dot.h"
#include "plugins/graphviz-layout/layers.h"
#include "plugins/graphviz-layout/routes.h"

#include <algorithm>
#include <cmath>

namespace cutwater::graphviz {
namespace {

using sdk::Answer;
using sdk::LayoutGraph;
using sdk::Point;

constexpr double kLanePitch = 6; // points between two bars one above the other

double gapOf(const sdk::Values& values, const std::string& name, double standard) {
    const std::optional<double> value = values.has(name) ? values.number(name) : std::nullopt;
    return value && std::isfinite(*value) ? std::clamp(*value, 2.0, 1000.0) : standard;
}

Answer<LayoutGraph> cancelled() {
    project::Problem problem;
    problem.what = "the layout was cancelled";
    problem.remedy = "start it again";
    return Answer<LayoutGraph>::stopped(sdk::Ending::cancelled, problem);
}

struct Rows {
    std::vector<double> top, height; // of each row, points
};

Rows stackRows(const LayoutGraph& graph, const Layers& layers, const std::vector<Channel>& channels,
               double gap) {
    Rows rows;
    rows.height.assign(static_cast<std::size_t>(layers.rows), 0);
    for (std::size_t i = 0; i < layers.boxes; ++i) {
        double& height = rows.height[static_cast<std::size_t>(layers.row[i])];
        height = std::max(height, graph.nodes[i].height);
    }
    double y = 0;
    for (std::size_t r = 0; r < rows.height.size(); ++r) {
        rows.top.push_back(y);
        y += rows.height[r];
        if (r < channels.size()) y += std::max(gap, kLanePitch * (channels[r].lanes + 1));
    }
    return rows;
}

void append(std::vector<Point>& route, Point point) {
    if (!route.empty() && route.back() == point) return;
    const std::size_t n = route.size();
    const bool inLine =
        n >= 2 && ((route[n - 2].x == route[n - 1].x && point.x == route[n - 1].x) ||
                   (route[n - 2].y == route[n - 1].y && point.y == route[n - 1].y));
    if (inLine)
        route.back() = point;
    else
        route.push_back(point);
}

} // namespace

Answer<LayoutGraph> place(const LayoutGraph& graph, const sdk::Values& values,
                          const sdk::Job& job) {
    if (job.stop.stop_requested()) return cancelled();
    const project::Outcome<Layers> layers = makeLayers(graph);
    if (!layers) {
        Answer<LayoutGraph> answer = Answer<LayoutGraph>::failed(layers.problems());
        if (graph.nodes.size() > kMaxNodes) answer.ending = sdk::Ending::overLimit;
        return answer;
    }
    const double nodeGap = gapOf(values, "node-gap", 8);
    const project::Outcome<std::vector<double>> placed = placeInRows(*layers, nodeGap);
    if (!placed) return Answer<LayoutGraph>::failed(placed.problems());
    if (job.stop.stop_requested()) return cancelled();

    const std::vector<double> x = centreParents(*layers, nodeGap, *placed);
    const std::vector<Channel> channels = planChannels(*layers, x);
    const Rows rows = stackRows(graph, *layers, channels, gapOf(values, "row-gap", 26));
    LayoutGraph result = graph;
    result.width = result.height = 0;
    for (std::size_t i = 0; i < layers->boxes; ++i) {
        sdk::LayoutNode& node = result.nodes[i];
        node.centre = {x[i], rows.top[static_cast<std::size_t>(layers->row[i])] + node.height / 2};
        result.width = std::max(result.width, node.centre.x + node.width / 2);
        result.height = std::max(result.height, node.centre.y + node.height / 2);
    }
    for (sdk::LayoutEdge& edge : result.edges) {
        const sdk::LayoutNode& parent = result.nodes[edge.parent];
        edge.route = {{parent.centre.x, parent.centre.y + parent.height / 2}};
    }
    // Row by row from the top, so that each edge grows downwards.
    for (std::size_t r = 0; r < channels.size(); ++r) {
        const double gapTop = rows.top[r] + rows.height[r];
        const double gap = rows.top[r + 1] - gapTop;
        for (std::size_t i = 0; i < channels[r].segments.size(); ++i) {
            std::vector<Point>& route =
                result.edges[layers->segments[channels[r].segments[i]].edge].route;
            if (channels[r].lane[i] >= 0) {
                const double y = gapTop + gap * (channels[r].lane[i] + 1) / (channels[r].lanes + 1);
                append(route, {route.back().x, y});
                append(route, {channels[r].port[i], y});
            }
            append(route, {channels[r].port[i], rows.top[r + 1]});
        }
    }
    for (std::size_t e = 0; e < result.edges.size(); ++e)
        if (layers->firstTwin[e] != e)
            result.edges[e].route = result.edges[layers->firstTwin[e]].route;
    for (const sdk::LayoutEdge& edge : result.edges)
        for (const Point& point : edge.route)
            result.width = std::max(result.width, point.x);
    return Answer<LayoutGraph>::of(std::move(result));
}

} // namespace cutwater::graphviz
