// SPDX-License-Identifier: GPL-3.0-or-later
// Random: splitmix64 (G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number
// generators", OOPSLA 2014; from memory). The standard library's distributions differ from one
// implementation to the next; the families must not.
#pragma once

#include <cmath>
#include <cstdint>

namespace bench {

class Random {
public:
    explicit Random(std::uint64_t seed) : m_state(seed) {}

    std::uint64_t bits() {
        std::uint64_t z = m_state += 0x9e3779b97f4a7c15u;
        z = (z ^ z >> 30) * 0xbf58476d1ce4e5b9u;
        z = (z ^ z >> 27) * 0x94d049bb133111ebu;
        return z ^ z >> 31;
    }
    // 0..n-1; n > 0 and far below 2^64, so that the bias of the remainder does not matter here.
    std::uint32_t below(std::uint32_t n) { return static_cast<std::uint32_t>(bits() % n); }
    // First to last, both included.
    std::uint32_t between(std::uint32_t first, std::uint32_t last) {
        return first + below(last - first + 1);
    }
    double unit() { return static_cast<double>(bits() >> 11) * 0x1p-53; } // [0, 1)
    bool chance(double probability) { return unit() < probability; }
    // Evenly spread over the logarithm; 0 < low <= high.
    double spread(double low, double high) { return low * std::pow(high / low, unit()); }

private:
    std::uint64_t m_state;
};

} // namespace bench
