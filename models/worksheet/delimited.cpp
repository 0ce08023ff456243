// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/delimited.h"

#include <fmt/format.h>

namespace cutwater::worksheet {

namespace {

using project::Problem;
using project::Severity;

constexpr std::size_t kMostBytes = std::size_t{64} << 20;

// The first character behind any apostrophes.
bool wouldRun(const std::string& text) {
    const std::size_t at = text.find_first_not_of('\'');
    return at != std::string::npos &&
           std::string_view("=+-@\t\r\n").find(text[at]) != std::string_view::npos;
}

// The offset of the first byte that is not UTF-8; npos where all are.
std::size_t badByte(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        const auto byte = static_cast<unsigned char>(text[i]);
        const std::size_t length = byte < 0x80   ? 1
                                   : byte < 0xC2 ? 0
                                   : byte < 0xE0 ? 2
                                   : byte < 0xF0 ? 3
                                   : byte < 0xF5 ? 4
                                                 : 0;
        if (length == 0 || i + length > text.size()) return i;
        for (std::size_t k = 1; k < length; ++k)
            if ((static_cast<unsigned char>(text[i + k]) & 0xC0) != 0x80) return i;
        i += length;
    }
    return std::string_view::npos;
}

char usualSeparator(std::string_view text) {
    std::size_t counts[3] = {};
    constexpr std::string_view candidates = ",;\t";
    bool quoted = false;
    for (const char c : text) {
        if (c == '"') quoted = !quoted;
        if (c == '\n' && !quoted) break;
        const std::size_t which = candidates.find(c);
        if (!quoted && which != std::string_view::npos) ++counts[which];
    }
    std::size_t best = 0;
    for (std::size_t i = 1; i < 3; ++i)
        if (counts[i] > counts[best]) best = i;
    return candidates[best];
}

class Walk {
public:
    Walk(std::string_view text, char separator) : m_text(text), m_separator(separator) {}

    project::Outcome<std::vector<Record>> records() {
        while (m_at < m_text.size()) {
            Record record;
            record.line = m_line;
            if (!readRecord(record)) return m_problem;
            const bool empty = record.cells.size() == 1 && record.cells[0].empty();
            if (!empty) m_records.push_back(std::move(record));
        }
        return std::move(m_records);
    }

private:
    bool readRecord(Record& record) {
        for (;;) {
            std::string& cell = record.cells.emplace_back();
            if (m_at < m_text.size() && m_text[m_at] == '"') {
                if (!quotedCell(cell)) return false;
            } else {
                while (m_at < m_text.size() && m_text[m_at] != m_separator && !atLineEnd())
                    cell += m_text[m_at++];
            }
            if (m_at >= m_text.size()) return true;
            if (m_text[m_at] == m_separator) {
                ++m_at;
                continue;
            }
            if (m_text[m_at] == '\r') ++m_at;
            if (m_at < m_text.size() && m_text[m_at] == '\n') ++m_at;
            ++m_line;
            return true;
        }
    }

    bool atLineEnd() const {
        return m_text[m_at] == '\n' ||
               (m_text[m_at] == '\r' && (m_at + 1 == m_text.size() || m_text[m_at + 1] == '\n'));
    }

    bool quotedCell(std::string& cell) {
        const int start = m_line;
        ++m_at;
        for (;; ++m_at) {
            if (m_at >= m_text.size())
                return fail(start, "a quotation mark is opened and not closed",
                            "close it, or double it where it belongs to the text");
            if (m_text[m_at] == '\n') ++m_line;
            if (m_text[m_at] != '"') {
                cell += m_text[m_at];
                continue;
            }
            if (m_at + 1 < m_text.size() && m_text[m_at + 1] == '"') {
                cell += '"';
                ++m_at;
                continue;
            }
            ++m_at;
            break;
        }
        if (m_at < m_text.size() && m_text[m_at] != m_separator && !atLineEnd())
            return fail(m_line, "text stands behind a closing quotation mark",
                        "double the quotation marks that belong to the text");
        return true;
    }

    bool fail(int line, const char* what, const char* remedy) {
        m_problem = {Severity::error, what, remedy, "table", line};
        return false;
    }

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    int m_line = 1;
    std::vector<Record> m_records;
    Problem m_problem;
};

} // namespace

project::Outcome<std::vector<Record>> readDelimited(std::string_view text, char separator) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    if (text.size() > kMostBytes)
        return Problem{Severity::error,
                       fmt::format("the table is longer than {} MB", kMostBytes >> 20), "split it",
                       "table", 0};
    if (const std::size_t at = badByte(text); at != std::string_view::npos) {
        int line = 1;
        for (const char c : text.substr(0, at))
            line += c == '\n' ? 1 : 0;
        return Problem{Severity::error, "the table is not UTF-8 text",
                       "save it again as \"CSV UTF-8\"", "table", line};
    }
    return Walk(text, separator ? separator : usualSeparator(text)).records();
}

std::string writeRecord(const std::vector<std::string>& cells, char separator) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) line += separator;
        const std::string& cell = cells[i];
        const bool quote = cell.find_first_of("\"\r\n") != std::string::npos ||
                           cell.find(separator) != std::string::npos ||
                           (cells.size() == 1 && cell.empty());
        if (!quote) {
            line += cell;
            continue;
        }
        line += '"';
        for (const char c : cell) {
            if (c == '"') line += '"';
            line += c;
        }
        line += '"';
    }
    return line + '\n';
}

std::string harmless(const std::string& text) {
    return wouldRun(text) ? "'" + text : text;
}

std::string asTyped(const std::string& text) {
    return !text.empty() && text.front() == '\'' && wouldRun(text) ? text.substr(1) : text;
}

} // namespace cutwater::worksheet
