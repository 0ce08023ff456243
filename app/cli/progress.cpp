// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/progress.h"

#include "app/results/display_text.h"

#include <unistd.h>

#include <fmt/format.h>

#include <algorithm>
#include <cstdio>

namespace cutwater::cli {

using results::printable;

Progress::Progress(bool wanted) : m_wanted(wanted && isatty(STDERR_FILENO) == 1) {}

Progress::~Progress() {
    if (m_shown) std::fputs("\r\033[K", stderr);
}

void Progress::show(double share, const std::string& what) {
    using namespace std::chrono_literals;
    if (!m_wanted) return;
    const auto now = Clock::now();
    if (now - m_start < 1s || now - m_last < 100ms) return;
    m_last = now;
    m_shown = true;
    const std::string line =
        fmt::format("\r{:3.0f} %  {}\033[K", 100 * std::clamp(share, 0.0, 1.0), printable(what));
    std::fputs(line.c_str(), stderr);
}

} // namespace cutwater::cli
