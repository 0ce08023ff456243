// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/library/library.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace cutwater::library {

namespace {

using project::Problem;
using project::Problems;
using project::Severity;

// The rules for components, modes and numbers are those of a project: the library is held against
// them as if every type stood in a plant.
Problems asProject(const Library& library) {
    project::Project plant;
    for (const ComponentType& type : library.types) {
        project::Component component;
        component.id = type.id;
        component.line = type.line;
        plant.components.push_back(component);
        for (const Mode& mode : type.modes) {
            project::FailureMode copy = mode.facts;
            copy.id = type.id + "." + copy.id;
            copy.component = type.id;
            copy.line = mode.line;
            plant.modes.push_back(std::move(copy));
        }
    }
    return project::validate(plant);
}

void add(Problems& problems, Severity severity, std::string what, std::string remedy,
         std::string where, int line) {
    problems.push_back({severity, std::move(what), std::move(remedy), std::move(where), line});
}

void judgeMode(Problems& problems, const ComponentType& type, const Mode& mode) {
    const std::string where = fmt::format("mode {} of type {}", mode.facts.id, type.id);
    const auto& numbers = mode.facts.model.numbers;
    if (numbers.empty() && mode.noRate.empty())
        add(problems, Severity::warning, where + " has no rate, and nothing says why",
            "give it a failure model with its source, or a <no-rate> with the reason", where,
            mode.line.number);
    if (!numbers.empty() && !mode.noRate.empty())
        add(problems, Severity::warning, where + " has a rate, and a reason why it has none",
            "take one of them away", where, mode.line.number);
    for (const project::Assignment& number : numbers) {
        const bool howOften =
            number.role == project::Role::rate || number.role == project::Role::probability ||
            number.role == project::Role::frequency || number.role == project::Role::scale;
        if (!howOften) continue;
        const project::SourceNote& source = number.quantity.source;
        if (source.document.empty() || source.tag.empty())
            add(problems, Severity::warning,
                fmt::format("the {} of {} has no source", project::facts(number.role).word, where),
                "name document, place and tag, or leave the number out", where,
                number.quantity.line.number);
        if (!number.quantity.parameter.empty())
            add(problems, Severity::error,
                fmt::format("the {} of {} names a shared parameter, which a library does not have",
                            project::facts(number.role).word, where),
                "give the value", where, number.quantity.line.number);
    }
}

} // namespace

const ComponentType* findType(const Library& library, std::string_view id) {
    for (const ComponentType& type : library.types)
        if (type.id == id) return &type;
    return nullptr;
}

const Mode* findMode(const ComponentType& type, std::string_view id) {
    for (const Mode& mode : type.modes)
        if (mode.facts.id == id) return &mode;
    return nullptr;
}

Problems validate(const Library& library) {
    Problems problems;
    if (!project::isWellFormedId(library.id))
        add(problems, Severity::error, "the library has no id that is one",
            "give it one, such as my-ships", "library", 1);
    for (Problem& problem : asProject(library)) {
        // A type may be taken several times, so it has no test date, and its clock is stated where
        // there is a number.
        problems.push_back(std::move(problem));
    }
    for (const ComponentType& type : library.types) {
        const std::string where = "type " + type.id;
        if (type.name.empty())
            add(problems, Severity::error, where + " has no name", "name it", where,
                type.line.number);
        if (type.revision.empty())
            add(problems, Severity::warning, where + " has no revision",
                "number it, and raise the number with every change", where, type.line.number);
        if (type.modes.empty())
            add(problems, Severity::warning, where + " has no failure mode",
                "say how it fails, or take it out", where, type.line.number);
        for (const Mode& mode : type.modes)
            judgeMode(problems, type, mode);
    }
    std::stable_sort(problems.begin(), problems.end(),
                     [](const Problem& a, const Problem& b) { return a.line < b.line; });
    return problems;
}

std::string trustOf(const project::SourceNote& source) {
    if (source.tag == "seen" || source.tag == "derived") return {};
    if (source.tag == "from memory") return "from memory: to be checked against the source";
    if (source.tag.empty()) return "nothing says where it comes from";
    return source.tag;
}

} // namespace cutwater::library
