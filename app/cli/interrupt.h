// SPDX-License-Identifier: GPL-3.0-or-later
// Interrupt: turns the first Ctrl-C (or a polite kill) into a request to stop; the second one ends
// the program at once.
#pragma once

#include <stop_token>
#include <thread>

namespace cutwater::cli {

// One per program, made in main(); handlers are process-wide by nature.
class Interrupt {
public:
    Interrupt();
    ~Interrupt();
    Interrupt(const Interrupt&) = delete;
    Interrupt& operator=(const Interrupt&) = delete;

    std::stop_token token() const { return m_source.get_token(); }

private:
    std::stop_source m_source;
    std::thread m_watcher;
};

} // namespace cutwater::cli
