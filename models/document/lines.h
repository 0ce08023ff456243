// SPDX-License-Identifier: GPL-3.0-or-later
// From a byte's offset to the number of its line.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace cutwater::document {

// Holds how many lines end before each small block of the text: a table of all lines of a large
// file would be larger than what is asked of it.
class LineTable {
public:
    explicit LineTable(std::string_view text);
    // 1 and up. Precondition: offset <= size of the text.
    int lineOf(std::size_t offset) const;

private:
    std::string_view m_text;
    std::vector<int> m_before; // by block; line ends before it
};

} // namespace cutwater::document
