// SPDX-License-Identifier: GPL-3.0-or-later
// Progress: one line on standard error that is overwritten, only where a person looks on and only
// when the work takes over a second.
#pragma once

#include <chrono>
#include <string>

namespace cutwater::cli {

class Progress {
public:
    explicit Progress(bool wanted);
    ~Progress(); // wipes the line
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    void show(double share, const std::string& what);

private:
    using Clock = std::chrono::steady_clock;
    bool m_wanted;
    Clock::time_point m_start = Clock::now();
    Clock::time_point m_last = m_start;
    bool m_shown = false;
};

} // namespace cutwater::cli
