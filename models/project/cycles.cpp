// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/cycles.h"

#include <algorithm>

namespace cutwater::project {

namespace {

constexpr std::uint32_t kNone = 0xFFFFFFFF;

// The number of the strongly connected part that each node belongs to.
std::vector<std::uint32_t> parts(const Graph& graph) {
    const std::uint32_t size = graph.size();
    std::vector<std::uint32_t> part(size, kNone), order(size, kNone), low(size), waiting;
    struct Step {
        std::uint32_t node, next;
    };
    std::vector<Step> path;
    std::uint32_t clock = 0, partCount = 0;
    const auto enter = [&](std::uint32_t node) {
        order[node] = low[node] = clock++;
        waiting.push_back(node);
        path.push_back({node, graph.begin[node]});
    };
    for (std::uint32_t root = 0; root < size; ++root) {
        if (order[root] != kNone) continue;
        enter(root);
        while (!path.empty()) {
            const std::uint32_t node = path.back().node;
            if (path.back().next < graph.begin[node + 1]) {
                const std::uint32_t target = graph.targets[path.back().next++];
                if (order[target] == kNone)
                    enter(target);
                else if (part[target] == kNone)
                    low[node] = std::min(low[node], order[target]);
                continue;
            }
            path.pop_back();
            if (!path.empty()) low[path.back().node] = std::min(low[path.back().node], low[node]);
            if (low[node] != order[node]) continue;
            std::uint32_t member;
            do {
                member = waiting.back();
                waiting.pop_back();
                part[member] = partCount;
            } while (member != node);
            ++partCount;
        }
    }
    return part;
}

// A shortest way from `start` back to itself within its part; empty where there is none.
std::vector<std::uint32_t> circle(const Graph& graph, const std::vector<std::uint32_t>& part,
                                  std::uint32_t start, std::vector<std::uint32_t>& from) {
    std::vector<std::uint32_t> queue{start};
    for (std::size_t head = 0; head < queue.size(); ++head) {
        const std::uint32_t node = queue[head];
        for (std::uint32_t i = graph.begin[node]; i < graph.begin[node + 1]; ++i) {
            const std::uint32_t target = graph.targets[i];
            if (target == start) {
                std::vector<std::uint32_t> way;
                for (std::uint32_t at = node; at != start; at = from[at])
                    way.push_back(at);
                way.push_back(start);
                std::reverse(way.begin(), way.end());
                return way;
            }
            if (part[target] != part[start] || from[target] != kNone) continue;
            from[target] = node;
            queue.push_back(target);
        }
    }
    return {};
}

} // namespace

std::vector<std::vector<std::uint32_t>> findCycles(const Graph& graph) {
    const std::vector<std::uint32_t> part = parts(graph);
    std::vector<bool> seen(graph.size(), false); // by part
    std::vector<std::uint32_t> from(graph.size(), kNone);
    std::vector<std::vector<std::uint32_t>> cycles;
    for (std::uint32_t node = 0; node < graph.size(); ++node) {
        if (seen[part[node]]) continue;
        seen[part[node]] = true;
        if (auto cycle = circle(graph, part, node, from); !cycle.empty())
            cycles.push_back(std::move(cycle));
    }
    return cycles;
}

} // namespace cutwater::project
