// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/race.h"

#include "models/logic/order.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

constexpr std::uint64_t kGlance = 8000;      // what nearly every module needs less than
constexpr std::uint64_t kFirstRound = 20000; // of every order, and for each word of the program:
constexpr std::uint64_t kNodesPerWord = 2;   // a long ladder is no harder than a short one
constexpr std::uint64_t kFactor = 6;         // from round to round
constexpr std::size_t kLongProgram =
    20000; // words; pulling together would take longer than building

struct Runner {
    Order order;
    std::size_t stepsDone = 0; // in the last round
};

std::vector<Runner> runners(const Program& program) {
    std::vector<Runner> all;
    if (program.code.size() <= kLongProgram) {
        all.push_back({pulledTogether(program, mostWaysFirst(program)), 0});
        all.push_back({pulledTogether(program, ownLeavesFirst(program)), 0});
    }
    all.push_back({ownLeavesFirst(program), 0});
    all.push_back({gatesFirst(program), 0});
    all.push_back({byLevel(program), 0});
    return all;
}

} // namespace

std::optional<Built> buildByRace(const Program& program, Bdd& bdd, Budget& budget,
                                 std::uint64_t mostNodes) {
    // Six orders, and where the gates stand.
    const Charge charge(budget,
                        program.leaves * 6 * sizeof(std::uint32_t) + program.code.size() * 2);
    std::size_t done = 0;
    const auto attempt = [&](const Order& order, const BuilderWish& wish) {
        return build(program, order, bdd, budget, wish, &done);
    };

    const bool oneGate = GateView(program, 0).count() + 3 == program.code.size();
    if (auto built = attempt(oneGate ? ownLeavesFirst(program) : gatesFirst(program),
                             {.maxMade = oneGate ? ~std::uint64_t{0} : kGlance}))
        return built;
    std::vector<Runner> all = runners(program);
    // As long as there is room for a round: a node costs some forty bytes with its share of the
    // table and the cache.
    const std::uint64_t first =
        std::max<std::uint64_t>(kFirstRound, kNodesPerWord * program.code.size());
    for (std::uint64_t allowance = std::min(first, mostNodes);; allowance *= kFactor) {
        if (allowance > mostNodes) return {};
        bool outOfMemory = false;
        for (Runner& runner : all) {
            try {
                if (auto built = attempt(runner.order, {.maxMade = allowance})) return built;
            } catch (const Stopped& stopped) {
                if (stopped.why != Stop::memory) throw;
                outOfMemory = true;
            }
            runner.stepsDone = done;
        }
        if (outOfMemory) break;
        // Who came furthest starts first next time.
        std::stable_sort(all.begin(), all.end(), [](const Runner& a, const Runner& b) {
            return a.stepsDone > b.stepsDone;
        });
    }
    bdd.release();
    if (auto built = attempt(all.front().order, {.siftAbove = 1u << 16})) return built;
    throw Stopped{Stop::memory};
}

} // namespace cutwater::logic
