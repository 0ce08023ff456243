// SPDX-License-Identifier: GPL-3.0-or-later
// Child: work done in a process of its own, so that one that takes too long or too much memory ends
// as a line in a table.
#pragma once

#include <cstddef>
#include <functional>
#include <string>

namespace bench {

struct ChildLimits {
    double seconds = 20; // of processor time; thirty times that on the clock
    std::size_t memoryBytes = std::size_t{2} << 30; // on top of what the process has already
};

enum class Ending { answered, tooLong, tooMuchMemory, broken };

struct ChildOutcome {
    Ending ending = Ending::broken;
    std::string answer;      // what `work` returned
    double peakGrowthMB = 0; // resident memory at its highest, above what it was at the start
};

// Runs `work` in a fork with a stack large enough for libraries that recurse. Not to be called
// while other threads run.
ChildOutcome runInChild(const ChildLimits& limits, const std::function<std::string()>& work);

// "no answer in 20 s", "over 2048 MB", "ended early".
std::string sentence(Ending ending, const ChildLimits& limits);

// Seconds, for differences.
double wallSeconds();
double processorSeconds(); // of this thread

// Memory that the process holds now, in bytes, and at most until now.
std::size_t residentBytes();
std::size_t peakResidentBytes();

} // namespace bench
