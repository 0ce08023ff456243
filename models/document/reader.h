// SPDX-License-Identifier: GPL-3.0-or-later
// Reader: one element of the file being read. Each description asks for its facts by name, in any
// order of the file; what nobody asked for is unknown. Private to the folder.
#pragma once

#include "models/document/facts_values.h"
#include "models/document/reader_state.h"
#include "models/document/words.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace cutwater::document {

class Reader {
public:
    template <typename Value>
    using Access = Value;
    using KeptInSections = std::vector<std::pair<std::string, project::Kept>>;

    Reader(ReaderState& state, pugi::xml_node node);
    ~Reader() { m_state.children.resize(m_begin); }
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;

    void attribute(const char* name, std::string& value, Need need);
    void attribute(const char* name, double& value, Need need);
    void attribute(const char* name, bool& value, Need need);
    template <Worded Enum>
    void attribute(const char* name, Enum& value, Need need) {
        if (const char* word = rawAttribute(name, need)) value = fromWord<Enum>(m_node, word);
    }
    void target(project::Reference& reference);

    void fact(const char* name, std::string& value);
    void fact(const char* name, bool& value, Need need = Need::optional);
    void fact(const char* name, std::optional<int>& value);
    void fact(const char* name, std::optional<double>& value);
    template <Worded Enum>
    void fact(const char* name, Enum& value) {
        if (const pugi::xml_node node = single(name))
            value = fromWord<Enum>(node, m_state.text(node));
    }
    void facts(const char* name, std::vector<std::string>& values);

    void reference(const char* name, project::Id& id);
    void reference(const char* name, project::Reference& reference);
    void references(const char* name, std::vector<project::Reference>& references);

    template <typename Value>
    void element(const char* name, Value& value, Need need = Need::optional) {
        if (const pugi::xml_node node = single(name))
            read(node, value);
        else if (need == Need::required)
            missing(name);
    }
    template <typename Value>
    void element(const char* name, std::optional<Value>& value) {
        if (const pugi::xml_node node = single(name)) read(node, value.emplace());
    }
    template <typename Value>
    void elements(const char* name, std::vector<Value>& values) {
        values.reserve(values.size() + count(name));
        for (std::size_t i = next(name, m_begin); i < m_end; i = next(name, i + 1))
            read(take(i), values.emplace_back());
    }
    template <typename Names, typename... Alternatives>
    void oneOf(const Names& names, std::variant<std::monostate, Alternatives...>& value) {
        std::size_t index = 0;
        (tryAlternative<Alternatives>(names[++index], value), ...);
    }
    void numbers(std::vector<project::Assignment>& numbers);
    void version(int& newerMinor);
    template <typename Describe>
    void section(const char* name, KeptInSections& kept, Describe describeFacts) {
        const pugi::xml_node node = single(name);
        if (!node) return;
        Reader reader(m_state, node);
        describeFacts(reader);
        project::Kept keptHere;
        reader.finish(&keptHere);
        if (!keptHere.empty()) kept.emplace_back(name, std::move(keptHere));
    }

    // Judges what nobody asked for: kept where the file is newer and there is a place for it.
    void finish(project::Kept* kept);

private:
    template <typename Value>
    void read(pugi::xml_node node, Value& value) {
        if constexpr (requires { value.line; }) value.line.number = m_state.lineOf(node);
        Reader reader(m_state, node);
        describe(reader, value);
        if constexpr (requires { value.kept; })
            reader.finish(&value.kept);
        else
            reader.finish(nullptr);
    }
    template <typename Alternative, typename Variant>
    void tryAlternative(const char* name, Variant& value) {
        const pugi::xml_node node = single(name);
        if (!node) return;
        if (value.index() != 0)
            m_state.report(node, "a second distribution for one number", "keep one of them");
        read(node, value.template emplace<Alternative>());
    }
    template <typename Enum>
    Enum fromWord(pugi::xml_node node, std::string_view word) {
        if (const auto value = Words<Enum>::from(word)) return *value;
        m_state.reportUnknownWord(node, Words<Enum>::what, word, Words<Enum>::all());
        return Enum{};
    }

    const char* rawAttribute(const char* name, Need need); // null where it is not there
    pugi::xml_node single(const char* name);               // reports a second one
    std::size_t count(const char* name) const;
    // The position of the first child of that name from `from` on, or m_end.
    std::size_t next(const char* name, std::size_t from);
    pugi::xml_node take(std::size_t position);
    void missing(const char* name);
    void know(const char* name);

    ReaderState& m_state;
    pugi::xml_node m_node;
    std::size_t m_begin, m_end; // the children, on the stack that all readers share
    // What was asked for, to propose the nearest name for an unknown one.
    std::array<const char*, 48> m_names;
    std::size_t m_nameCount = 0;
    std::array<const char*, 8> m_attributeNames;
    std::size_t m_attributeCount = 0;
};

} // namespace cutwater::document
