// SPDX-License-Identifier: GPL-3.0-or-later
// The mixing function of the node tables and caches.
#pragma once

#include <cstdint>

namespace cutwater::logic {

inline std::uint64_t mixed(std::uint64_t a, std::uint64_t b, std::uint64_t c) {
    std::uint64_t x = (a << 32 | b) * 0x9e3779b97f4a7c15u;
    x ^= x >> 32;
    x = (x + c) * 0xd6e8feb86659fd93u;
    return x ^ (x >> 32);
}

} // namespace cutwater::logic
