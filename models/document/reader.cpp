// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/reader.h"

#include "models/document/document.h"
#include "models/document/numbers.h"

#include <algorithm>
#include <cassert>
#include <cstring>
#include <fmt/format.h>

namespace cutwater::document {

namespace {

bool isBlank(const char* text) {
    return text[std::strspn(text, " \t\r\n")] == '\0';
}

template <typename Number>
void number(ReaderState& state, pugi::xml_node node, std::string_view name, std::string_view text,
            NumberFault (*read)(std::string_view, Number&), Number& value) {
    constexpr bool whole = std::is_same_v<Number, int>;
    switch (read(text, value)) {
    case NumberFault::none: return;
    case NumberFault::notANumber:
        state.report(node,
                     fmt::format("{} of {} is \"{:.60}\", which is not a {}number", name,
                                 inWords(node), text, whole ? "whole " : ""),
                     whole ? "write it like 2" : "write it like 0.5 or 3e-07");
        return;
    case NumberFault::outOfRange:
        state.report(node,
                     fmt::format("{} of {} is {:.60}, which is beyond what can be computed with",
                                 name, inWords(node), text),
                     whole ? "write a smaller number" : "write a number from 1e-300 to 1e300");
        return;
    }
}

void truth(ReaderState& state, pugi::xml_node node, std::string_view text, bool& value) {
    if (text == "true" || text == "false")
        value = text == "true";
    else
        state.reportUnknownWord(node, "answer", text, {"true", "false"});
}

} // namespace

Reader::Reader(ReaderState& state, pugi::xml_node node)
    : m_state(state), m_node(node), m_begin(state.children.size()) {
    for (const pugi::xml_node child : node.children()) {
        if (child.type() == pugi::node_element)
            state.children.push_back({child, child.name(), false});
        else if (!isBlank(child.value()))
            state.report(node,
                         fmt::format("text that belongs to no fact in {}: \"{:.40}\"",
                                     inWords(node), child.value()),
                         "put it into an element, such as <remark>, or delete it");
    }
    m_end = state.children.size();
}

void Reader::know(const char* name) {
    assert(m_nameCount < m_names.size());
    m_names[m_nameCount++] = name;
}

std::size_t Reader::count(const char* name) const {
    std::size_t count = 0;
    for (std::size_t i = m_begin; i < m_end; ++i)
        count += m_state.children[i].name == name ? 1 : 0;
    return count;
}

std::size_t Reader::next(const char* name, std::size_t from) {
    if (from == m_begin) know(name);
    const std::string_view wanted = name;
    while (from < m_end && m_state.children[from].name != wanted)
        ++from;
    return from;
}

pugi::xml_node Reader::take(std::size_t position) {
    m_state.children[position].used = true;
    return m_state.children[position].node;
}

pugi::xml_node Reader::single(const char* name) {
    const std::size_t first = next(name, m_begin);
    if (first == m_end) return {};
    for (std::size_t i = next(name, first + 1); i < m_end; i = next(name, i + 1))
        m_state.report(take(i), fmt::format("a second <{}> in {}", name, inWords(m_node)),
                       "keep one of them");
    return take(first);
}

void Reader::missing(const char* name) {
    m_state.report(m_node, fmt::format("{} has no {}", inWords(m_node), name),
                   fmt::format("add its {}", name));
}

const char* Reader::rawAttribute(const char* name, Need need) {
    assert(m_attributeCount < m_attributeNames.size());
    m_attributeNames[m_attributeCount++] = name;
    if (const pugi::xml_attribute attribute = m_node.attribute(name)) return attribute.value();
    if (need == Need::required) missing(name);
    return nullptr;
}

void Reader::attribute(const char* name, std::string& value, Need need) {
    if (const char* text = rawAttribute(name, need)) value = text;
}

void Reader::attribute(const char* name, double& value, Need need) {
    if (const char* text = rawAttribute(name, need))
        number(m_state, m_node, name, text, readNumber, value);
}

void Reader::attribute(const char* name, bool& value, Need need) {
    if (const char* text = rawAttribute(name, need)) truth(m_state, m_node, text, value);
}

void Reader::target(project::Reference& reference) {
    attribute("ref", reference.id, Need::required);
    reference.line.number = m_state.lineOf(m_node);
}

void Reader::fact(const char* name, std::string& value) {
    if (const pugi::xml_node node = single(name)) value = m_state.text(node);
}

void Reader::fact(const char* name, bool& value, Need) {
    if (const pugi::xml_node node = single(name)) truth(m_state, node, m_state.text(node), value);
}

void Reader::fact(const char* name, std::optional<int>& value) {
    if (const pugi::xml_node node = single(name))
        number(m_state, node, name, m_state.text(node), readWhole, value.emplace());
}

void Reader::fact(const char* name, std::optional<double>& value) {
    if (const pugi::xml_node node = single(name))
        number(m_state, node, name, m_state.text(node), readNumber, value.emplace());
}

void Reader::facts(const char* name, std::vector<std::string>& values) {
    for (std::size_t i = next(name, m_begin); i < m_end; i = next(name, i + 1))
        values.push_back(m_state.text(take(i)));
}

void Reader::reference(const char* name, project::Id& id) {
    project::Reference reference;
    this->reference(name, reference);
    id = std::move(reference.id);
}

void Reader::reference(const char* name, project::Reference& reference) {
    const pugi::xml_node node = single(name);
    if (!node) return;
    Reader reader(m_state, node);
    reader.target(reference);
    reader.finish(nullptr);
}

void Reader::references(const char* name, std::vector<project::Reference>& references) {
    references.reserve(references.size() + count(name));
    for (std::size_t i = next(name, m_begin); i < m_end; i = next(name, i + 1)) {
        Reader reader(m_state, take(i));
        reader.target(references.emplace_back());
        reader.finish(nullptr);
    }
}

void Reader::numbers(std::vector<project::Assignment>& numbers) {
    for (const project::RoleFacts& role : project::allRoles())
        if (const pugi::xml_node node = single(role.word.data()))
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
    const auto knownEnd = m_attributeNames.begin() + m_attributeCount;
    for (const pugi::xml_attribute attribute : m_node.attributes()) {
        const std::string_view name = attribute.name();
        if (std::find(m_attributeNames.begin(), knownEnd, name) != knownEnd) continue;
        if (keep)
            kept->attributes.emplace_back(name, attribute.value());
        else
            m_state.reportUnknown(m_node,
                                  fmt::format("unknown attribute {} of {}", name, inWords(m_node)),
                                  name, {m_attributeNames.begin(), knownEnd});
    }
    for (std::size_t i = m_begin; i < m_end; ++i) {
        const ReaderState::Child child = m_state.children[i];
        if (child.used) continue;
        if (keep)
            kept->elements.push_back(m_state.rawText(child.node));
        else
            m_state.reportUnknown(
                child.node, fmt::format("unknown element <{}> in {}", child.name, inWords(m_node)),
                child.name, {m_names.begin(), m_names.begin() + m_nameCount});
    }
}

} // namespace cutwater::document
