// SPDX-License-Identifier: GPL-3.0-or-later
// Scanner: walks once through XML text, notes its elements and attributes, and stops at the first
// fault. Private to the folder.
#pragma once

#include "models/document/markup.h"
#include "models/project/problem.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace cutwater::document {

class Scanner {
public:
    // The text is that of `markup`, which is filled; it is whole where no fault was found.
    explicit Scanner(Markup& markup) : m_markup(markup), m_text(markup.text) {}

    bool document();                 // the whole text
    bool element(std::size_t start); // one element with all that is in it
    std::size_t position() const { return m_at; }
    const std::optional<project::Problem>& fault() const { return m_fault; }

private:
    bool characters();               // UTF-8, nothing forbidden
    bool declaration();              // <?xml ...?>, where there is one
    bool between(const char* place); // blanks, comments and instructions outside the root
    bool content();                  // up to the '<' of what comes next inside the root
    bool openTag();                  // at '<' of a start tag
    bool attributes();               // of the innermost element, up to and with '>' or '/>'
    bool attributeValue();           // with its quotes
    bool closeTag();                 // at "</"
    bool comment();                  // at "<!--"
    bool dataSection();              // at "<![CDATA["
    bool instruction();              // at "<?"
    bool markup();                   // at '<' inside the root
    bool reference();                // at '&': one that XML knows
    std::string_view name();         // empty where no name stands here
    void blanks();
    bool startsWith(std::string_view what) const {
        return m_text.substr(m_at, what.size()) == what;
    }
    bool atEnd() const { return m_at >= m_text.size(); }
    Markup::Element& open() { return m_markup.elements[m_open]; }
    std::string_view openName() const { return m_markup.nameOf(m_open); }
    bool isAnyOpen() const { return m_open != Markup::kNone; }
    void leave(); // the innermost element ends here
    bool skipPast(std::string_view what, const char* piece);
    bool cutOff(const char* piece); // the text ends within `piece`
    bool fail(std::size_t offset, std::string what, std::string remedy);
    int lineOf(std::size_t offset) const;

    Markup& m_markup;
    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_pieces = 0;
    Markup::Position m_open = Markup::kNone; // the innermost element that is open
    std::size_t m_depth = 0;
    std::optional<project::Problem> m_fault;
};

} // namespace cutwater::document
