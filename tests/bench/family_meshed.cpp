// SPDX-License-Identifier: GPL-3.0-or-later
// Family 7: grids of nodes whose edges fail; the top event is that no way is left from the first
// corner to the opposite one.
//
// One-way edges: cut(v) = and over the edges u -> v of (edge fails or cut(u)), cut(first) = false.
//
// Two-way edges: cut(v, k) = v cannot be reached over at most k edges
//   cut(first, k) = false, cut(v, 0) = true for the others,
//   cut(v, k) = cut(v, k - 1) and, over the neighbours u, (edge fails or cut(u, k - 1)).
// A way without repeated nodes has at most n n - 1 edges, so cut(last, n n - 1) is exact.
#include "tests/bench/maker.h"

#include <map>

namespace bench {

namespace {

constexpr double kLow = 0.01, kHigh = 0.3;

struct Edge {
    std::uint32_t a, b;
    Literal fails;
};

// Row by row, to the right before down.
std::vector<Edge> gridEdges(Maker& make, std::uint32_t n) {
    std::vector<Edge> edges;
    for (std::uint32_t row = 0; row < n; ++row)
        for (std::uint32_t column = 0; column < n; ++column) {
            const std::uint32_t node = row * n + column;
            if (column + 1 < n) edges.push_back({node, node + 1, make.event(kLow, kHigh)});
            if (row + 1 < n) edges.push_back({node, node + n, make.event(kLow, kHigh)});
        }
    return edges;
}

} // namespace

Instance oneWayGrid(std::uint32_t n) {
    Maker make(0x700 + n);
    const auto edges = gridEdges(make, n);
    std::vector<std::vector<Literal>> into(n * n);
    std::vector<Literal> cut(n * n);
    cut[0] = cutwater::logic::kFalse;
    // Edges are in the order of their first node, which is a topological order.
    std::uint32_t done = 0;
    for (const Edge& edge : edges) {
        while (done < edge.a) {
            ++done;
            cut[done] = make.all(into[done]);
        }
        into[edge.b].push_back(edge.a == 0 ? edge.fails : make.any({edge.fails, cut[edge.a]}));
    }
    return make.finish(make.all(into[n * n - 1]));
}

Instance twoWayGrid(std::uint32_t n) {
    Maker make(0x710 + n);
    const auto edges = gridEdges(make, n);
    const std::uint32_t last = n * n - 1;
    std::vector<Literal> cut(n * n, cutwater::logic::kTrue);
    cut[0] = cutwater::logic::kFalse;
    for (std::uint32_t k = 1; k <= last; ++k) {
        std::vector<std::vector<Literal>> inputs(n * n);
        for (const Edge& edge : edges)
            for (const auto& [u, v] : {std::pair{edge.a, edge.b}, std::pair{edge.b, edge.a}}) {
                if (v == 0 || cut[u] == cutwater::logic::kTrue) continue;
                inputs[v].push_back(u == 0 ? edge.fails : make.any({edge.fails, cut[u]}));
            }
        std::vector<Literal> next = cut;
        for (std::uint32_t v = 1; v <= last; ++v) {
            if (inputs[v].empty()) continue; // too far away still
            if (cut[v] != cutwater::logic::kTrue) inputs[v].push_back(cut[v]);
            next[v] = inputs[v].size() == 1 ? inputs[v].front() : make.all(inputs[v]);
        }
        cut = next;
    }
    return make.finish(cut[last]);
}

} // namespace bench
