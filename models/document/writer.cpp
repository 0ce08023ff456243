// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/writer.h"

#include "models/document/characters.h"
#include "models/document/document.h"
#include "models/document/scan.h"

#include <array>
#include <cmath>
#include <fmt/format.h>

namespace cutwater::document {

namespace {

// Bytes that cannot be copied as they are into an attribute's value or into text.
constexpr std::array<bool, 256> specialBytes(bool inAttribute) {
    std::array<bool, 256> special{};
    for (int i = 0; i < 0x20; ++i)
        special[static_cast<std::size_t>(i)] = true;
    special['\n'] = special['\t'] = inAttribute;
    for (unsigned char c : {'&', '<', '>', '\r'})
        special[c] = true;
    special['"'] = inAttribute;
    return special;
}

constexpr auto kSpecialInText = specialBytes(false);
constexpr auto kSpecialInAttribute = specialBytes(true);

void append(std::string& text, std::string_view value, const std::array<bool, 256>& special) {
    std::size_t from = 0;
    for (std::size_t i = 0; i < value.size(); ++i) {
        const char c = value[i];
        if (!special[static_cast<unsigned char>(c)]) continue;
        text.append(value, from, i - from);
        from = i + 1;
        switch (c) {
        case '&': text += "&amp;"; break;
        case '<': text += "&lt;"; break;
        case '>': text += "&gt;"; break;
        case '"': text += "&quot;"; break;
        case '\r': text += "&#13;"; break; // a bare one would be read as a new line
        case '\n': text += "&#10;"; break;
        case '\t': text += "&#9;"; break;
        default: break; // forbidden; reported by the caller
        }
    }
    text.append(value, from, value.size() - from);
}

} // namespace

Writer::Writer(WriterState& state, const char* name, int depth, const project::Kept* kept)
    : m_state(state), m_name(name), m_depth(depth), m_kept(kept) {
    indent(depth);
    m_state.text += '<';
    m_state.text += name;
}

void Writer::openContent() {
    if (m_hasContent) return;
    writeKeptAttributes();
    m_state.text += ">\n";
    m_hasContent = true;
}

void Writer::writeKeptAttributes() {
    if (m_kept)
        for (const auto& [name, value] : m_kept->attributes)
            rawAttribute(name.c_str(), value);
}

void Writer::rawAttribute(const char* name, std::string_view value) {
    m_state.text += ' ';
    m_state.text += name;
    m_state.text += "=\"";
    append(m_state.text, value, kSpecialInAttribute);
    m_state.text += '"';
    if (const BadCharacter bad = findBadCharacter(value); !bad.what.empty())
        report(name, "holds " + bad.what, "delete it");
}

void Writer::rawFact(const char* name, std::string_view value) {
    openContent();
    indent(m_depth + 1);
    m_state.text += '<';
    m_state.text += name;
    m_state.text += '>';
    append(m_state.text, value, kSpecialInText);
    m_state.text += "</";
    m_state.text += name;
    m_state.text += ">\n";
    if (const BadCharacter bad = findBadCharacter(value); !bad.what.empty())
        report(name, "holds " + bad.what, "delete it");
}

void Writer::attribute(const char* name, const std::string& value, Need need) {
    if (need == Need::required || !value.empty()) rawAttribute(name, value);
}

void Writer::attribute(const char* name, double value, Need need) {
    if (need == Need::required || value != 0)
        if (const auto text = checkedNumber(name, value)) rawAttribute(name, *text);
}

void Writer::attribute(const char* name, bool value, Need need) {
    if (need == Need::required || value) rawAttribute(name, value ? "true" : "false");
}

void Writer::fact(const char* name, const std::string& value) {
    if (!value.empty()) rawFact(name, value);
}

void Writer::fact(const char* name, bool value, Need need) {
    if (need == Need::required || value) rawFact(name, value ? "true" : "false");
}

void Writer::fact(const char* name, const std::optional<int>& value) {
    if (value) rawFact(name, std::to_string(*value));
}

void Writer::fact(const char* name, const std::optional<double>& value) {
    if (value)
        if (const auto text = checkedNumber(name, *value)) rawFact(name, *text);
}

void Writer::facts(const char* name, const std::vector<std::string>& values) {
    for (const std::string& value : values)
        rawFact(name, value);
}

void Writer::reference(const char* name, const project::Id& id) {
    if (!id.empty()) references(name, {project::Reference{id, {}}});
}

void Writer::references(const char* name, const std::vector<project::Reference>& references) {
    for (const project::Reference& reference : references) {
        openContent();
        Writer writer(m_state, name, m_depth + 1);
        writer.attribute("ref", reference.id, Need::required);
        writer.finish();
    }
}

void Writer::numbers(const std::vector<project::Assignment>& numbers) {
    for (const project::Assignment& number : numbers)
        child(project::facts(number.role).word.data(), number.quantity);
}

void Writer::version(int newerMinor) {
    rawAttribute("version", fmt::format("{}.{}", kMajorVersion,
                                        newerMinor > kMinorVersion ? newerMinor : kMinorVersion));
}

void Writer::finish() {
    if (m_kept && !m_kept->elements.empty()) {
        for (const std::string& element : m_kept->elements) {
            if (elementEnd(element, 0) != element.size() || !findBadCharacter(element).what.empty())
                report("what is kept of a newer version", "is not one whole element", "delete it");
            openContent();
            indent(m_depth + 1);
            m_state.text += element;
            m_state.text += '\n';
        }
    }
    if (!m_hasContent) {
        writeKeptAttributes();
        m_state.text += "/>\n";
        return;
    }
    indent(m_depth);
    m_state.text += "</";
    m_state.text += m_name;
    m_state.text += ">\n";
}

std::optional<std::string> Writer::checkedNumber(const char* name, double value) {
    if (std::isfinite(value)) return numberText(value);
    report(name, "is not a finite number", "enter a number");
    return std::nullopt;
}

void Writer::report(const char* name, std::string what, std::string remedy) {
    project::Problem problem;
    problem.where = std::string(m_state.kind);
    if (!m_state.id.empty() && findBadCharacter(m_state.id).what.empty())
        problem.where += ' ' + std::string(m_state.id);
    problem.what = fmt::format("{} of {} {}", name, problem.where, what);
    problem.remedy = std::move(remedy);
    m_state.problems.push_back(std::move(problem));
}

} // namespace cutwater::document
