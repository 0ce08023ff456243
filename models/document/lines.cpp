// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/lines.h"

#include <algorithm>
#include <cstring>

namespace cutwater::document {

LineTable::LineTable(std::string_view text) {
    m_starts.reserve(text.size() / 32 + 1);
    m_starts.push_back(0);
    const char* const end = text.data() + text.size();
    const char* at = text.data();
    while (at < end) {
        const void* found = std::memchr(at, '\n', static_cast<std::size_t>(end - at));
        if (!found) break;
        at = static_cast<const char*>(found) + 1;
        m_starts.push_back(static_cast<std::size_t>(at - text.data()));
    }
}

int LineTable::lineOf(std::size_t offset) {
    constexpr std::size_t kNear = 8;
    if (offset >= m_starts[m_last]) {
        for (std::size_t step = 0; step < kNear; ++step) {
            if (m_last + 1 == m_starts.size() || offset < m_starts[m_last + 1])
                return static_cast<int>(m_last + 1);
            ++m_last;
        }
    }
    const auto after = std::upper_bound(m_starts.begin(), m_starts.end(), offset);
    m_last = static_cast<std::size_t>(after - m_starts.begin()) - 1;
    return static_cast<int>(m_last + 1);
}

} // namespace cutwater::document
