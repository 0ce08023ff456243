// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a project of 140,000 events beside solving it: the one must not cost more than the other.
#include "models/document/document.h"
#include "models/logic/solution.h"
#include "models/reliability/tree_formula.h"
#include "tests/bench/as_project.h"

#include <benchmark/benchmark.h>

#include <string>

namespace document = cutwater::document;
namespace logic = cutwater::logic;
namespace project = cutwater::project;
namespace reliability = cutwater::reliability;

namespace {

constexpr std::uint32_t kBoilers = 2334; // of 60 events

const bench::Instance& instance() {
    static const bench::Instance made = bench::boilers(kBoilers, 1, true);
    return made;
}

const project::Project& theProject() {
    static const project::Project made = bench::asProject(instance());
    return made;
}

const std::string& text() {
    static const std::string written = [] {
        auto outcome = document::write(theProject());
        return outcome ? *outcome : std::string();
    }();
    return written;
}

void parse(benchmark::State& state) {
    std::size_t events = 0;
    for (auto _ : state) {
        const auto outcome = document::parse(text());
        if (!outcome) return state.SkipWithError("the text was not understood");
        events = outcome->project.events.size();
    }
    state.counters["events"] = static_cast<double>(events);
    state.counters["MB"] = static_cast<double>(text().size()) / 1e6;
}
BENCHMARK(parse)->Unit(benchmark::kMillisecond);

void write(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(document::write(theProject()));
}
BENCHMARK(write)->Unit(benchmark::kMillisecond);

void validate(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(project::validate(theProject()));
}
BENCHMARK(validate)->Unit(benchmark::kMillisecond);

void treeToFormula(benchmark::State& state) {
    for (auto _ : state) {
        const project::Index index(theProject());
        benchmark::DoNotOptimize(
            reliability::toFormula(theProject(), index, theProject().tops.front().node.id));
    }
}
BENCHMARK(treeToFormula)->Unit(benchmark::kMillisecond);

void solve(benchmark::State& state) {
    for (auto _ : state) {
        const auto outcome = logic::solve(instance().formula, instance().top);
        if (!outcome.solution) return state.SkipWithError("not solved within the memory");
        benchmark::DoNotOptimize(outcome.solution->probability(instance().q));
    }
}
BENCHMARK(solve)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
