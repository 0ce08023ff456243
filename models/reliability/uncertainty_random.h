// SPDX-License-Identifier: GPL-3.0-or-later
// Random numbers that are a function of their place: the number for sample i of input d never
// depends on which thread asks, when, or what else is asked.
#pragma once

#include <array>
#include <cstdint>

namespace cutwater::reliability {

// Philox4x32 with ten rounds (Salmon, Moraes, Dror and Shaw, "Parallel random numbers: as easy as
// 1, 2, 3", 2011).
std::array<std::uint32_t, 4> philox(std::array<std::uint32_t, 4> counter,
                                    std::array<std::uint32_t, 2> key);

// In (0, 1), 52 bits and a half; never 0 nor 1.
double uniform(std::uint64_t seed, std::uint32_t input, std::uint64_t sample);

// A permutation of 0 .. size-1 chosen by seed, input and batch, computed place by place: four
// rounds of a Feistel network on the next even number of bits, walked until it falls into the
// range.
class Permutation {
public:
    Permutation(std::uint64_t seed, std::uint32_t input, std::uint32_t batch, std::uint32_t size);
    std::uint32_t operator()(std::uint32_t place) const; // place < size

private:
    std::array<std::uint32_t, 4> m_keys; // one per round
    std::uint32_t m_size, m_halfBits, m_mask;
};

} // namespace cutwater::reliability
