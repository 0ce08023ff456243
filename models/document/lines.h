// SPDX-License-Identifier: GPL-3.0-or-later
// From a byte's offset to the number of its line.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace cutwater::document {

class LineTable {
public:
    explicit LineTable(std::string_view text);
    // 1 and up. Fast where offsets are asked for roughly in their order.
    int lineOf(std::size_t offset);

private:
    std::vector<std::size_t> m_starts;
    std::size_t m_last = 0; // where the last answer was
};

} // namespace cutwater::document
