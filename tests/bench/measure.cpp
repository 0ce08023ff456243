// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/measure.h"

#include "models/logic/solution.h"

#include <algorithm>
#include <cstring>
#include <type_traits>

namespace bench {

namespace {

constexpr double kLongEnough = 0.05; // seconds; shorter work is repeated until it took so long
constexpr int kMostRepeats = 200;

template <typename T>
std::string bytesOf(const T& value) {
    static_assert(std::is_trivially_copyable_v<T>);
    return {reinterpret_cast<const char*>(&value), sizeof value};
}

template <typename T>
bool fromBytes(const std::string& bytes, T& value) {
    if (bytes.size() != sizeof value) return false;
    std::memcpy(&value, bytes.data(), sizeof value);
    return true;
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

// Repeats `once` and puts the median of its two times into the last result.
template <typename Result, typename Once>
Result repeated(int runs, Once once) {
    std::vector<double> processor, wall;
    Result last = once();
    processor.push_back(last.processorSeconds);
    wall.push_back(last.wallSeconds);
    double spent = last.processorSeconds;
    for (int i = 1; i < kMostRepeats && (i < runs || spent < kLongEnough); ++i) {
        last = once();
        processor.push_back(last.processorSeconds);
        wall.push_back(last.wallSeconds);
        spent += last.processorSeconds;
    }
    last.processorSeconds = median(processor);
    last.wallSeconds = median(wall);
    return last;
}

Ours solveOnce(const Instance& instance, const MeasureWish& wish, bool sets) {
    Ours ours;
    cutwater::logic::Limits limits;
    limits.memoryBytes = wish.limits.memoryBytes - wish.limits.memoryBytes / 8;
    limits.sets = sets;
    limits.threads = wish.threads;
    const double wall = wallSeconds(), processor = processorSeconds();
    const auto takeTimes = [&] {
        ours.wallSeconds = wallSeconds() - wall;
        // The clock of one thread knows nothing of the others.
        ours.processorSeconds =
            wish.threads == 1 ? processorSeconds() - processor : ours.wallSeconds;
    };
    const auto outcome = cutwater::logic::solve(instance.formula, instance.top, limits);
    if (!outcome.solution) {
        ours.stopped = true;
        takeTimes();
        return ours;
    }
    const auto probability = outcome.solution->probability(instance.q);
    takeTimes();
    ours.probability = probability.occurs;
    ours.complement = probability.occursNot;
    const auto& effort = outcome.solution->effort();
    ours.events = effort.events;
    ours.gates = effort.gates;
    ours.modules = effort.modules;
    ours.diagramNodes = effort.diagramNodes;
    ours.setNodes = effort.setNodes;
    ours.engineMB = static_cast<double>(effort.memoryBytes) / 1e6;
    if (sets) ours.sets = outcome.solution->setCount();
    ours.coherent = outcome.solution->coherent();
    return ours;
}

// What crosses the pipe.
struct BuddyAnswer {
    BuddyResult result;
    bool failed = false;
};

std::string name(Order order) {
    switch (order) {
    case Order::depthFirst: break;
    case Order::eventsFirst: return ", events first";
    case Order::byLevel: return ", by level";
    }
    return "";
}

BuddyRun runBuddy(const Instance& instance, const std::string& variant, const BuddyWish& buddyWish,
                  const MeasureWish& wish) {
    BuddyRun run;
    run.variant = variant + name(buddyWish.order);
    run.order = buddyWish.order;
    const ChildOutcome outcome = runInChild(wish.limits, [&] {
        BuddyAnswer answer;
        BuddyResult result;
        const auto once = [&] {
            const auto one = solveWithBuddy(instance, buddyWish);
            answer.failed |= !one;
            return one.value_or(BuddyResult{});
        };
        // Long ones once only: what is known to be slow is not made slower.
        result = once();
        if (!answer.failed && result.processorSeconds < wish.limits.seconds / (2 * wish.runs) &&
            !buddyWish.countSets)
            result = repeated<BuddyResult>(wish.runs, once);
        answer.result = result;
        return bytesOf(answer);
    });
    run.ending = outcome.ending;
    run.peakMB = outcome.peakGrowthMB;
    BuddyAnswer answer;
    if (run.ending == Ending::answered) {
        if (!fromBytes(outcome.answer, answer))
            run.ending = Ending::broken;
        else if (answer.failed)
            run.ending = Ending::tooMuchMemory;
        else
            run.result = answer.result;
    }
    run.hasSets = run.ending == Ending::answered && run.result.sets.has_value();
    return run;
}

// Which order is better is found with ample tables; stock tables and tables fitted to what that run
// needed are then tried with it.
void measureBuddy(Measured& measured, const Instance& instance, const MeasureWish& wish) {
    const auto size = static_cast<double>(measured.census.events + measured.census.gates);
    const auto add = [&](const std::string& variant, const BuddyWish& buddyWish) {
        measured.buddy.push_back(runBuddy(instance, variant, buddyWish, wish));
        const BuddyRun& run = measured.buddy.back();
        if (run.ending != Ending::answered) return false;
        const int index = static_cast<int>(measured.buddy.size()) - 1;
        if (measured.best < 0 ||
            run.result.processorSeconds <
                measured.buddy[static_cast<std::size_t>(measured.best)].result.processorSeconds)
            measured.best = index;
        return true;
    };
    BuddyWish ample;
    ample.nodes = static_cast<int>(std::clamp(size * 50, 2e4, 8e6));
    ample.cache = ample.nodes / 8;
    ample.cacheRatio = 8;
    ample.maxIncrease = 8'000'000;
    bool any = false;
    for (const Order order : {Order::depthFirst, Order::eventsFirst, Order::byLevel}) {
        ample.order = order;
        any |= add("ample", ample);
    }
    if (any) {
        const BuddyRun better = measured.buddy[static_cast<std::size_t>(measured.best)];
        const Order order = better.order;
        // As if somebody knew in advance: no growth, no collection, caches of three sizes.
        const double made = static_cast<double>(better.result.producedNodes);
        BuddyWish fitted = ample;
        fitted.order = order;
        fitted.nodes = static_cast<int>(std::clamp(made * 1.3 + 1000, 2e3, 3e7));
        for (const int ratio : {1, 4, 16}) {
            fitted.cacheRatio = ratio;
            fitted.cache = std::max(fitted.nodes / ratio, 500);
            add("fitted 1:" + std::to_string(ratio), fitted);
        }
        BuddyWish stock;
        stock.order = order;
        add("stock", stock);
    } else if (wish.thorough) {
        add("stock", BuddyWish{});
    }
    if (wish.sift) {
        BuddyWish sifted = ample;
        sifted.order = Order::depthFirst;
        sifted.sift = true;
        add("sifted", sifted);
    }
}

} // namespace

Ours measureOurs(const Instance& instance, const MeasureWish& wish, bool sets) {
    Ours ours;
    const ChildOutcome outcome = runInChild(wish.limits, [&] {
        Ours once = solveOnce(instance, wish, sets);
        if (!once.stopped && once.processorSeconds < wish.limits.seconds / (2 * wish.runs))
            once = repeated<Ours>(wish.runs, [&] { return solveOnce(instance, wish, sets); });
        return bytesOf(once);
    });
    if (outcome.ending == Ending::answered && fromBytes(outcome.answer, ours))
        ours.ending = ours.stopped ? Ending::tooMuchMemory : Ending::answered;
    else
        ours.ending = outcome.ending;
    ours.peakMB = outcome.peakGrowthMB;
    return ours;
}

Measured measure(const Instance& instance, bool coherent, const MeasureWish& wish) {
    Measured measured;
    measured.census = census(instance);
    measured.ours = measureOurs(instance, wish, false);
    measured.withSets = measureOurs(instance, wish, true);
    if (!wish.buddy) return measured;
    measureBuddy(measured, instance, wish);
    if (!coherent || !wish.countWithBuddy || measured.best < 0) return measured;
    const BuddyRun best = measured.buddy[static_cast<std::size_t>(measured.best)];
    if (best.result.processorSeconds < wish.limits.seconds / 8) {
        BuddyWish counting;
        counting.nodes = static_cast<int>(
            std::clamp(static_cast<double>(best.result.producedNodes) * 4, 2e4, 1e7));
        counting.cache = counting.nodes / 4;
        counting.cacheRatio = 4;
        counting.maxIncrease = 8'000'000;
        counting.countSets = true;
        counting.order = best.order;
        measured.buddy.push_back(runBuddy(instance, "counting", counting, wish));
    }
    return measured;
}

} // namespace bench
