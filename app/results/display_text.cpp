// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/display_text.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace cutwater::results {
namespace {

struct Character {
    char32_t code = 0xFFFD;
    std::size_t bytes = 1;
    bool valid = false;
};

Character decode(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(0);
    if (lead < 0x80) return {lead, 1, true};
    const std::size_t length = lead >= 0xF0 && lead < 0xF5 ? 4
                               : lead >= 0xE0              ? 3
                               : lead >= 0xC2              ? 2
                                                           : 0;
    if (length == 0 || lead >= 0xF5 || text.size() < length) return {};
    char32_t code = lead & (0x7Fu >> length);
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0u) != 0x80u) return {};
        code = code << 6 | (byte(i) & 0x3Fu);
    }
    const bool overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    if (overlong || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF)) return {};
    return {code, length, true};
}

struct Range {
    char32_t first, last;
};

// The blocks that take no column (combining marks, joiners) and two (East Asian Width W and F,
// Unicode 15). Coarse: whole blocks, which is enough to keep a table straight.
constexpr std::array<Range, 11> kNone = {{{0x0300, 0x036F},
                                          {0x0483, 0x0489},
                                          {0x0591, 0x05BD},
                                          {0x0610, 0x061A},
                                          {0x064B, 0x065F},
                                          {0x1AB0, 0x1AFF},
                                          {0x1DC0, 0x1DFF},
                                          {0x200B, 0x200F},
                                          {0x20D0, 0x20FF},
                                          {0xFE00, 0xFE0F},
                                          {0xFE20, 0xFE2F}}};
constexpr std::array<Range, 9> kTwo = {{{0x1100, 0x115F},
                                        {0x2E80, 0x303E},
                                        {0x3041, 0xA4CF},
                                        {0xAC00, 0xD7A3},
                                        {0xF900, 0xFAFF},
                                        {0xFE30, 0xFE6F},
                                        {0xFF00, 0xFF60},
                                        {0x1F300, 0x1F64F},
                                        {0x20000, 0x3FFFD}}};

template <std::size_t N>
bool within(const std::array<Range, N>& ranges, char32_t code) {
    return std::any_of(ranges.begin(), ranges.end(),
                       [&](const Range& r) { return code >= r.first && code <= r.last; });
}

std::size_t columns(char32_t code) {
    if (code < 0x300) return 1;
    if (within(kNone, code)) return 0;
    return within(kTwo, code) ? 2 : 1;
}

bool isBreak(char c) {
    return c == '.' || c == ':' || c == '/' || c == '_' || c == '-';
}

// How many bytes of `word` fit into `width` columns: at least one character; up to behind the last
// good break, where there is one in the second half.
std::size_t fitting(std::string_view word, std::size_t width) {
    std::size_t bytes = 0, used = 0, good = 0;
    while (bytes < word.size()) {
        const Character c = decode(word.substr(bytes));
        if (used + columns(c.code) > width && bytes > 0) break;
        used += columns(c.code);
        bytes += c.bytes;
        if (isBreak(word[bytes - 1]) && used * 2 > width) good = bytes;
    }
    return bytes < word.size() && good > 0 ? good : bytes;
}

} // namespace

std::size_t displayWidth(std::string_view text) {
    std::size_t width = 0;
    while (!text.empty()) {
        const Character c = decode(text);
        width += columns(c.code);
        text.remove_prefix(c.bytes);
    }
    return width;
}

std::string printable(std::string_view text) {
    std::string clean;
    clean.reserve(text.size());
    while (!text.empty()) {
        const Character c = decode(text);
        if (c.code == '\n' || c.code == '\t' || c.code == '\r')
            clean += ' ';
        else if (!c.valid || c.code < 0x20 || (c.code >= 0x7F && c.code < 0xA0))
            clean += "\xEF\xBF\xBD";
        else
            clean += text.substr(0, c.bytes);
        text.remove_prefix(c.bytes);
    }
    return clean;
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    width = std::max<std::size_t>(width, 1);
    std::vector<std::string> lines(1);
    std::size_t used = 0;
    while (!text.empty()) {
        const std::size_t start = text.find_first_not_of(' ');
        if (start == std::string_view::npos) break;
        text.remove_prefix(start);
        std::string_view word = text.substr(0, text.find(' '));
        text.remove_prefix(word.size());
        std::size_t wide = displayWidth(word);
        if (used > 0 && used + 1 + wide <= width) {
            lines.back() += ' ';
            lines.back() += word;
            used += 1 + wide;
            continue;
        }
        if (used > 0) lines.emplace_back();
        while (wide > width) {
            const std::size_t bytes = fitting(word, width);
            lines.back() = word.substr(0, bytes);
            word.remove_prefix(bytes);
            wide = displayWidth(word);
            lines.emplace_back();
        }
        lines.back() = word;
        used = wide;
    }
    if (lines.size() > 1 && lines.back().empty()) lines.pop_back();
    return lines;
}

std::string padded(std::string_view text, std::size_t width, bool right) {
    const std::size_t wide = displayWidth(text);
    const std::string gap(width > wide ? width - wide : 0, ' ');
    return right ? gap + std::string(text) : std::string(text) + gap;
}

std::string paragraph(std::string_view text, std::size_t width, const std::string& first) {
    const std::size_t indent = displayWidth(first);
    std::string out;
    for (const std::string& line : wrapped(text, width > indent + 10 ? width - indent : 10)) {
        out += out.empty() ? first : std::string(indent, ' ');
        out += line;
        out += '\n';
    }
    return out;
}

} // namespace cutwater::results
