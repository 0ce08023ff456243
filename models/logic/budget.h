// SPDX-License-Identifier: GPL-3.0-or-later
// Budget: one place where every long loop asks whether it may go on.
#pragma once

#include "models/logic/limits.h"

#include <cstddef>
#include <cstdint>

namespace cutwater::logic {

// Thrown inside the folder only; solve() turns it into a SolveOutcome.
struct Stopped {
    Stop why;
};

// Counts the bytes that tables hold and watches for a cancellation. One per solve(), used from one
// thread.
class Budget {
public:
    explicit Budget(const Limits& limits) : m_limits(limits) {}

    // Call in every loop that can be long: one step is a few hundred instructions at most.
    void step() {
        if ((++m_steps & 0xfff) == 0) look();
    }
    void look() const {
        if (m_limits.stop.stop_requested()) throw Stopped{Stop::cancelled};
    }
    // Before growing: throws where the bytes are not there.
    void take(std::size_t bytes) {
        if (bytes > m_limits.memoryBytes || m_used > m_limits.memoryBytes - bytes)
            throw Stopped{Stop::memory};
        m_used += bytes;
        if (m_used > m_peak) m_peak = m_used;
    }
    void give(std::size_t bytes) { m_used -= bytes < m_used ? bytes : m_used; }
    std::size_t peak() const { return m_peak; }
    void progress(double share) const {
        if (m_limits.progress) m_limits.progress(share);
    }

private:
    const Limits& m_limits;
    std::uint64_t m_steps = 0;
    std::size_t m_used = 0, m_peak = 0;
};

} // namespace cutwater::logic
