// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/lines.h"

#include <cassert>

namespace cutwater::document {

namespace {

constexpr std::size_t kBlock = 128;

// Of at most one block: so few that a byte counts them, and the compiler counts many at once.
int lineEnds(const char* text, std::size_t size) {
    unsigned char count = 0;
    for (std::size_t i = 0; i < size; ++i)
        count = static_cast<unsigned char>(count + (text[i] == '\n' ? 1 : 0));
    return count;
}

} // namespace

LineTable::LineTable(std::string_view text) : m_text(text) {
    m_before.reserve(text.size() / kBlock + 1);
    int count = 0;
    for (std::size_t at = 0; at + kBlock <= text.size(); at += kBlock) {
        m_before.push_back(count);
        count += lineEnds(text.data() + at, kBlock);
    }
    m_before.push_back(count);
}

int LineTable::lineOf(std::size_t offset) const {
    assert(offset <= m_text.size());
    const std::size_t block = offset / kBlock;
    return m_before[block] + lineEnds(m_text.data() + block * kBlock, offset % kBlock) + 1;
}

} // namespace cutwater::document
