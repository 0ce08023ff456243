// SPDX-License-Identifier: GPL-3.0-or-later
// What a caller allows the engine to use, and how it asks it to stop.
#pragma once

#include <cstddef>
#include <functional>
#include <stop_token>
#include <string>

namespace cutwater::logic {

struct Limits {
    std::size_t memoryBytes = std::size_t{2}
                              << 30;      // for all diagrams and caches of one solution together
    std::stop_token stop;                 // asked at least every few thousand steps
    std::function<void(double)> progress; // 0..1, may be empty; called from the working thread
};

enum class Stop { none, cancelled, memory };

} // namespace cutwater::logic
