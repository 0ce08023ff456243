// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a project of 140,000 events beside solving it: the one must not cost more than the other.
// `load` is reading as a user meets it: from the bytes of a file to a project that is validated.
#include "models/document/document.h"
#include "models/logic/solution.h"
#include "models/reliability/tree_formula.h"
#include "tests/bench/as_project.h"

#include <benchmark/benchmark.h>
#include <cstdio>
#include <string>
#include <unistd.h>

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

// A file of that text, as long as the program runs.
class File {
public:
    File() : m_path("document_benchmark." + std::to_string(::getpid()) + ".cutwater") {
        m_written = document::save(theProject(), m_path).empty();
    }
    ~File() { std::remove(m_path.c_str()); }
    File(const File&) = delete;
    File& operator=(const File&) = delete;
    const std::string& path() const { return m_path; }
    bool written() const { return m_written; }

private:
    std::string m_path;
    bool m_written = false;
};

void load(benchmark::State& state) {
    const File file;
    if (!file.written()) return state.SkipWithError("no file can be written in this folder");
    for (auto _ : state) {
        const auto outcome = document::load(file.path());
        if (!outcome) return state.SkipWithError("the file was not understood");
    }
}
BENCHMARK(load)->Unit(benchmark::kMillisecond);

void parse(benchmark::State& state) {
    std::size_t events = 0;
    text(); // not to be timed
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
    theProject();
    for (auto _ : state)
        benchmark::DoNotOptimize(document::write(theProject()));
}
BENCHMARK(write)->Unit(benchmark::kMillisecond);

void validate(benchmark::State& state) {
    theProject();
    for (auto _ : state)
        benchmark::DoNotOptimize(project::validate(theProject()));
}
BENCHMARK(validate)->Unit(benchmark::kMillisecond);

void treeToFormula(benchmark::State& state) {
    theProject();
    for (auto _ : state) {
        const project::Index index(theProject());
        benchmark::DoNotOptimize(
            reliability::toFormula(theProject(), index, theProject().tops.front().node.id));
    }
}
BENCHMARK(treeToFormula)->Unit(benchmark::kMillisecond);

void solve(benchmark::State& state) {
    instance();
    for (auto _ : state) {
        const auto outcome = logic::solve(instance().formula, instance().top);
        if (!outcome.solution) return state.SkipWithError("not solved within the memory");
        benchmark::DoNotOptimize(outcome.solution->probability(instance().q));
    }
}
BENCHMARK(solve)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
