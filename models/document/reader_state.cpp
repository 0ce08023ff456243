// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/reader_state.h"

#include "models/document/document.h"
#include "models/document/scan.h"
#include "models/project/nearest.h"

#include <cstring>
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

std::string inWords(pugi::xml_node node) {
    std::string words;
    for (; node && node.type() == pugi::node_element; node = node.parent()) {
        if (!words.empty()) words += " of ";
        words += node.name();
        if (const pugi::xml_attribute id = node.attribute("id")) {
            words += ' ' + shortened(id.value());
            break;
        }
        const pugi::xml_node above = node.parent().parent();
        const bool isSection = above.type() == pugi::node_document;
        const bool isInSection = above.parent().type() == pugi::node_document;
        if (isSection || (isInSection && words == node.name() &&
                          std::strcmp(node.parent().name(), "project") != 0))
            break;
    }
    return words;
}

int ReaderState::lineOf(pugi::xml_node node) {
    const std::ptrdiff_t offset = node.offset_debug();
    return offset < 0 ? 0 : lines.lineOf(static_cast<std::size_t>(offset));
}

std::string ReaderState::rawText(pugi::xml_node node) const {
    // The offset is that of the name, just behind the '<'.
    const auto start = static_cast<std::size_t>(node.offset_debug()) - 1;
    return std::string(source.substr(start, elementEnd(source, start) - start));
}

std::string ReaderState::text(pugi::xml_node node) {
    if (const pugi::xml_attribute attribute = node.first_attribute())
        reportUnknown(node,
                      fmt::format("unknown attribute {} of {}", attribute.name(), inWords(node)),
                      {}, {});
    const pugi::xml_node first = node.first_child();
    if (first.type() != pugi::node_element && !first.next_sibling()) return first.value();
    std::string text;
    for (const pugi::xml_node piece : node.children()) {
        if (piece.type() == pugi::node_element)
            reportUnknown(
                piece,
                fmt::format("unknown element <{}> in the text of {}", piece.name(), inWords(node)),
                {}, {});
        else
            text += piece.value();
    }
    return text;
}

void ReaderState::report(pugi::xml_node node, std::string what, std::string remedy) {
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

void ReaderState::reportUnknownWord(pugi::xml_node node, const char* kind, std::string_view word,
                                    const std::vector<std::string_view>& known) {
    reportUnknown(node, fmt::format("\"{}\" is not a known {}", shortened(word), kind), word,
                  known);
}

void ReaderState::reportUnknown(pugi::xml_node node, std::string what, std::string_view name,
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
