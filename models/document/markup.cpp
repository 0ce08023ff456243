// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/markup.h"

#include <algorithm>
#include <charconv>

namespace cutwater::document {

namespace {

void appendCharacter(std::string& text, std::uint32_t code) {
    const auto byte = [&](std::uint32_t bits) { text += static_cast<char>(bits); };
    const auto more = [&](int shift) { byte(0x80u | (code >> shift & 0x3Fu)); };
    if (code < 0x80) return byte(code);
    if (code < 0x800) {
        byte(0xC0u | code >> 6);
    } else {
        if (code < 0x10000) {
            byte(0xE0u | code >> 12);
        } else {
            byte(0xF0u | code >> 18);
            more(12);
        }
        more(6);
    }
    more(0);
}

// What stands between '&' and ';'.
void appendReference(std::string& text, std::string_view word) {
    if (word.front() == '#') {
        const bool hexadecimal = word[1] == 'x';
        std::uint32_t code = 0;
        std::from_chars(word.data() + (hexadecimal ? 2 : 1), word.data() + word.size(), code,
                        hexadecimal ? 16 : 10);
        appendCharacter(text, code);
    } else {
        text += word == "amp"    ? '&'
                : word == "lt"   ? '<'
                : word == "gt"   ? '>'
                : word == "quot" ? '"'
                                 : '\'';
    }
}

enum class Kind { text, data, value };

// In a value every blank is a space; in CDATA an '&' is an '&'. A line that ends in "\r\n" or "\r"
// ends in '\n'.
void append(std::string& text, std::string_view raw, Kind kind) {
    for (std::size_t i = 0; i < raw.size(); ++i) {
        const char c = raw[i];
        if (c == '&' && kind != Kind::data) {
            const std::size_t end = raw.find(';', i);
            appendReference(text, raw.substr(i + 1, end - i - 1));
            i = end;
        } else if (c == '\r' || c == '\n' || c == '\t') {
            if (c == '\r' && raw.substr(i + 1, 1) == "\n") ++i;
            text += kind == Kind::value ? ' ' : c == '\r' ? '\n' : c;
        } else {
            text += c;
        }
    }
}

bool isBlank(std::string_view text) {
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

} // namespace

std::size_t Markup::endOf(Position element) const {
    const Element& its = elements[element];
    return its.isShort ? its.insideEnd : text.find('>', its.insideEnd) + 1;
}

std::string_view Markup::valueOf(const Attribute& attribute, std::string& room) const {
    const std::string_view raw = text.substr(attribute.value, attribute.valueLength);
    bool asItIs = true;
    for (const char c : raw)
        asItIs = asItIs && c != '&' && static_cast<unsigned char>(c) >= ' ';
    if (asItIs) return raw;
    room.clear();
    append(room, raw, Kind::value);
    return room;
}

std::string_view Markup::plainTextOf(Position position, std::string& room) const {
    const Element& element = elements[position];
    const std::string_view raw = text.substr(element.inside, element.insideEnd - element.inside);
    bool asItIs = true;
    for (const char c : raw)
        asItIs = asItIs && c != '&' && c != '\r';
    if (asItIs) return raw;
    room.clear();
    append(room, raw, Kind::text);
    return room;
}

std::vector<std::string> Markup::textsOf(Position position) const {
    std::vector<std::string> texts;
    const std::size_t end = elements[position].insideEnd;
    Position child = position + 1;
    bool isFirst = true; // nothing but comments so far
    for (std::size_t at = elements[position].inside; at < end;) {
        if (text[at] != '<') {
            const std::size_t stop = std::min(text.find('<', at), end);
            const std::string_view raw = text.substr(at, stop - at);
            if (!isBlank(raw) || (isFirst && stop == end)) {
                append(texts.emplace_back(), raw, Kind::text);
                isFirst = false;
            }
            at = stop;
        } else if (text.substr(at, 4) == "<!--") {
            at = text.find("-->", at + 4) + 3;
        } else if (text.substr(at, 2) == "<?") {
            at = text.find("?>", at + 2) + 2;
        } else if (text[at + 1] == '!') {
            const std::size_t stop = text.find("]]>", at + 9);
            append(texts.emplace_back(), text.substr(at + 9, stop - at - 9), Kind::data);
            at = stop + 3;
            isFirst = false;
        } else {
            at = endOf(child);
            child = elements[child].next;
            isFirst = false;
        }
    }
    return texts;
}

} // namespace cutwater::document
