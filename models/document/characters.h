// SPDX-License-Identifier: GPL-3.0-or-later
// Which bytes may stand in a file of ours: UTF-8 without the characters that XML forbids.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace cutwater::document {

struct BadCharacter {
    std::size_t offset = std::string_view::npos; // npos: there is none
    std::string what; // "the control character U+0001", "bytes that are not UTF-8 (0xE9)"
};

// The first thing in `text` that is not UTF-8 or that XML 1.0 (section 2.2) forbids.
BadCharacter findBadCharacter(std::string_view text);

} // namespace cutwater::document
