// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/characters.h"

#include <cstdint>
#include <cstring>
#include <fmt/format.h>

namespace cutwater::document {

namespace {

constexpr std::uint64_t every(std::uint8_t byte) {
    return 0x0101010101010101u * byte;
}

// True where all eight bytes are plain: no control character, no byte above 0x7F.
bool allPlain(const char* at) {
    std::uint64_t word;
    std::memcpy(&word, at, sizeof word);
    return ((word | (word - every(0x20))) & every(0x80)) == 0;
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
    while (i < text.size()) {
        if (i + 8 <= text.size() && allPlain(text.data() + i)) {
            i += 8;
            continue;
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
