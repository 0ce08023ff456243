// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/graphviz-layout/geometry.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace cutwater::test {
namespace {

using sdk::LayoutEdge;
using sdk::LayoutGraph;
using sdk::LayoutNode;
using sdk::Point;

struct Box {
    double left, right, top, bottom;
};

Box boxOf(const LayoutNode& node) {
    return {node.centre.x - node.width / 2, node.centre.x + node.width / 2,
            node.centre.y - node.height / 2, node.centre.y + node.height / 2};
}

struct Stretch {
    Point from, to;
    std::size_t edge;
};

std::vector<Stretch> stretches(const LayoutGraph& graph) {
    std::vector<Stretch> result;
    for (std::size_t e = 0; e < graph.edges.size(); ++e)
        for (std::size_t i = 1; i < graph.edges[e].route.size(); ++i)
            result.push_back({graph.edges[e].route[i - 1], graph.edges[e].route[i], e});
    return result;
}

constexpr double kSame = 0.01;

// The length that two right-angled stretches have in common.
double common(const Stretch& a, const Stretch& b) {
    const bool vertical = std::abs(a.from.x - a.to.x) < kSame &&
                          std::abs(b.from.x - b.to.x) < kSame && std::abs(a.from.x - b.from.x) < 1;
    const bool level = std::abs(a.from.y - a.to.y) < kSame && std::abs(b.from.y - b.to.y) < kSame &&
                       std::abs(a.from.y - b.from.y) < 1;
    if (vertical)
        return std::min(std::max(a.from.y, a.to.y), std::max(b.from.y, b.to.y)) -
               std::max(std::min(a.from.y, a.to.y), std::min(b.from.y, b.to.y));
    if (level)
        return std::min(std::max(a.from.x, a.to.x), std::max(b.from.x, b.to.x)) -
               std::max(std::min(a.from.x, a.to.x), std::min(b.from.x, b.to.x));
    return 0;
}

} // namespace

std::size_t Dice::below(std::size_t limit) {
    m_state ^= m_state << 13;
    m_state ^= m_state >> 7;
    m_state ^= m_state << 17;
    return static_cast<std::size_t>(m_state % limit);
}

LayoutGraph randomGraph(std::uint64_t seed, std::size_t count, std::size_t shared) {
    Dice dice(seed);
    LayoutGraph graph;
    std::vector<int> inputs(count, 0);
    for (std::size_t i = 0; i < count; ++i) {
        graph.nodes.push_back({fmt::format("g{}", i),
                               40.0 + static_cast<double>(dice.below(80)),
                               30.0 + static_cast<double>(dice.below(60)),
                               {}});
        if (i == 0) continue;
        const std::size_t parent = i - 1 - dice.below(std::min<std::size_t>(i, 12));
        graph.edges.push_back({parent, i, inputs[parent]++, {}});
    }
    for (std::size_t s = 0; s < shared && count > 2; ++s) {
        const std::size_t child = 1 + dice.below(count - 1), parent = dice.below(child);
        graph.edges.push_back({parent, child, inputs[parent]++, {}});
    }
    return graph;
}

LayoutGraph chain(std::size_t count) {
    LayoutGraph graph;
    for (std::size_t i = 0; i < count; ++i) {
        graph.nodes.push_back({fmt::format("g{}", i), 60, 40, {}});
        if (i > 0) graph.edges.push_back({i - 1, i, 0, {}});
    }
    return graph;
}

std::vector<std::string> complaints(const LayoutGraph& placed) {
    std::vector<std::string> result;
    const double eps = 0.01;
    std::vector<Box> boxes;
    for (const LayoutNode& node : placed.nodes) {
        boxes.push_back(boxOf(node));
        const Box& box = boxes.back();
        if (!(box.left >= -eps && box.top >= -eps && box.right <= placed.width + eps &&
              box.bottom <= placed.height + eps))
            result.push_back(node.id + " is outside");
    }
    for (std::size_t a = 0; a < boxes.size(); ++a)
        for (std::size_t b = a + 1; b < boxes.size(); ++b)
            if (boxes[a].left < boxes[b].right - eps && boxes[b].left < boxes[a].right - eps &&
                boxes[a].top < boxes[b].bottom - eps && boxes[b].top < boxes[a].bottom - eps)
                result.push_back(placed.nodes[a].id + " lies on " + placed.nodes[b].id);
    for (const LayoutEdge& edge : placed.edges) {
        const Box &parent = boxes[edge.parent], &child = boxes[edge.child];
        const std::string name =
            placed.nodes[edge.parent].id + " to " + placed.nodes[edge.child].id;
        if (!(parent.bottom < child.top)) result.push_back(name + ": the child is not below");
        if (edge.route.size() < 2) {
            result.push_back(name + ": no route");
            continue;
        }
        const Point from = edge.route.front(), to = edge.route.back();
        if (std::abs(from.y - parent.bottom) > eps || from.x < parent.left || from.x > parent.right)
            result.push_back(name + ": does not start at the parent");
        if (std::abs(to.y - child.top) > eps || to.x < child.left || to.x > child.right)
            result.push_back(name + ": does not end at the child");
    }
    for (const Stretch& s : stretches(placed)) {
        if (std::abs(s.from.x - s.to.x) > eps && std::abs(s.from.y - s.to.y) > eps)
            result.push_back(fmt::format("edge {} is not right-angled", s.edge));
        if (s.to.y < s.from.y - eps) result.push_back(fmt::format("edge {} goes up", s.edge));
        for (std::size_t n = 0; n < boxes.size(); ++n)
            if (std::min(s.from.x, s.to.x) < boxes[n].right - eps &&
                std::max(s.from.x, s.to.x) > boxes[n].left + eps &&
                std::min(s.from.y, s.to.y) < boxes[n].bottom - eps &&
                std::max(s.from.y, s.to.y) > boxes[n].top + eps)
                result.push_back(
                    fmt::format("edge {} runs through {}", s.edge, placed.nodes[n].id));
    }
    return result;
}

std::vector<std::string> sharedStretches(const LayoutGraph& placed) {
    std::vector<std::string> result;
    const std::vector<Stretch> all = stretches(placed);
    for (std::size_t a = 0; a < all.size(); ++a)
        for (std::size_t b = a + 1; b < all.size(); ++b)
            if (placed.edges[all[a].edge].parent != placed.edges[all[b].edge].parent &&
                common(all[a], all[b]) > 0.5)
                result.push_back(fmt::format("edges {} and {} lie on each other at {:.0f} {:.0f}",
                                             all[a].edge, all[b].edge, all[a].from.x,
                                             all[a].from.y));
    return result;
}

} // namespace cutwater::test
