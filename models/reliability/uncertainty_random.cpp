// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/uncertainty_random.h"

#include <bit>

namespace cutwater::reliability {

namespace {

// What a random number is for, so that no two uses meet.
constexpr std::uint32_t kDraw = 0, kPermutation = 1;

std::array<std::uint32_t, 2> keyOf(std::uint64_t seed) {
    return {static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32)};
}

} // namespace

std::array<std::uint32_t, 4> philox(std::array<std::uint32_t, 4> counter,
                                    std::array<std::uint32_t, 2> key) {
    for (int round = 0; round < 10; ++round) {
        const std::uint64_t a = std::uint64_t{0xD2511F53} * counter[0];
        const std::uint64_t b = std::uint64_t{0xCD9E8D57} * counter[2];
        counter = {static_cast<std::uint32_t>(b >> 32) ^ counter[1] ^ key[0],
                   static_cast<std::uint32_t>(b),
                   static_cast<std::uint32_t>(a >> 32) ^ counter[3] ^ key[1],
                   static_cast<std::uint32_t>(a)};
        key[0] += 0x9E3779B9;
        key[1] += 0xBB67AE85;
    }
    return counter;
}

double uniform(std::uint64_t seed, std::uint32_t input, std::uint64_t sample) {
    const auto bits = philox({static_cast<std::uint32_t>(sample),
                              static_cast<std::uint32_t>(sample >> 32), input, kDraw},
                             keyOf(seed));
    const std::uint64_t whole = (std::uint64_t{bits[0]} << 32 | bits[1]) >> 12; // 52 bits
    return (static_cast<double>(whole) + 0.5) * 0x1p-52;
}

Permutation::Permutation(std::uint64_t seed, std::uint32_t input, std::uint32_t batch,
                         std::uint32_t size)
    : m_keys(philox({batch, 0, input, kPermutation}, keyOf(seed))), m_size(size) {
    const auto bits = static_cast<std::uint32_t>(std::bit_width(size > 1 ? size - 1 : 1u));
    m_halfBits = (bits + 1) / 2;
    m_mask = (1u << m_halfBits) - 1;
}

std::uint32_t Permutation::operator()(std::uint32_t place) const {
    do {
        std::uint32_t left = place >> m_halfBits, right = place & m_mask;
        for (const std::uint32_t key : m_keys) {
            std::uint32_t mixed = right ^ key; // a 32-bit finaliser (murmur3)
            mixed = (mixed ^ mixed >> 16) * 0x85EBCA6Bu;
            mixed = (mixed ^ mixed >> 13) * 0xC2B2AE35u;
            mixed ^= mixed >> 16;
            const std::uint32_t next = left ^ (mixed & m_mask);
            left = right;
            right = next;
        }
        place = left << m_halfBits | right;
    } while (place >= m_size);
    return place;
}

} // namespace cutwater::reliability
