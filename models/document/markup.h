// SPDX-License-Identifier: GPL-3.0-or-later
// Markup: the elements and attributes of a text as places in that text, with nothing copied. Filled
// by Scanner, read by Reader. Private to the folder.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::document {

struct Markup {
    using Offset = std::uint32_t;   // in the text; kMaxFileBytes fits
    using Position = std::uint32_t; // in `elements`
    static constexpr Position kNone = 0xFFFFFFFF;

    struct Element {
        Offset name, nameLength;
        Offset inside, insideEnd; // from behind the start tag to the '<' of the end tag
        Position next;            // the first element behind all that is inside this one
        Position parent;          // kNone: the outermost one
        std::uint32_t attributes; // the first; they end where those of the following element begin
        bool hasText;             // other than blanks, directly inside
        bool hasPieces;           // comments, instructions or CDATA directly inside
        bool isShort;             // <name/>
        bool used;                // for the reader: somebody asked for it
    };
    struct Attribute {
        Offset name, nameLength;
        Offset value, valueLength; // without the quotes
    };

    explicit Markup(std::string_view its) : text(its) {}

    // Elements stand in the order of their start tags, so that the first one inside another follows
    // it. The text is well formed, as Scanner sees to it.
    std::string_view nameOf(Position element) const {
        return text.substr(elements[element].name, elements[element].nameLength);
    }
    std::string_view nameOf(const Attribute& attribute) const {
        return text.substr(attribute.name, attribute.nameLength);
    }
    const Attribute* attributesOf(Position element) const {
        return attributes.data() + elements[element].attributes;
    }
    const Attribute* attributesEnd(Position element) const {
        return attributes.data() + (element + 1 < elements.size() ? elements[element + 1].attributes
                                                                  : attributes.size());
    }
    bool holdsElements(Position element) const { return elements[element].next > element + 1; }
    std::size_t endOf(Position element) const; // the offset behind all of it

    // What an attribute or an element says, with references resolved and line ends as '\n'
    // (XML 1.0, sections 2.11 and 3.3.3). The view is into the text, or into `room` where something
    // had to be changed.
    std::string_view valueOf(const Attribute& attribute, std::string& room) const;
    // Of an element that holds neither elements nor pieces.
    std::string_view plainTextOf(Position element, std::string& room) const;
    // The stretches of text directly inside, each as it is meant. Blanks alone count only where
    // nothing else stands in the element.
    std::vector<std::string> textsOf(Position element) const;

    std::string_view text;
    std::vector<Element> elements;
    std::vector<Attribute> attributes;
};

} // namespace cutwater::document
