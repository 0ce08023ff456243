// SPDX-License-Identifier: GPL-3.0-or-later
// Writer: one element of the file being written. Private to the folder.
#pragma once

#include "models/document/facts_values.h"
#include "models/document/numbers.h"
#include "models/document/words.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace cutwater::document {

// What all writers of one file share.
struct WriterState {
    std::string text;
    project::Problems problems;
    // What is being written, for messages: the name of the element and its id.
    std::string_view kind;
    std::string_view id;
};

class Writer {
public:
    template <typename Value>
    using Access = const Value;
    using KeptInSections = std::vector<std::pair<std::string, project::Kept>>;

    // Opens the element; finish() closes it. `kept` may be null and must outlive the writer.
    Writer(WriterState& state, const char* name, int depth, const project::Kept* kept = nullptr);

    void attribute(const char* name, const std::string& value, Need need);
    void attribute(const char* name, double value, Need need);
    void attribute(const char* name, bool value, Need need);
    template <Worded Enum>
    void attribute(const char* name, Enum value, Need need) {
        if (need == Need::required || value != Enum{}) rawAttribute(name, Words<Enum>::to(value));
    }
    void target(const project::Reference& reference) {
        attribute("ref", reference.id, Need::required);
    }

    void fact(const char* name, const std::string& value);
    void fact(const char* name, bool value, Need need = Need::optional);
    void fact(const char* name, const std::optional<int>& value);
    void fact(const char* name, const std::optional<double>& value);
    template <Worded Enum>
    void fact(const char* name, Enum value) {
        if (value != Enum{}) rawFact(name, Words<Enum>::to(value));
    }
    void facts(const char* name, const std::vector<std::string>& values);

    void reference(const char* name, const project::Id& id);
    void reference(const char* name, const project::Reference& reference) {
        this->reference(name, reference.id);
    }
    void references(const char* name, const std::vector<project::Reference>& references);

    template <typename Value>
    void element(const char* name, const Value& value, Need need = Need::optional) {
        if (need == Need::required || !(value == Value{})) child(name, value);
    }
    template <typename Value>
    void element(const char* name, const std::optional<Value>& value) {
        if (value) child(name, *value);
    }
    template <typename Value>
    void elements(const char* name, const std::vector<Value>& values) {
        for (const Value& value : values)
            child(name, value);
    }
    template <typename Names, typename... Alternatives>
    void oneOf(const Names& names, const std::variant<std::monostate, Alternatives...>& value) {
        std::visit(
            [&](const auto& alternative) {
                if constexpr (!std::is_same_v<decltype(alternative), const std::monostate&>)
                    child(names[value.index()], alternative);
            },
            value);
    }
    void numbers(const std::vector<project::Assignment>& numbers);
    void version(int newerMinor);
    template <typename Describe>
    void section(const char* name, const KeptInSections& kept, Describe describeFacts) {
        openContent();
        const std::size_t before = m_state.text.size();
        const project::Kept* keptHere = nullptr;
        for (const auto& [section, what] : kept)
            if (section == name && !what.empty()) keptHere = &what;
        Writer writer(m_state, name, m_depth + 1, keptHere);
        m_state.kind = name;
        m_state.id = {};
        describeFacts(writer);
        if (!writer.m_hasContent && !keptHere)
            m_state.text.resize(before);
        else
            writer.finish();
    }

    void finish();

private:
    template <typename Value>
    void child(const char* name, const Value& value) {
        openContent();
        const project::Kept* kept = nullptr;
        if constexpr (requires { value.kept; }) kept = &value.kept;
        Writer writer(m_state, name, m_depth + 1, kept);
        const auto kind = m_state.kind;
        const auto id = m_state.id;
        if constexpr (requires { value.id; }) {
            m_state.kind = name;
            m_state.id = value.id;
        }
        describe(writer, value);
        writer.finish();
        m_state.kind = kind;
        m_state.id = id;
    }
    void openContent();
    void writeKeptAttributes();
    void indent(int depth) { m_state.text.append(static_cast<std::size_t>(2 * depth), ' '); }
    void rawAttribute(const char* name, std::string_view value);
    void rawFact(const char* name, std::string_view value);
    std::optional<std::string> checkedNumber(const char* name, double value);
    void report(const char* name, std::string what, std::string remedy);

    WriterState& m_state;
    const char* m_name;
    int m_depth;
    const project::Kept* m_kept;
    bool m_hasContent = false; // the start tag is closed
};

} // namespace cutwater::document
