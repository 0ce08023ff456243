// SPDX-License-Identifier: GPL-3.0-or-later
// Single operations of the engine, on one instance of each family that it answers in little time.
#include "models/logic/keep_memory.h"
#include "models/logic/solution.h"
#include "tests/bench/families.h"

#include <benchmark/benchmark.h>

#include <functional>
#include <map>
#include <string>

namespace logic = cutwater::logic;

namespace {

constexpr std::size_t kListed = 1000;

const bench::Instance& instance(const std::string& name) {
    static std::map<std::string, bench::Instance> made;
    const auto found = made.find(name);
    return found != made.end() ? found->second
                               : made.emplace(name, bench::findRecipe(name)->make()).first->second;
}

// Solved once for all benchmarks that only read.
const logic::Solution* solved(const std::string& name, benchmark::State& state) {
    static std::map<std::string, logic::SolveOutcome> outcomes;
    if (!outcomes.contains(name))
        outcomes.emplace(name, logic::solve(instance(name).formula, instance(name).top));
    const logic::SolveOutcome& outcome = outcomes.at(name);
    if (!outcome.solution) state.SkipWithError("not solved within the memory");
    return outcome.solution ? &*outcome.solution : nullptr;
}

void solve(benchmark::State& state, const std::string& name, bool sets, unsigned threads) {
    const bench::Instance& in = instance(name);
    logic::Limits limits;
    limits.sets = sets;
    limits.threads = threads;
    for (auto _ : state) {
        const auto outcome = logic::solve(in.formula, in.top, limits);
        if (!outcome.solution) return state.SkipWithError("not solved within the memory");
        benchmark::DoNotOptimize(outcome.solution->probability(in.q));
    }
}

// What follows when somebody has changed one number.
void probability(benchmark::State& state, const std::string& name) {
    std::vector<double> q = instance(name).q;
    const logic::Solution* solution = solved(name, state);
    std::size_t changed = 0;
    for (auto _ : state) {
        if (!solution) break;
        double& one = q[changed++ % q.size()];
        one = one < 0.5 ? one * 1.01 : one / 1.01;
        benchmark::DoNotOptimize(solution->probability(q));
    }
}

void counts(benchmark::State& state, const std::string& name) {
    const logic::Solution* solution = solved(name, state);
    for (auto _ : state) {
        if (!solution) break;
        benchmark::DoNotOptimize(solution->setCount());
        benchmark::DoNotOptimize(solution->countsByOrder(20));
    }
}

void listing(benchmark::State& state, const std::string& name, logic::Sorting sorting) {
    const bench::Instance& in = instance(name);
    const logic::Solution* solution = solved(name, state);
    logic::ListingWish wish;
    wish.sorting = sorting;
    std::size_t found = 0;
    for (auto _ : state) {
        if (!solution) break;
        auto list = solution->list(in.q, wish);
        for (found = 0; found < kListed; ++found) {
            const auto set = list.next();
            if (!set) break;
            benchmark::DoNotOptimize(set->probability);
        }
        if (list.outOfMemory()) state.SkipWithError("the listing ran out of memory");
    }
    state.counters["sets"] = static_cast<double>(found);
    if (solution) state.counters["of"] = toDouble(solution->setCount());
}

void add(const std::string& what, const std::string& name,
         const std::function<void(benchmark::State&)>& run) {
    benchmark::RegisterBenchmark((what + "/" + name).c_str(), run)->Unit(benchmark::kMillisecond);
}

void registerAll() {
    for (const std::string name :
         {"plant-200", "plant-300", "large-500", "near-1500-c", "vote-20-40", "nested-10-20-of-3-6",
          "equal-or-1000", "varied-vote-1000", "chain-1e5", "mixed-80", "one-way-7"}) {
        add("solve", name, [=](auto& state) { solve(state, name, false, 1); });
        add("solve-with-sets", name, [=](auto& state) { solve(state, name, true, 1); });
        add("probability-again", name, [=](auto& state) { probability(state, name); });
        add("counts", name, [=](auto& state) { counts(state, name); });
    }
    for (const std::string name : {"equal-or-10000", "varied-or-10000"})
        for (const unsigned threads : {1u, 2u})
            benchmark::RegisterBenchmark(
                ("solve-threads/" + name + "/" + std::to_string(threads)).c_str(),
                [=](auto& state) { solve(state, name, true, threads); })
                ->Unit(benchmark::kMillisecond)
                ->UseRealTime();
    for (const std::string name : {"plant-300", "large-500", "large-1000", "vote-20-40",
                                   "near-1500-a", "varied-vote-1000"}) {
        add("first-1000-by-probability", name,
            [=](auto& state) { listing(state, name, logic::Sorting::byProbability); });
        add("first-1000-by-order", name,
            [=](auto& state) { listing(state, name, logic::Sorting::byOrder); });
    }
}

} // namespace

int main(int count, char** words) {
    cutwater::logic::keepMemory();
    registerAll();
    benchmark::Initialize(&count, words);
    if (benchmark::ReportUnrecognizedArguments(count, words)) return 2;
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
