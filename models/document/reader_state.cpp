// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/reader_state.h"

#include "models/document/document.h"
#include "models/project/nearest.h"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace cutwater::document {

namespace {

constexpr std::size_t kMostProblems = 100;

std::string shortened(std::string_view text) {
    constexpr std::size_t kLongest = 60;
    if (text.size() <= kLongest) return std::string(text);
    std::size_t end = kLongest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end; // not in the middle of a character
    return std::string(text.substr(0, end)) + "...";
}

} // namespace

std::string ReaderState::inWords(Markup::Position node) const {
    std::string words, itsRoom;
    const auto parentOf = [&](Markup::Position of) { return markup.elements[of].parent; };
    for (; node != Markup::kNone; node = parentOf(node)) {
        if (!words.empty()) words += " of ";
        const std::string_view name = markup.nameOf(node);
        words += name;
        const auto* const end = markup.attributesEnd(node);
        const auto* const id =
            std::find_if(markup.attributesOf(node), end,
                         [&](const auto& attribute) { return markup.nameOf(attribute) == "id"; });
        if (id != end) {
            words += ' ' + shortened(markup.valueOf(*id, itsRoom));
            break;
        }
        const Markup::Position parent = parentOf(node);
        if (parent == Markup::kNone) break;
        const Markup::Position above = parentOf(parent);
        const bool isSection = above == Markup::kNone;
        const bool isInSection = !isSection && parentOf(above) == Markup::kNone;
        if (isSection || (isInSection && words == name && markup.nameOf(parent) != "project"))
            break;
    }
    return words;
}

std::string ReaderState::rawText(Markup::Position node) const {
    const std::size_t start = markup.elements[node].name - 1; // the '<'
    return std::string(markup.text.substr(start, markup.endOf(node) - start));
}

std::string_view ReaderState::text(Markup::Position node) {
    const Markup::Element& element = markup.elements[node];
    if (markup.attributesOf(node) < markup.attributesEnd(node))
        reportUnknown(node,
                      fmt::format("unknown attribute {} of {}",
                                  markup.nameOf(*markup.attributesOf(node)), inWords(node)),
                      {}, {});
    if (!element.hasPieces && !markup.holdsElements(node)) return markup.plainTextOf(node, room);
    for (Markup::Position piece = node + 1; piece < element.next;
         piece = markup.elements[piece].next)
        reportUnknown(piece,
                      fmt::format("unknown element <{}> in the text of {}", markup.nameOf(piece),
                                  inWords(node)),
                      {}, {});
    room.clear();
    for (const std::string& piece : markup.textsOf(node))
        room += piece;
    return room;
}

void ReaderState::report(Markup::Position node, std::string what, std::string remedy) {
    if (problems.size() >= kMostProblems) {
        ++unlisted;
        return;
    }
    project::Problem problem;
    problem.what = std::move(what);
    problem.remedy = std::move(remedy);
    problem.where = inWords(node);
    problem.line = lineOf(node);
    problems.push_back(std::move(problem));
}

void ReaderState::reportUnknownWord(Markup::Position node, const char* kind, std::string_view word,
                                    const std::vector<std::string_view>& known) {
    reportUnknown(node, fmt::format("\"{}\" is not a known {}", shortened(word), kind), word,
                  known);
}

void ReaderState::reportUnknown(Markup::Position node, std::string what, std::string_view name,
                                const std::vector<std::string_view>& known) {
    std::string remedy;
    const std::string_view nearest = project::nearestWord(name, known);
    if (newer)
        remedy = fmt::format("the file is of version {}: open it with a newer Cutwater, this one "
                             "knows version {}.{}",
                             fileVersion, kMajorVersion, kMinorVersion);
    else if (!name.empty() && !nearest.empty())
        remedy = fmt::format("write {}", nearest);
    else if (!known.empty())
        remedy = fmt::format("use one of {}", fmt::join(known, ", "));
    else
        remedy = "delete it";
    report(node, std::move(what), std::move(remedy));
}

project::Problems ReaderState::takeProblems() {
    if (unlisted > 0) {
        project::Problem more;
        more.what = fmt::format("and {} more problems of form", unlisted);
        more.remedy = "mend those above first";
        problems.push_back(std::move(more));
        unlisted = 0;
    }
    return std::move(problems);
}

} // namespace cutwater::document
