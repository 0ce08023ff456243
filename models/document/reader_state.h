// SPDX-License-Identifier: GPL-3.0-or-later
// What all readers of one file share: the text, its lines, and the problems found so far. Private
// to the folder.
#pragma once

#include "models/document/lines.h"
#include "models/project/problem.h"

#include <pugixml.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::document {

struct ReaderState {
    struct Child {
        pugi::xml_node node;
        std::string_view name;
        bool used = false;
    };

    // `source` is the text that the nodes were parsed from, byte by byte.
    explicit ReaderState(std::string_view sourceText) : source(sourceText), lines(sourceText) {}

    int lineOf(pugi::xml_node node);
    // The element as it stands in the file, from '<' to '>'.
    std::string rawText(pugi::xml_node node) const;
    // The text of an element that holds nothing but text; anything else in it is a problem.
    std::string text(pugi::xml_node node);

    void report(pugi::xml_node node, std::string what, std::string remedy);
    void reportUnknownWord(pugi::xml_node node, const char* kind, std::string_view word,
                           const std::vector<std::string_view>& known);
    void reportUnknown(pugi::xml_node node, std::string what, std::string_view name,
                       const std::vector<std::string_view>& known);
    // The problems, with a last one that counts those beyond the first hundred.
    project::Problems takeProblems();

    std::string_view source;
    LineTable lines;
    bool newer = false;      // of a newer minor version than ours
    std::string fileVersion; // "1.3"
    project::Problems problems;
    std::size_t unlisted = 0;
    std::vector<Child> children; // of all elements that are being read, the innermost last
};

// "gate G4" or "rate of mode ET-1.fouled": the element and the nearest one around it with an id.
std::string inWords(pugi::xml_node node);

} // namespace cutwater::document
