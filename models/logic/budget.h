// SPDX-License-Identifier: GPL-3.0-or-later
// Budget: one place where every long loop asks whether it may go on.
#pragma once

#include "models/logic/limits.h"

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <cstdint>

namespace cutwater::logic {

// Thrown inside the folder only; solve() turns it into a SolveOutcome.
struct Stopped {
    Stop why;
};

// What all threads of one solve() use together.
struct Account {
    explicit Account(const Limits& allowed) : limits(allowed) {}
    const Limits& limits;
    std::atomic<std::size_t> used{0}, peak{0};
    std::atomic<bool> ended{false}; // one thread has stopped: the others need not go on
};

// Counts the bytes that tables hold and watches for a cancellation. One per thread.
class Budget {
public:
    explicit Budget(Account& account) : m_account(account) {}

    // Call in every loop that can be long: one step is a few hundred instructions at most.
    void step() {
        if ((++m_steps & 0xfff) == 0) look();
    }
    void look() const {
        if (m_account.limits.stop.stop_requested() ||
            m_account.ended.load(std::memory_order_relaxed))
            throw Stopped{Stop::cancelled};
    }
    // Before growing: throws where the bytes are not there.
    void take(std::size_t bytes) {
        const std::size_t now = m_account.used.fetch_add(bytes) + bytes;
        if (now > m_account.limits.memoryBytes) {
            m_account.used.fetch_sub(bytes);
            throw Stopped{Stop::memory};
        }
        std::size_t peak = m_account.peak.load();
        while (now > peak && !m_account.peak.compare_exchange_weak(peak, now)) {
        }
    }
    void give(std::size_t bytes) { m_account.used.fetch_sub(bytes); }

private:
    Account& m_account;
    std::uint64_t m_steps = 0;
};

// Bytes that are counted as long as this lives: for arrays whose size is known before they are
// made.
class Charge {
public:
    Charge(Budget& budget, std::size_t bytes) : m_budget(&budget) { set(bytes); }
    ~Charge() { set(0); }
    Charge(const Charge&) = delete;
    Charge& operator=(const Charge&) = delete;

    void set(std::size_t bytes) {
        if (bytes > m_bytes) m_budget->take(bytes - m_bytes);
        if (bytes < m_bytes) m_budget->give(m_bytes - bytes);
        m_bytes = bytes;
    }

private:
    Budget* m_budget;
    std::size_t m_bytes = 0;
};

} // namespace cutwater::logic
