// SPDX-License-Identifier: GPL-3.0-or-later
// Circles in a directed graph. Private to the folder.
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace cutwater::project {

// The arrows of node n lead to targets[begin[n]] .. targets[begin[n + 1]].
struct Graph {
    std::vector<std::uint32_t> begin{0};
    std::vector<std::uint32_t> targets;

    std::uint32_t size() const { return static_cast<std::uint32_t>(begin.size() - 1); }
    void arrow(std::uint32_t target) { targets.push_back(target); } // of the node being made
    void finishNode() { begin.push_back(static_cast<std::uint32_t>(targets.size())); }
};

// One shortest circle for each strongly connected part that has any, through the part's lowest
// node: {a, b, c} stands for a -> b -> c -> a. In the order of the lowest nodes. Linear time, no
// recursion (Tarjan 1972).
std::vector<std::vector<std::uint32_t>> findCycles(const Graph& graph);

// "a -> b -> a"; a long one is shortened in the middle. `name(node)` gives the words.
template <typename Name>
std::string cycleInWords(const std::vector<std::uint32_t>& cycle, Name name) {
    constexpr std::size_t kShown = 4; // at either end
    std::string words;
    for (std::size_t i = 0; i < cycle.size(); ++i) {
        if (i == kShown && cycle.size() > 2 * kShown + 1) {
            const std::size_t left = cycle.size() - 2 * kShown;
            words += "... (" + std::to_string(left) + " more) -> ";
            i += left - 1;
            continue;
        }
        words += name(cycle[i]);
        words += " -> ";
    }
    return words + name(cycle.front());
}

} // namespace cutwater::project
