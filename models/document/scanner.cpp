// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/scanner.h"

#include "models/document/characters.h"
#include "models/document/scan.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cstdint>
#include <fmt/format.h>

namespace cutwater::document {

namespace {

bool isBlank(char c) {
    return c == ' ' || c == '\n' || c == '\t' || c == '\r';
}

bool startsName(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || c == ':' ||
           static_cast<unsigned char>(c) >= 0x80;
}

bool continuesName(char c) {
    return startsName(c) || (c >= '0' && c <= '9') || c == '-' || c == '.';
}

// "&#13;" or "&#xD;" without the "&#" and the ";".
bool isCharacterNumber(std::string_view digits) {
    int base = 10;
    if (!digits.empty() && digits.front() == 'x') {
        base = 16;
        digits.remove_prefix(1);
    }
    std::uint32_t code = 0;
    const auto [end, error] =
        std::from_chars(digits.data(), digits.data() + digits.size(), code, base);
    if (digits.empty() || error != std::errc{} || end != digits.data() + digits.size())
        return false;
    return code == 9 || code == 10 || code == 13 || (code >= 0x20 && code < 0xD800) ||
           (code >= 0xE000 && code < 0xFFFE) || (code >= 0x10000 && code <= 0x10FFFF);
}

} // namespace

bool Scanner::document() {
    if (!characters()) return false;
    if (!declaration() || !between("before the first element")) return false;
    if (atEnd())
        return fail(m_text.size(), "the file holds no element", "take another copy of the file");
    return element(m_at) && between("after the last element") &&
           (atEnd() || fail(m_at, "a second outermost element", "delete all but one"));
}

bool Scanner::element(std::size_t start) {
    m_at = start;
    m_open.clear();
    if (!startsWith("<") || !openTag()) return false;
    while (!m_open.empty()) {
        const std::size_t found = m_text.find('<', m_at);
        if (!references(m_text.substr(m_at, found - m_at))) return false;
        if (found == std::string_view::npos) return cutOff("");
        m_at = found;
        if (!markup()) return false;
    }
    return true;
}

bool Scanner::characters() {
    if (m_text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return fail(0, "the file is empty", "take another copy of the file");
    using namespace std::string_view_literals;
    const std::string_view start = m_text.substr(0, 2);
    if (start == "\xFF\xFE"sv || start == "\xFE\xFF"sv || start == "<\0"sv || start == "\0<"sv)
        return fail(0, "the file is written in UTF-16", "save it as UTF-8");
    const BadCharacter bad = findBadCharacter(m_text);
    if (bad.offset == std::string_view::npos) return true;
    return fail(bad.offset, "the text holds " + bad.what,
                "save the file as UTF-8 and delete what is no text");
}

bool Scanner::declaration() {
    if (!startsWith("<?xml") || m_text.size() < 6 || !isBlank(m_text[5])) return true;
    const std::size_t end = m_text.find("?>");
    if (end == std::string_view::npos) return cutOff("the XML declaration");
    const std::string_view inside = m_text.substr(0, end);
    const std::size_t word = inside.find("encoding");
    if (word != std::string_view::npos) {
        const std::size_t open = inside.find_first_of("\"'", word);
        const std::size_t close =
            open == std::string_view::npos ? open : inside.find(inside[open], open + 1);
        if (close == std::string_view::npos)
            return fail(word, "the XML declaration is not whole",
                        "write <?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        std::string encoding(inside.substr(open + 1, close - open - 1));
        std::transform(encoding.begin(), encoding.end(), encoding.begin(),
                       [](unsigned char c) { return c < 0x80 ? std::toupper(c) : c; });
        if (encoding != "UTF-8" && encoding != "US-ASCII" && encoding != "ASCII")
            return fail(word, fmt::format("the file says that it is written in {}", encoding),
                        "save it as UTF-8");
    }
    m_at = end + 2;
    return true;
}

bool Scanner::between(const char* place) {
    for (;;) {
        blanks();
        if (atEnd()) return true;
        if (startsWith("<!--")) {
            if (!comment()) return false;
        } else if (startsWith("<?")) {
            if (!instruction()) return false;
        } else if (startsWith("<!DOCTYPE")) {
            return fail(m_at, "the file has a document type (DOCTYPE), which is not allowed here",
                        "delete it");
        } else if (m_text[m_at] == '<') {
            return true;
        } else {
            return fail(m_at, fmt::format("there is text {}", place), "delete it");
        }
    }
}

bool Scanner::markup() {
    if (startsWith("</")) return closeTag();
    if (startsWith("<!--")) return comment();
    if (startsWith("<![CDATA[")) return dataSection();
    if (startsWith("<?")) return instruction();
    if (startsWith("<!"))
        return fail(m_at, "markup that is not allowed here", "write &lt; where a < is meant");
    return openTag();
}

bool Scanner::openTag() {
    const std::size_t start = m_at++;
    const std::string_view tag = name();
    if (tag.empty()) {
        if (atEnd()) return cutOff("a tag");
        return fail(start, "a < that starts no tag", "write &lt; where a < is meant");
    }
    if (m_open.size() >= kMaxDepth)
        return fail(start, fmt::format("elements are nested more than {} deep", kMaxDepth),
                    "take another copy of the file: no file of this kind is so deep");
    if (++m_pieces > kMaxPieces)
        return fail(start, fmt::format("the file holds more than {} elements", kMaxPieces),
                    "split the project");
    m_open.push_back(tag);
    return attributes(tag);
}

bool Scanner::attributes(std::string_view tag) {
    m_attributes.clear();
    for (;;) {
        const std::size_t before = m_at;
        blanks();
        if (atEnd()) return cutOff("a tag");
        if (startsWith("/>")) {
            m_at += 2;
            m_open.pop_back();
            return true;
        }
        if (m_text[m_at] == '>') {
            ++m_at;
            return true;
        }
        const std::size_t start = m_at;
        const std::string_view attribute = name();
        if (attribute.empty() || before == start)
            return m_at + 1 >= m_text.size()
                       ? cutOff("a tag")
                       : fail(start, fmt::format("the tag <{}> is not well formed", tag),
                              "write it as <name attribute=\"value\">");
        if (std::find(m_attributes.begin(), m_attributes.end(), attribute) != m_attributes.end())
            return fail(start, fmt::format("attribute {} stands twice in <{}>", attribute, tag),
                        "keep one of them");
        if (m_attributes.size() == kMaxAttributes)
            return fail(start, fmt::format("<{}> has more than {} attributes", tag, kMaxAttributes),
                        "delete those that do not belong there");
        m_attributes.push_back(attribute);
        blanks();
        if (atEnd()) return cutOff("a tag");
        if (m_text[m_at] != '=')
            return fail(start, fmt::format("attribute {} of <{}> has no value", attribute, tag),
                        fmt::format("write {}=\"value\"", attribute));
        ++m_at;
        blanks();
        if (!attributeValue()) return false;
    }
}

bool Scanner::attributeValue() {
    if (atEnd()) return cutOff("a tag");
    const char quote = m_text[m_at];
    if (quote != '"' && quote != '\'')
        return fail(m_at, "an attribute's value stands without quotes", "put it in quotes");
    if (++m_pieces > kMaxPieces)
        return fail(m_at, fmt::format("the file holds more than {} attributes", kMaxPieces),
                    "split the project");
    const std::size_t close = m_text.find(quote, m_at + 1);
    if (close == std::string_view::npos) return cutOff("an attribute's value");
    const std::string_view value = m_text.substr(m_at + 1, close - m_at - 1);
    if (value.find('<') != std::string_view::npos)
        return fail(m_at, "a < in an attribute's value, or a missing quote",
                    "write &lt; or close the quote");
    if (!references(value)) return false;
    m_at = close + 1;
    return true;
}

bool Scanner::closeTag() {
    const std::size_t start = m_at;
    m_at += 2;
    const std::string_view tag = name();
    blanks();
    if (atEnd()) return cutOff("a closing tag");
    const std::string_view open = m_open.back();
    if (m_text[m_at] != '>' || tag != open)
        return fail(start,
                    fmt::format("</{}> where </{}> is due (it was opened in line {})",
                                tag.substr(0, 60), open,
                                lineOf(static_cast<std::size_t>(open.data() - m_text.data()))),
                    fmt::format("close <{}> first", open));
    ++m_at;
    m_open.pop_back();
    return true;
}

bool Scanner::comment() {
    m_at += 4;
    return skipPast("-->", "a comment");
}

bool Scanner::dataSection() {
    m_at += 9;
    return skipPast("]]>", "a CDATA section");
}

bool Scanner::instruction() {
    if (startsWith("<?xml") && m_at + 5 < m_text.size() && isBlank(m_text[m_at + 5]))
        return fail(m_at, "an XML declaration that is not at the start of the file",
                    "move it to the start, or delete it");
    m_at += 2;
    if (name().empty() && !atEnd())
        return fail(m_at, "an XML instruction without a name", "delete it");
    return skipPast("?>", "an XML instruction");
}

bool Scanner::references(std::string_view text) {
    std::size_t at = 0;
    while ((at = text.find('&', at)) != std::string_view::npos) {
        const std::string_view rest = text.substr(at + 1, 12);
        const std::size_t end = rest.find(';');
        const std::string_view word = rest.substr(0, end);
        const bool known =
            end != std::string_view::npos &&
            (word == "amp" || word == "lt" || word == "gt" || word == "quot" || word == "apos" ||
             (word.substr(0, 1) == "#" && isCharacterNumber(word.substr(1))));
        if (!known)
            return fail(static_cast<std::size_t>(text.data() - m_text.data()) + at,
                        "an & that starts nothing known", "write &amp; where an & is meant");
        at += end + 1;
    }
    return true;
}

std::string_view Scanner::name() {
    const std::size_t start = m_at;
    if (atEnd() || !startsName(m_text[m_at])) return {};
    while (!atEnd() && continuesName(m_text[m_at]))
        ++m_at;
    return m_text.substr(start, m_at - start);
}

void Scanner::blanks() {
    while (!atEnd() && isBlank(m_text[m_at]))
        ++m_at;
}

bool Scanner::skipPast(std::string_view what, const char* piece) {
    const std::size_t found = m_text.find(what, m_at);
    if (found == std::string_view::npos) return cutOff(piece);
    m_at = found + what.size();
    return true;
}

bool Scanner::cutOff(const char* piece) {
    std::string what = "the file ends";
    if (*piece) what += fmt::format(" within {}", piece);
    if (!m_open.empty())
        what += fmt::format(" inside <{}>, which was opened in line {}", m_open.back(),
                            lineOf(static_cast<std::size_t>(m_open.back().data() - m_text.data())));
    const std::size_t last = m_text.find_last_not_of("\r\n");
    return fail(last == std::string_view::npos ? 0 : last, what,
                "take a whole copy of the file: this one was cut off");
}

bool Scanner::fail(std::size_t offset, std::string what, std::string remedy) {
    project::Problem problem;
    problem.what = std::move(what);
    problem.remedy = std::move(remedy);
    problem.line = lineOf(offset);
    m_fault = std::move(problem);
    return false;
}

int Scanner::lineOf(std::size_t offset) const {
    const std::string_view before = m_text.substr(0, std::min(offset, m_text.size()));
    return static_cast<int>(std::count(before.begin(), before.end(), '\n')) + 1;
}

} // namespace cutwater::document
