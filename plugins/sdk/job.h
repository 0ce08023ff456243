// SPDX-License-Identifier: GPL-3.0-or-later
// Job: how a face and a running plug-in talk: progress one way, cancellation and limits the other.
#pragma once

#include <cstddef>
#include <functional>
#include <stop_token>
#include <string>

namespace cutwater::sdk {

struct Job {
    std::stop_token stop;
    std::size_t memoryBytes = std::size_t{2} << 30;
    std::function<void(double, const std::string&)>
        progress; // 0..1 and what is being done; may be empty
};

enum class Ending { finished, failed, cancelled, overLimit };

} // namespace cutwater::sdk
