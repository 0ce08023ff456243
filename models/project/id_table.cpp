// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/id_table.h"

#include <cstring>

namespace cutwater::project {

std::uint32_t IdTable::hash(std::string_view id) {
    // Eight bytes at a time. Multiplying by an odd number near 2^64 / golden ratio carries every
    // bit upwards (Knuth 1973, multiplicative hashing), folding brings the upper half down again.
    constexpr std::uint64_t kFactor = 0x9E3779B97F4A7C15u;
    std::uint64_t mixed = id.size();
    const auto mix = [&mixed](std::uint64_t word) {
        mixed = (mixed ^ word) * kFactor;
        mixed ^= mixed >> 32;
    };
    std::size_t at = 0;
    for (; at + 8 <= id.size(); at += 8) {
        std::uint64_t word;
        std::memcpy(&word, id.data() + at, 8);
        mix(word);
    }
    std::uint64_t rest = 0;
    for (; at < id.size(); ++at)
        rest = rest << 8 | static_cast<unsigned char>(id[at]);
    // Ids that follow one another, as E10 to E17, become neighbours in one line of the cache: who
    // asks for one is likely to ask for the next.
    constexpr std::uint64_t kNeighbours = 7;
    const std::uint64_t last = id.empty() ? 0 : static_cast<unsigned char>(id.back()) & kNeighbours;
    if (!id.empty() && id.size() % 8 != 0) rest &= ~kNeighbours;
    mix(rest);
    mix(0);
    return static_cast<std::uint32_t>((mixed & ~kNeighbours) | last);
}

} // namespace cutwater::project
