// SPDX-License-Identifier: GPL-3.0-or-later
// One instance measured: ours and BuDDy's variants, each in a child process of its own.
#pragma once

#include "tests/bench/child.h"
#include "tests/bench/reference_buddy.h"

#include "models/logic/count.h"

#include <string>
#include <vector>

namespace bench {

struct MeasureWish {
    ChildLimits limits;
    int runs = 3; // the median of so many; tiny ones are repeated more often
    bool buddy = true;
    bool sift = false; // BuDDy's automatic reordering too
    bool countWithBuddy = true;
    unsigned threads = 1;  // ours; with more than one the clock is the time
    bool thorough = false; // stock tables even where ample ones gave no answer
};

// A time is the median over the runs, in processor seconds; the clock is told beside it.
struct Ours {
    Ending ending = Ending::broken;
    bool stopped = false; // solve() itself gave up, within its memory
    double processorSeconds = 0, wallSeconds = 0;
    double probability = 0, complement = 0;
    double peakMB = 0, engineMB = 0;
    std::uint32_t events = 0, gates = 0, modules = 0; // after simplification
    std::uint64_t diagramNodes = 0, setNodes = 0;
    cutwater::logic::Count sets;
    bool coherent = true;
};

struct BuddyRun {
    std::string variant; // "ample", "fitted 1:4", "stock", "sifted"; and the order
    Order order = Order::depthFirst;
    Ending ending = Ending::broken;
    double peakMB = 0;
    BuddyResult result; // medians
    bool hasSets = false;
};

struct Measured {
    Census census;
    Ours ours;     // probability only, as BuDDy
    Ours withSets; // the cut-set diagrams too
    std::vector<BuddyRun> buddy;
    int best = -1; // of `buddy`; -1: none answered
};

Measured measure(const Instance& instance, bool coherent, const MeasureWish& wish);

// Ours alone.
Ours measureOurs(const Instance& instance, const MeasureWish& wish, bool sets);

} // namespace bench
