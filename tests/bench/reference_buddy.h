// SPDX-License-Identifier: GPL-3.0-or-later
// The same formula solved with BuDDy (Debian libbdd-dev), a general-purpose library for decision
// diagrams, used as well as we know how. One process can hold one BuDDy at a time: call these from
// one thread, and nothing else of BuDDy beside them.
#pragma once

#include "tests/bench/families.h"

#include "models/logic/count.h"

#include <optional>
#include <span>

namespace bench {

enum class Order {
    depthFirst,  // as a walk from the top meets the events, left to right
    eventsFirst, // the same, but the events of a gate before what hangs below its gates
    byLevel,     // as a walk level by level meets them
};

struct BuddyWish {
    Order order = Order::depthFirst;
    int nodes = 10'000;       // table at the start
    int cache = 1'000;        // entries of each of its six caches at the start
    int cacheRatio = 0;       // nodes for each cache entry when the table grows; 0: caches stay
    int maxIncrease = 50'000; // nodes by which the table grows at most at a time
    bool sift = false;        // automatic reordering
    bool countSets = false;   // minimal cut sets too; not timed; coherent formulas only
};

struct BuddyResult {
    double initSeconds = 0; // bdd_init and bdd_setvarnum, processor time
    double wallSeconds = 0; // build and probability, without the former
    double processorSeconds = 0;
    double probability = 0;
    long finalNodes = 0;    // of the top's diagram
    long tableNodes = 0;    // allocated at the end
    long producedNodes = 0; // made in all
    double tableMB = 0;     // node table and caches
    int collections = 0;
    std::optional<cutwater::logic::Count> sets;
};

// Empty where BuDDy reported that it cannot go on (memory).
std::optional<BuddyResult> solveWithBuddy(const Instance& instance, const BuddyWish& wish);

// The events that the top depends on, in that order.
std::vector<std::uint32_t> variableOrder(const Instance& instance, Order order);

} // namespace bench
