// SPDX-License-Identifier: GPL-3.0-or-later
// What a caller allows the engine to use, and how it asks it to stop.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <stop_token>

namespace cutwater::logic {

class Recall;

struct Limits {
    // For preparation, diagrams and caches of one solution together.
    std::size_t memoryBytes = std::size_t{2} << 30;
    // Asked at least every few thousand steps.
    std::stop_token stop{};
    // Decision-diagram nodes that one order may make for one module before solve() gives up with
    // Stop::memory.
    std::uint64_t nodesPerModule = ~std::uint64_t{0};
    // Whether the sets are wanted too. Without them only probability(), coherent() and constant()
    // may be asked.
    bool sets = true;
    // Threads that may work at the same time; the answer is the same to the bit for any number.
    unsigned threads = 1;
    // Large formulas are cut at modules into pieces of at least so many gates and leaves, each
    // prepared by itself and equal ones once. Changes the work, never the answer.
    std::uint32_t leastPiece = 48;
    // What earlier solves have found out, or nothing.
    std::shared_ptr<Recall> recall{};
    // 0..1; called from the working thread.
    std::function<void(double)> progress{};
};

enum class Stop { none, cancelled, memory };

} // namespace cutwater::logic
