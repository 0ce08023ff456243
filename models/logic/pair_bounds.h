// SPDX-License-Identifier: GPL-3.0-or-later
// Bounds of a union of events of which the members and their pairs are known.
#pragma once

#include "models/logic/interval.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace cutwater::logic {

// Increasing events over independent basic events (monotone functions of them).
class Members {
public:
    void clear(std::size_t count) {
        m_single.assign(count, 0);
        m_pair.assign(count * count, {0, 0});
        m_dependent.assign(count * count, 0);
    }
    std::size_t count() const { return m_single.size(); }
    void set(std::size_t i, double probability) { m_single[i] = probability; }
    double single(std::size_t i) const { return m_single[i]; }

    // i and j have no basic event in common.
    void setIndependent(std::size_t i, std::size_t j) {
        const double both = m_single[i] * m_single[j];
        put(i, j, {both, both}, 0);
    }
    // They may have one; `both` holds P(i and j).
    void setDependent(std::size_t i, std::size_t j, Interval both) { put(i, j, both, 1); }
    bool dependent(std::size_t i, std::size_t j) const { return m_dependent[i * count() + j] != 0; }
    const Interval& pair(std::size_t i, std::size_t j) const { return m_pair[i * count() + j]; }

private:
    void put(std::size_t i, std::size_t j, Interval both, std::uint8_t dependent) {
        m_pair[i * count() + j] = m_pair[j * count() + i] = both;
        m_dependent[i * count() + j] = m_dependent[j * count() + i] = dependent;
    }
    std::vector<double> m_single;
    std::vector<Interval> m_pair;
    std::vector<std::uint8_t> m_dependent;
};

// P(at least one of the members), between proven bounds; the proofs stand at their code. Cubic at
// worst in the number of members.
Interval boundUnion(const Members& members);

} // namespace cutwater::logic
