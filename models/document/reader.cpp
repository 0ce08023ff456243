// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/reader.h"

#include "models/document/document.h"
#include "models/document/numbers.h"

#include <algorithm>
#include <cassert>
#include <fmt/format.h>

namespace cutwater::document {

namespace {

bool isBlank(std::string_view text) {
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

template <typename Number>
void number(ReaderState& state, Markup::Position node, std::string_view name, std::string_view text,
            NumberFault (*read)(std::string_view, Number&), Number& value) {
    constexpr bool whole = std::is_same_v<Number, int>;
    switch (read(text, value)) {
    case NumberFault::none: return;
    case NumberFault::notANumber:
        state.report(node,
                     fmt::format("{} of {} is \"{:.60}\", which is not a {}number", name,
                                 state.inWords(node), text, whole ? "whole " : ""),
                     whole ? "write it like 2" : "write it like 0.5 or 3e-07");
        return;
    case NumberFault::outOfRange:
        state.report(node,
                     fmt::format("{} of {} is {:.60}, which is beyond what can be computed with",
                                 name, state.inWords(node), text),
                     whole ? "write a smaller number" : "write a number from 1e-300 to 1e300");
        return;
    }
}

void truth(ReaderState& state, Markup::Position node, std::string_view text, bool& value) {
    if (text == "true" || text == "false")
        value = text == "true";
    else
        state.reportUnknownWord(node, "answer", text, {"true", "false"});
}

} // namespace

Reader::Reader(ReaderState& state, Position node)
    : m_state(state), m_node(node), m_left(node + 1), m_end(state.markup.elements[node].next),
      m_attributesLeft(static_cast<std::size_t>(state.markup.attributesEnd(node) -
                                                state.markup.attributesOf(node))) {
    if (!state.markup.elements[node].hasText) return;
    for (const std::string& text : state.markup.textsOf(node))
        if (!isBlank(text))
            state.report(node,
                         fmt::format("text that belongs to no fact in {}: \"{:.40}\"",
                                     state.inWords(node), text),
                         "put it into an element, such as <remark>, or delete it");
}

std::size_t Reader::count(std::string_view name) const {
    std::size_t count = 0;
    for (Position i = from(name, m_left); i != kNone; i = next(name, i))
        ++count;
    return count;
}

Reader::Position Reader::first(std::string_view name) {
    if (m_left == m_end) return kNone;
    assert(m_nameCount < m_names.size());
    m_names[m_nameCount++] = name.data();
    return from(name, m_left);
}

Reader::Position Reader::next(std::string_view name, Position child) const {
    return from(name, behind(child));
}

Reader::Position Reader::from(std::string_view name, Position child) const {
    for (; child < m_end; child = behind(child))
        if (m_state.markup.nameOf(child) == name) return child;
    return kNone;
}

Reader::Position Reader::take(Position child) {
    m_state.markup.elements[child].used = true;
    while (m_left < m_end && m_state.markup.elements[m_left].used)
        m_left = behind(m_left);
    return child;
}

Reader::Position Reader::single(std::string_view name) {
    const Position found = first(name);
    if (found == kNone) return kNone;
    for (Position i = next(name, found); i != kNone; i = next(name, i))
        m_state.report(take(i), fmt::format("a second <{}> in {}", name, m_state.inWords(m_node)),
                       "keep one of them");
    return take(found);
}

void Reader::missing(std::string_view name) {
    m_state.report(m_node, fmt::format("{} has no {}", m_state.inWords(m_node), name),
                   fmt::format("add its {}", name));
}

std::optional<std::string_view> Reader::rawAttribute(std::string_view name, Need need) {
    assert(m_attributeCount < m_attributeNames.size());
    m_attributeNames[m_attributeCount++] = name.data();
    const auto* const end = m_state.markup.attributesEnd(m_node);
    for (const auto* it = m_state.markup.attributesOf(m_node); it < end; ++it)
        if (m_state.markup.nameOf(*it) == name) {
            --m_attributesLeft;
            return m_state.markup.valueOf(*it, m_state.room);
        }
    if (need == Need::required) missing(name);
    return std::nullopt;
}

void Reader::attribute(std::string_view name, std::string& value, Need need) {
    if (const auto text = rawAttribute(name, need)) value = *text;
}

void Reader::attribute(std::string_view name, double& value, Need need) {
    if (const auto text = rawAttribute(name, need))
        number(m_state, m_node, name, *text, readNumber, value);
}

void Reader::attribute(std::string_view name, bool& value, Need need) {
    if (const auto text = rawAttribute(name, need)) truth(m_state, m_node, *text, value);
}

void Reader::target(project::Reference& reference) {
    attribute("ref", reference.id, Need::required);
    reference.line.number = m_state.lineOf(m_node);
}

void Reader::fact(std::string_view name, std::string& value) {
    if (const Position node = single(name); node != kNone) value = m_state.text(node);
}

void Reader::fact(std::string_view name, bool& value, Need) {
    if (const Position node = single(name); node != kNone)
        truth(m_state, node, m_state.text(node), value);
}

void Reader::fact(std::string_view name, std::optional<int>& value) {
    if (const Position node = single(name); node != kNone)
        number(m_state, node, name, m_state.text(node), readWhole, value.emplace());
}

void Reader::fact(std::string_view name, std::optional<double>& value) {
    if (const Position node = single(name); node != kNone)
        number(m_state, node, name, m_state.text(node), readNumber, value.emplace());
}

void Reader::facts(std::string_view name, std::vector<std::string>& values) {
    for (Position i = first(name); i != kNone; i = next(name, i))
        values.emplace_back(m_state.text(take(i)));
}

void Reader::reference(std::string_view name, project::Id& id) {
    project::Reference reference;
    this->reference(name, reference);
    id = std::move(reference.id);
}

void Reader::reference(std::string_view name, project::Reference& reference) {
    const Position node = single(name);
    if (node == kNone) return;
    Reader reader(m_state, node);
    reader.target(reference);
    reader.finish(nullptr);
}

void Reader::references(std::string_view name, std::vector<project::Reference>& references) {
    references.reserve(references.size() + count(name));
    for (Position i = first(name); i != kNone; i = next(name, i)) {
        Reader reader(m_state, take(i));
        reader.target(references.emplace_back());
        reader.finish(nullptr);
    }
}

void Reader::numbers(std::vector<project::Assignment>& numbers) {
    for (const project::RoleFacts& role : project::allRoles())
        if (const Position node = single(role.word); node != kNone)
            read(node, numbers.emplace_back(project::Assignment{role.role, {}}).quantity);
}

void Reader::version(int& newerMinor) {
    rawAttribute("version", Need::required); // judged before anything else, see read.cpp
    if (m_state.newer) {
        const std::string& version = m_state.fileVersion;
        readWhole(std::string_view(version).substr(version.find('.') + 1), newerMinor);
    }
}

void Reader::finish(project::Kept* kept) {
    const bool keep = m_state.newer && kept;
    const Markup& markup = m_state.markup;
    const auto knownEnd = m_attributeNames.begin() + m_attributeCount;
    const auto* const end = markup.attributesEnd(m_node);
    for (const auto* it = markup.attributesOf(m_node); m_attributesLeft > 0 && it < end; ++it) {
        const std::string_view name = markup.nameOf(*it);
        if (std::find(m_attributeNames.begin(), knownEnd, name) != knownEnd) continue;
        if (keep)
            kept->attributes.emplace_back(name, markup.valueOf(*it, m_state.room));
        else
            m_state.reportUnknown(
                m_node, fmt::format("unknown attribute {} of {}", name, m_state.inWords(m_node)),
                name, {m_attributeNames.begin(), knownEnd});
    }
    for (Position child = m_left; child < m_end; child = behind(child)) {
        if (markup.elements[child].used) continue;
        const std::string_view name = markup.nameOf(child);
        if (keep)
            kept->elements.push_back(m_state.rawText(child));
        else
            m_state.reportUnknown(
                child, fmt::format("unknown element <{}> in {}", name, m_state.inWords(m_node)),
                name, {m_names.begin(), m_names.begin() + m_nameCount});
    }
}

} // namespace cutwater::document
