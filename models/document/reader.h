// SPDX-License-Identifier: GPL-3.0-or-later
// Reader: one element of the file being read. Each description asks for its facts by name, in any
// order of the file; what nobody asked for is unknown. Private to the folder.
#pragma once

#include "models/document/facts_values.h"
#include "models/document/large_pages.h"
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

    using Position = Markup::Position;
    static constexpr Position kNone = Markup::kNone;

    Reader(ReaderState& state, Position node);
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;

    void attribute(std::string_view name, std::string& value, Need need);
    void attribute(std::string_view name, double& value, Need need);
    void attribute(std::string_view name, bool& value, Need need);
    template <Worded Enum>
    void attribute(std::string_view name, Enum& value, Need need) {
        if (const auto word = rawAttribute(name, need)) value = fromWord<Enum>(m_node, *word);
    }
    void target(project::Reference& reference);

    void fact(std::string_view name, std::string& value);
    void fact(std::string_view name, bool& value, Need need = Need::optional);
    void fact(std::string_view name, std::optional<int>& value);
    void fact(std::string_view name, std::optional<double>& value);
    template <Worded Enum>
    void fact(std::string_view name, Enum& value) {
        if (const auto node = single(name); node != kNone)
            value = fromWord<Enum>(node, m_state.text(node));
    }
    void facts(std::string_view name, std::vector<std::string>& values);

    void reference(std::string_view name, project::Id& id);
    void reference(std::string_view name, project::Reference& reference);
    void references(std::string_view name, std::vector<project::Reference>& references);

    template <typename Value>
    void element(std::string_view name, Value& value, Need need = Need::optional) {
        if (const auto node = single(name); node != kNone)
            read(node, value);
        else if (need == Need::required)
            missing(name);
    }
    template <typename Value>
    void element(std::string_view name, std::optional<Value>& value) {
        if (const auto node = single(name); node != kNone) read(node, value.emplace());
    }
    template <typename Value>
    void elements(std::string_view name, std::vector<Value>& values) {
        reserveLarge(values, values.size() + count(name));
        for (Position i = first(name); i != kNone; i = next(name, i))
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
    void section(std::string_view name, KeptInSections& kept, Describe describeFacts) {
        const auto node = single(name);
        if (node == kNone) return;
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
    void read(Position node, Value& value) {
        if constexpr (requires { value.line; }) value.line.number = m_state.lineOf(node);
        Reader reader(m_state, node);
        describe(reader, value);
        if constexpr (requires { value.kept; })
            reader.finish(&value.kept);
        else
            reader.finish(nullptr);
    }
    template <typename Alternative, typename Variant>
    void tryAlternative(std::string_view name, Variant& value) {
        const auto node = single(name);
        if (node == kNone) return;
        if (value.index() != 0)
            m_state.report(node, "a second distribution for one number", "keep one of them");
        read(node, value.template emplace<Alternative>());
    }
    template <typename Enum>
    Enum fromWord(Position node, std::string_view word) {
        if (const auto value = Words<Enum>::from(word)) return *value;
        m_state.reportUnknownWord(node, Words<Enum>::what, word, Words<Enum>::all());
        return Enum{};
    }

    // What the attribute says, until the next is asked for.
    std::optional<std::string_view> rawAttribute(std::string_view name, Need need);
    Position single(std::string_view name); // reports a second one
    std::size_t count(std::string_view name) const;
    // The first child of that name that nobody asked for yet, the next one behind `child`, or
    // kNone. No name is asked for twice.
    Position first(std::string_view name);
    Position next(std::string_view name, Position child) const;
    Position from(std::string_view name, Position child) const; // `child` itself or one behind it
    Position behind(Position child) const { return m_state.markup.elements[child].next; }
    Position take(Position child);
    void missing(std::string_view name);

    ReaderState& m_state;
    Position m_node;
    Position m_left, m_end;       // the children from the first that nobody asked for yet
    std::size_t m_attributesLeft; // that nobody asked for yet
    // What was asked for, to propose the nearest name for an unknown one. Literals all of them; not
    // noted once nothing is left that could be unknown.
    std::array<const char*, 48> m_names;
    std::size_t m_nameCount = 0;
    std::array<const char*, 8> m_attributeNames;
    std::size_t m_attributeCount = 0;
};

} // namespace cutwater::document
