// SPDX-License-Identifier: GPL-3.0-or-later
// The table of the instances, and what can be said of one without solving it.
#include "tests/bench/families.h"

#include <algorithm>

namespace bench {

namespace {

std::vector<Recipe> table() {
    std::vector<Recipe> all;
    const auto add = [&](Family family, std::string name, Known known,
                         std::function<Instance()> make, std::string series = "", double size = 0) {
        all.push_back(
            {family, std::move(name), std::move(known), std::move(series), size, std::move(make)});
    };
    const Known plantRange{1e3, 1e7, "", true}, largeRange{1e8, 1e20, "", true}, none{};
    Known notCoherent;
    notCoherent.coherent = false;
    const auto closed = [](std::string count) { return Known{0, 0, std::move(count), true}; };

    const auto addPlant = [&](Family family, std::string name, const Known& known, PlantPlan plan) {
        add(family, std::move(name), known, [plan] { return plant(plan); });
    };
    addPlant(Family::plant, "plant-60", plantRange,
             {.seed = 101,
              .functions = 2,
              .trains = 3,
              .components = 4,
              .modes = 2,
              .lines = 1,
              .supported = 0.9});
    addPlant(Family::plant, "plant-100", plantRange,
             {.seed = 102, .functions = 2, .trains = 3, .components = 7, .modes = 2, .lines = 2});
    addPlant(Family::plant, "plant-150", plantRange,
             {.seed = 103,
              .functions = 3,
              .trains = 3,
              .components = 8,
              .modes = 2,
              .lines = 3,
              .reuse = 0.2});
    addPlant(Family::plant, "plant-200", plantRange,
             {.seed = 104,
              .functions = 5,
              .trains = 4,
              .needed = 2,
              .components = 6,
              .modes = 2,
              .lines = 3,
              .reuse = 0.3});
    addPlant(Family::plant, "plant-250", plantRange,
             {.seed = 106,
              .functions = 5,
              .trains = 4,
              .components = 8,
              .modes = 2,
              .lines = 4,
              .supported = 0.6,
              .reuse = 0.4});
    addPlant(Family::plant, "plant-300", plantRange,
             {.seed = 105,
              .functions = 4,
              .trains = 4,
              .components = 9,
              .modes = 2,
              .lines = 4,
              .supported = 0.6,
              .reuse = 0.2});

    addPlant(Family::large, "large-500", largeRange,
             {.seed = 201,
              .functions = 7,
              .trains = 6,
              .components = 8,
              .modes = 2,
              .lines = 3,
              .supported = 0.4,
              .reuse = 0.35});
    addPlant(Family::large, "large-1000", largeRange,
             {.seed = 202,
              .functions = 8,
              .trains = 6,
              .components = 10,
              .modes = 3,
              .lines = 3,
              .supported = 0.3,
              .reuse = 0.35});
    addPlant(Family::large, "large-3000", largeRange,
             {.seed = 203,
              .functions = 20,
              .trains = 8,
              .components = 10,
              .modes = 3,
              .lines = 2,
              .supported = 0.2,
              .reuse = 0.4});
    // Seeds were chosen for counts of sets in the range; by chance most such trees have few.
    add(Family::large, "near-700", largeRange, [] { return neighbours(3, 700, 500, 0.32, 4); });
    add(Family::large, "near-1500-a", largeRange,
        [] { return neighbours(2, 1500, 1000, 0.32, 4); });
    add(Family::large, "near-1500-b", largeRange,
        [] { return neighbours(3, 1500, 1000, 0.36, 4); });
    add(Family::large, "near-1500-c", largeRange,
        [] { return neighbours(5, 1500, 1000, 0.32, 5); });
    add(Family::large, "tangle-400-5", none, [] { return tangle(221, 401, 400, 0.05); });
    add(Family::large, "tangle-400-10", none, [] { return tangle(222, 401, 400, 0.10); });
    add(Family::large, "tangle-400-15", none, [] { return tangle(223, 401, 400, 0.15); });
    add(Family::large, "tangle-700-10", none, [] { return tangle(224, 701, 700, 0.10); });
    add(Family::large, "tangle-1000-5", none, [] { return tangle(225, 1001, 1000, 0.05); });
    add(Family::large, "tangle-1000-15", none, [] { return tangle(226, 1001, 1000, 0.15); });

    // C(n, k); nested: C(n, k) C(m, j)^k.
    add(Family::votes, "vote-10-20", closed("184756"), [] { return vote(10, 20); });
    add(Family::votes, "vote-15-30", closed("155117520"), [] { return vote(15, 30); });
    add(Family::votes, "vote-20-40", closed("137846528820"), [] { return vote(20, 40); });
    add(Family::votes, "nested-3-5-of-2-4", closed("2160"), [] { return nestedVote(3, 5, 2, 4); });
    add(Family::votes, "nested-10-20-of-3-6", closed("1891901440000000000"),
        [] { return nestedVote(10, 20, 3, 6); });
    add(Family::votes, "ring-18", none, [] { return ringOfVotes(3, 18, 2, 4); });
    add(Family::votes, "ring-40", none, [] { return ringOfVotes(5, 40, 2, 4); });

    for (const bool varied : {false, true})
        for (const std::uint32_t k : {1u, 3u})
            for (const std::uint32_t copies : {10u, 100u, 1000u, 10000u}) {
                const std::string series =
                    std::string(varied ? "varied" : "equal") + (k == 1 ? "-or" : "-vote");
                add(
                    Family::modules, series + "-" + std::to_string(copies), none,
                    [=] { return boilers(copies, k, varied); }, series, copies);
            }

    for (const std::uint32_t depth : {100'000u, 1'000'000u}) {
        const std::string ending = depth == 100'000u ? "-1e5" : "-1e6";
        add(
            Family::chains, "chain" + ending, closed(std::to_string(depth / 2 + 1)),
            [=] { return chain(depth, 0); }, "chain", depth);
        add(
            Family::chains, "chain-pool" + ending, none, [=] { return chain(depth, 1001); },
            "chain-pool", depth);
        add(
            Family::chains, "chain-echo" + ending, none, [=] { return echoingChain(depth, 3); },
            "chain-echo", depth);
        add(
            Family::chains, "ladder" + ending, none, [=] { return ladder(depth, false); }, "ladder",
            depth);
        add(
            Family::chains, "ladder-repeats" + ending, none, [=] { return ladder(depth, true); },
            "ladder-repeats", depth);
    }

    add(Family::mixed, "mixed-12", notCoherent, [] { return mixed(601, 12, 0.5); });
    add(Family::mixed, "mixed-20", notCoherent, [] { return mixed(602, 20, 0.4); });
    add(Family::mixed, "mixed-40", notCoherent, [] { return mixed(603, 40, 0.3); });
    add(Family::mixed, "mixed-60", notCoherent, [] { return mixed(604, 60, 0.3); });
    add(Family::mixed, "mixed-80", notCoherent, [] { return mixed(605, 80, 0.3); });

    for (const std::uint32_t n : {3u, 4u, 5u, 6u, 7u, 8u})
        add(
            Family::meshed, "one-way-" + std::to_string(n), none, [=] { return oneWayGrid(n); },
            "one-way", n * n);
    for (const std::uint32_t n : {3u, 4u, 5u, 6u, 7u, 8u})
        add(
            Family::meshed, "two-way-" + std::to_string(n), none, [=] { return twoWayGrid(n); },
            "two-way", n * n);
    return all;
}

} // namespace

const std::vector<Recipe>& allRecipes() {
    static const std::vector<Recipe> all = table();
    return all;
}

const Recipe* findRecipe(const std::string& name) {
    for (const Recipe& recipe : allRecipes())
        if (recipe.name == name) return &recipe;
    return nullptr;
}

std::string word(Family family) {
    switch (family) {
    case Family::plant: return "plant";
    case Family::large: return "large";
    case Family::votes: return "votes";
    case Family::modules: return "modules";
    case Family::chains: return "chains";
    case Family::mixed: return "mixed";
    case Family::meshed: return "meshed";
    }
    return "";
}

Census census(const Instance& instance) {
    const Formula& formula = instance.formula;
    Census census;
    const std::uint32_t top = instance.top.node();
    // Parents have higher numbers than their inputs: one sweep down, one up.
    std::vector<std::uint32_t> parents(formula.nodeCount(), 0), depth(formula.nodeCount(), 0);
    parents[top] = 1;
    for (std::uint32_t node = top + 1; node-- > 1;) {
        if (parents[node] == 0) continue;
        const bool isEvent = formula.op(node) == Op::variable;
        ++(isEvent ? census.events : census.gates);
        if (parents[node] > 1) ++(isEvent ? census.sharedEvents : census.sharedGates);
        if (isEvent) continue;
        for (const Literal input : formula.inputs(node))
            ++parents[input.node()];
    }
    for (std::uint32_t node = 1; node <= top; ++node) {
        if (parents[node] == 0 || formula.op(node) == Op::variable) continue;
        for (const Literal input : formula.inputs(node))
            depth[node] = std::max(depth[node], depth[input.node()] + 1);
    }
    census.depth = depth[top];
    return census;
}

bool same(const Instance& a, const Instance& b) {
    if (a.q != b.q || a.top != b.top || a.formula.nodeCount() != b.formula.nodeCount())
        return false;
    for (std::uint32_t node = 0; node < a.formula.nodeCount(); ++node) {
        const Op op = a.formula.op(node);
        if (op != b.formula.op(node) ||
            !std::ranges::equal(a.formula.inputs(node), b.formula.inputs(node)))
            return false;
        if (op == Op::variable && a.formula.variable(node) != b.formula.variable(node))
            return false;
        if (op == Op::atLeast && a.formula.k(node) != b.formula.k(node)) return false;
    }
    return true;
}

} // namespace bench
