// SPDX-License-Identifier: GPL-3.0-or-later
// What all readers of one file share: its elements, its lines, and the problems found so far.
// Private to the folder.
#pragma once

#include "models/document/lines.h"
#include "models/document/markup.h"
#include "models/project/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace cutwater::document {

struct ReaderState {
    explicit ReaderState(Markup& its) : markup(its), lines(its.text) {}

    int lineOf(Markup::Position node) const { return lines.lineOf(markup.elements[node].name); }
    // The element as it stands in the file, from '<' to '>'.
    std::string rawText(Markup::Position node) const;
    // The text of an element that holds nothing but text, until the next is asked for; anything
    // else in it is a problem.
    std::string_view text(Markup::Position node);
    // "gate G4" or "rate of mode ET-1.fouled": the element and the nearest one around it with an
    // id.
    std::string inWords(Markup::Position node) const;

    void report(Markup::Position node, std::string what, std::string remedy);
    void reportUnknownWord(Markup::Position node, const char* kind, std::string_view word,
                           const std::vector<std::string_view>& known);
    void reportUnknown(Markup::Position node, std::string what, std::string_view name,
                       const std::vector<std::string_view>& known);
    // The problems, with a last one that counts those beyond the first hundred.
    project::Problems takeProblems();

    Markup& markup;
    LineTable lines;
    std::string room;        // for what is not in the text as it is meant
    bool newer = false;      // of a newer minor version than ours
    std::string fileVersion; // "1.3"
    project::Problems problems;
    std::size_t unlisted = 0;
};

} // namespace cutwater::document
