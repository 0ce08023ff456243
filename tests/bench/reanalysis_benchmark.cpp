// SPDX-License-Identifier: GPL-3.0-or-later
// What an editor asks after each keystroke: the same tree again, but for one gate or one number.
#include "models/logic/keep_memory.h"
#include "models/logic/recall.h"
#include "models/logic/solution.h"
#include "tests/bench/families.h"

#include <benchmark/benchmark.h>

#include <string>

namespace logic = cutwater::logic;

namespace {

// The same formula with the gate `changed` turned from "and" to "or" or back, a vote to one vote
// more or less.
bench::Instance withGateChanged(const bench::Instance& from, std::uint32_t changed) {
    bench::Instance to;
    to.q = from.q;
    to.top = from.top;
    for (std::uint32_t node = 1; node < from.formula.nodeCount(); ++node) {
        logic::Op op = from.formula.op(node);
        if (op == logic::Op::variable) {
            to.formula.addVariable();
            continue;
        }
        std::int64_t k = op == logic::Op::atLeast ? from.formula.k(node) : 0;
        if (node == changed) {
            if (op == logic::Op::atLeast)
                k += k > 1 ? -1 : 1;
            else
                op = op == logic::Op::conjunction ? logic::Op::disjunction : logic::Op::conjunction;
        }
        to.formula.addGate(op, from.formula.inputs(node), k);
    }
    return to;
}

std::vector<std::uint32_t> gatesOf(const bench::Instance& instance) {
    std::vector<std::uint32_t> gates;
    for (std::uint32_t node = 1; node < instance.top.node(); ++node)
        if (instance.formula.op(node) != logic::Op::variable) gates.push_back(node);
    return gates;
}

// Twenty changes spread over the tree, each made to the tree as it was. With `recall` that tree has
// just been solved, and nothing else ever: a change that was seen before would cost nothing.
void oneGate(benchmark::State& state, const std::string& name, bool sets, bool recall) {
    const bench::Instance base = bench::findRecipe(name)->make();
    const auto gates = gatesOf(base);
    std::vector<bench::Instance> changed;
    for (std::size_t i = 0; i < 20; ++i)
        changed.push_back(withGateChanged(base, gates[i * gates.size() / 20]));
    std::size_t next = 0;
    for (auto _ : state) {
        state.PauseTiming();
        logic::Limits limits;
        limits.sets = sets;
        if (recall) {
            limits.recall = std::make_shared<logic::Recall>();
            logic::solve(base.formula, base.top, limits);
        }
        const bench::Instance& one = changed[next++ % changed.size()];
        state.ResumeTiming();
        const auto outcome = logic::solve(one.formula, one.top, limits);
        if (!outcome.solution) return state.SkipWithError("not solved within the memory");
        benchmark::DoNotOptimize(outcome.solution->probability(one.q));
    }
}

void oneNumber(benchmark::State& state, const std::string& name) {
    bench::Instance instance = bench::findRecipe(name)->make();
    logic::Limits limits;
    limits.sets = false;
    const auto outcome = logic::solve(instance.formula, instance.top, limits);
    if (!outcome.solution) return state.SkipWithError("not solved within the memory");
    std::size_t next = 0;
    for (auto _ : state) {
        double& q = instance.q[next++ % instance.q.size()];
        q = q < 0.5 ? q * 1.01 : q / 1.01;
        benchmark::DoNotOptimize(outcome.solution->probability(instance.q));
    }
}

} // namespace

int main(int count, char** words) {
    cutwater::logic::keepMemory();
    for (const std::string name :
         {"plant-60", "plant-200", "plant-250", "plant-300", "equal-or-100", "varied-vote-1000"}) {
        const auto add = [&](const std::string& what, auto run) {
            benchmark::RegisterBenchmark((what + "/" + name).c_str(), run)
                ->Unit(benchmark::kMillisecond);
        };
        add("after-one-number", [=](auto& state) { oneNumber(state, name); });
        add("after-one-gate", [=](auto& state) { oneGate(state, name, false, true); });
        add("after-one-gate-with-sets", [=](auto& state) { oneGate(state, name, true, true); });
        add("after-one-gate-from-nothing",
            [=](auto& state) { oneGate(state, name, false, false); });
    }
    benchmark::Initialize(&count, words);
    if (benchmark::ReportUnrecognizedArguments(count, words)) return 2;
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
