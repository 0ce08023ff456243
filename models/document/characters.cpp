// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/characters.h"

#include <cstdint>
#include <fmt/format.h>

namespace cutwater::document {

namespace {

constexpr std::size_t kBlock = 64;

// True where a whole block is plain: no control character but blanks, no byte above 0x7F. Without
// branches, so that the compiler looks at many bytes at once.
bool allPlain(const char* at) {
    std::uint8_t other = 0;
    for (std::size_t i = 0; i < kBlock; ++i) {
        const auto c = static_cast<signed char>(at[i]); // above 0x7F: negative
        const std::uint8_t low = c < ' ' ? 1 : 0;
        const std::uint8_t blank = (c == '\n' ? 1 : 0) | (c == '\t' ? 1 : 0) | (c == '\r' ? 1 : 0);
        other = other | (low ^ blank);
    }
    return other == 0;
}

bool isPlain(unsigned char c) {
    return (c >= 0x20 && c < 0x80) || c == '\n' || c == '\t' || c == '\r';
}

struct Decoded {
    std::size_t length = 0; // 0: not UTF-8
    std::uint32_t code = 0;
};

// One character of two to four bytes; overlong forms and surrogates are not UTF-8.
Decoded decode(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<std::uint8_t>(text[i]); };
    const std::uint8_t first = byte(0);
    const std::size_t length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || text.size() < length) return {};
    std::uint32_t code = first & (0xFFu >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0) != 0x80) return {};
        code = code << 6 | (byte(i) & 0x3Fu);
    }
    const std::uint32_t smallest = length == 2 ? 0x80 : length == 3 ? 0x800 : 0x10000;
    if (code < smallest || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF)) return {};
    return {length, code};
}

} // namespace

BadCharacter findBadCharacter(std::string_view text) {
    std::size_t i = 0;
    std::size_t blockEnd = 0; // bytes before it are looked at one by one
    while (i < text.size()) {
        if (i >= blockEnd && i + kBlock <= text.size()) {
            blockEnd = i + kBlock;
            if (allPlain(text.data() + i)) {
                i = blockEnd;
                continue;
            }
        }
        const auto c = static_cast<unsigned char>(text[i]);
        if (isPlain(c)) {
            ++i;
            continue;
        }
        if (c == 0) return {i, "a NUL byte"};
        if (c < 0x20) return {i, fmt::format("the control character U+{:04X}", c)};
        const Decoded character = decode(text.substr(i));
        if (character.length == 0)
            return {i, fmt::format("a byte that is not UTF-8 (0x{:02X})", c)};
        if (character.code == 0xFFFE || character.code == 0xFFFF)
            return {i, fmt::format("the character U+{:04X}, which no XML file may hold",
                                   character.code)};
        i += character.length;
    }
    return {};
}

} // namespace cutwater::document
