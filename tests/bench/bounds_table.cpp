// SPDX-License-Identifier: GPL-3.0-or-later
// bounds_table: how wide the proven interval of a tree is that is not solved, and what it took; one
// line each. Without names: family 2's trees that do not fit, and the largest plan of it with other
// seeds and more functions, so that nothing is fitted to one tree.
#include "tests/bench/child.h"
#include "tests/bench/families.h"

#include "models/logic/bounded.h"

#include <fmt/format.h>

#include <cstdio>
#include <string>
#include <vector>

using namespace bench;
namespace logic = cutwater::logic;

namespace {

const char* word(logic::BoundsMethod method) {
    switch (method) {
    case logic::BoundsMethod::exact: return "exact";
    case logic::BoundsMethod::cases: return "cases";
    case logic::BoundsMethod::cutOff: return "cut-off";
    }
    return "";
}

std::string boundsOf(const Instance& instance) {
    const double start = processorSeconds();
    const auto outcome = logic::boundTop(instance.formula, instance.top, instance.q, {}, {});
    const double seconds = processorSeconds() - start;
    if (!outcome.bounds) return fmt::format("none in {:.2f} s", seconds);
    const logic::Bounds& bounds = *outcome.bounds;
    return fmt::format("{:8} {:.6e} to {:.6e}, {:7.3f} % wide, {:6} cases, {:6.2f} s",
                       word(bounds.method), bounds.lower, bounds.upper,
                       100 * (bounds.upper - bounds.lower) / bounds.lower, bounds.cases, seconds);
}

void print(const std::string& name, const Instance& instance) {
    const ChildLimits limits{600, std::size_t{8} << 30};
    const ChildOutcome outcome = runInChild(limits, [&] { return boundsOf(instance); });
    fmt::print("{:20} {}, {:5.0f} MB\n", name,
               outcome.ending == Ending::answered ? outcome.answer
                                                  : sentence(outcome.ending, limits),
               outcome.peakGrowthMB);
    std::fflush(stdout);
}

} // namespace

int main(int count, char** words) {
    const std::vector<std::string> names(words + 1, words + count);
    for (const std::string& name : names) {
        const Recipe* recipe = findRecipe(name);
        if (!recipe) {
            fmt::print(stderr, "bounds_table: there is no instance '{}'\n", name);
            return 2;
        }
        print(name, recipe->make());
    }
    if (!names.empty()) return 0;
    for (const char* name : {"large-3000", "tangle-400-10", "tangle-400-15", "tangle-700-10",
                             "tangle-1000-5", "tangle-1000-15"})
        print(name, findRecipe(name)->make());
    for (const std::uint32_t functions : {12, 20, 30, 40})
        for (const std::uint64_t seed : {1, 2, 3, 4, 5, 6})
            print(fmt::format("{} functions, seed {}", functions, seed),
                  plant({.seed = seed,
                         .functions = functions,
                         .trains = 8,
                         .components = 10,
                         .modes = 3,
                         .lines = 2,
                         .supported = 0.2,
                         .reuse = 0.4}));
}
