// SPDX-License-Identifier: GPL-3.0-or-later
// Scanner: walks once through XML text and stops at the first fault. Private to the folder.
#pragma once

#include "models/project/problem.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::document {

class Scanner {
public:
    explicit Scanner(std::string_view text) : m_text(text) {}

    bool document();                 // the whole text
    bool element(std::size_t start); // one element with all that is in it
    std::size_t position() const { return m_at; }
    const std::optional<project::Problem>& fault() const { return m_fault; }

private:
    bool characters();                 // UTF-8, nothing forbidden
    bool declaration();                // <?xml ...?>, where there is one
    bool between(const char* place);   // blanks, comments and instructions outside the root
    bool openTag();                    // at '<' of a start tag
    bool attributes(std::string_view); // up to and with '>' or '/>'
    bool attributeValue();             // with its quotes
    bool closeTag();                   // at "</"
    bool comment();                    // at "<!--"
    bool dataSection();                // at "<![CDATA["
    bool instruction();                // at "<?"
    bool markup();                     // at '<' inside the root
    bool references(std::string_view); // every '&' starts a reference that XML knows
    std::string_view name();           // empty where no name stands here
    void blanks();
    bool startsWith(std::string_view what) const {
        return m_text.substr(m_at, what.size()) == what;
    }
    bool atEnd() const { return m_at >= m_text.size(); }
    bool skipPast(std::string_view what, const char* piece);
    bool cutOff(const char* piece); // the text ends within `piece`
    bool fail(std::size_t offset, std::string what, std::string remedy);
    int lineOf(std::size_t offset) const;

    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_pieces = 0;
    std::vector<std::string_view> m_open;       // views into the text, so that they have an offset
    std::vector<std::string_view> m_attributes; // of the tag at hand
    std::optional<project::Problem> m_fault;
};

} // namespace cutwater::document
