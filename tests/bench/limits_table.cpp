// SPDX-License-Identifier: GPL-3.0-or-later
// limits_table: how soon the engine ends when it is told to, and how well it keeps to the memory it
// was given, on instances of the families. One line each; nothing passes or fails here.
#include "tests/bench/child.h"
#include "tests/bench/families.h"
#include "tests/bench/random.h"

#include "models/logic/bounded.h"
#include "models/logic/solution.h"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <pthread.h>
#include <string>
#include <thread>
#include <vector>

using namespace bench;
namespace logic = cutwater::logic;

namespace {

constexpr int kTries = 20;
constexpr double kLongest = 2.0; // seconds that a run may go on before it is told to stop

// What is asked of the engine: the exact answer with its sets, or bounds.
enum class Task { solve, bound };

void run(Task task, const Instance& instance, const logic::Limits& limits) {
    if (task == Task::solve)
        logic::solve(instance.formula, instance.top, limits);
    else
        logic::boundTop(instance.formula, instance.top, instance.q, limits, {});
}

double processorSecondsOf(std::jthread& thread) {
    clockid_t clock{};
    timespec time{};
    if (pthread_getcpuclockid(thread.native_handle(), &clock) != 0) return 0;
    clock_gettime(clock, &time);
    return static_cast<double>(time.tv_sec) + 1e-9 * static_cast<double>(time.tv_nsec);
}

// From the request to the end, at a moment chosen at random. Processor time of the thread that
// works: what the engine still does; the clock also counts what else runs on the machine.
std::string cancelTimes(Task task, const Instance& instance) {
    Random random(20261125);
    std::vector<double> processor, clock;
    int over = 0;
    double longest = kLongest;
    for (int i = 0; i < kTries; ++i) {
        logic::Limits limits;
        std::stop_source stop;
        limits.stop = stop.get_token();
        std::atomic<bool> ended{false};
        double endedAt = 0, usedAtEnd = 0;
        const double start = wallSeconds();
        std::jthread worker([&] {
            run(task, instance, limits);
            usedAtEnd = processorSeconds();
            endedAt = wallSeconds();
            ended = true;
            ended.wait(true); // the other thread reads this one's clock
        });
        std::this_thread::sleep_for(std::chrono::duration<double>(random.unit() * longest));
        const bool early = ended;
        const double askedAt = wallSeconds(), usedBefore = processorSecondsOf(worker);
        stop.request_stop();
        while (!ended)
            std::this_thread::sleep_for(std::chrono::microseconds(200));
        ended = false;
        ended.notify_all();
        worker.join();
        if (early) {
            ++over;
            longest = endedAt - start; // so that the next request finds it at work
        } else {
            processor.push_back(1000 * (usedAtEnd - usedBefore));
            clock.push_back(1000 * (endedAt - askedAt));
        }
    }
    if (processor.empty()) return "over before it could be told";
    std::sort(processor.begin(), processor.end());
    std::sort(clock.begin(), clock.end());
    return fmt::format("{} told ({} over before): median {:.1f} ms, longest {:.1f} ms; by the "
                       "clock {:.1f} and {:.1f}",
                       processor.size(), over, processor[processor.size() / 2], processor.back(),
                       clock[clock.size() / 2], clock.back());
}

std::string memoryUse(Task task, const Instance& instance, std::size_t megabytes) {
    const ChildLimits child{120, std::size_t{8} << 30};
    const ChildOutcome outcome = runInChild(child, [&]() -> std::string {
        logic::Limits limits;
        limits.memoryBytes = megabytes << 20;
        run(task, instance, limits);
        return "done";
    });
    if (outcome.ending != Ending::answered) return sentence(outcome.ending, child);
    return fmt::format("{} MB allowed, {:.0f} MB used at most ({:+.0f} %)", megabytes,
                       outcome.peakGrowthMB,
                       100 * (outcome.peakGrowthMB / static_cast<double>(megabytes) - 1));
}

} // namespace

int main(int count, char** words) {
    std::vector<std::string> names(words + 1, words + count);
    if (names.empty())
        names = {"equal-or-10000", "chain-1e6",     "chain-pool-1e6", "ladder-1e6", "large-1000",
                 "large-3000",     "tangle-400-15", "tangle-1000-15", "two-way-6"};
    for (const std::string& name : names) {
        const Recipe* recipe = findRecipe(name);
        if (!recipe) {
            fmt::print(stderr, "limits_table: there is no instance '{}'\n", name);
            return 2;
        }
        const Instance instance = recipe->make();
        for (const Task task : {Task::solve, Task::bound}) {
            // In this order: a child is forked before this process has had threads.
            for (const std::size_t megabytes : {16, 64, 256, 1024})
                fmt::print("{:16} {:6} {}\n", name, task == Task::solve ? "solve" : "bound",
                           memoryUse(task, instance, megabytes));
            const ChildLimits child{600, std::size_t{8} << 30};
            const ChildOutcome times =
                runInChild(child, [&] { return cancelTimes(task, instance); });
            fmt::print("{:16} {:6} {}\n", name, task == Task::solve ? "solve" : "bound",
                       times.ending == Ending::answered ? times.answer
                                                        : sentence(times.ending, child));
            std::fflush(stdout);
        }
    }
}
