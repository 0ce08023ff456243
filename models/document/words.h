// SPDX-License-Identifier: GPL-3.0-or-later
// The words of every enumeration in the file: to a word, from a word, and all of them for a remedy.
#pragma once

#include "models/project/project.h"

#include <optional>
#include <string_view>
#include <vector>

namespace cutwater::document {

// One overload pair for each enumeration; `what` is how a message calls it.
template <typename Enum>
struct Words;

template <typename Enum>
concept Worded = requires {
    Words<Enum>::what;
};

// Enumerations whose words come from a pair of functions; they start at 0.
template <typename Enum, std::optional<Enum> (*From)(std::string_view), int Count>
struct PlainWords {
    static std::string_view to(Enum value) { return project::word(value); }
    static std::optional<Enum> from(std::string_view word) { return From(word); }
    static std::vector<std::string_view> all() {
        std::vector<std::string_view> words;
        for (int i = 0; i < Count; ++i)
            words.push_back(project::word(static_cast<Enum>(i)));
        return words;
    }
};

template <>
struct Words<project::EventKind> : PlainWords<project::EventKind, project::eventKindFromWord, 4> {
    static constexpr const char* what = "kind of event";
};
template <>
struct Words<project::GateKind> : PlainWords<project::GateKind, project::gateKindFromWord, 7> {
    static constexpr const char* what = "kind of gate";
};
template <>
struct Words<project::SupplyPath>
    : PlainWords<project::SupplyPath, project::supplyPathFromWord, 2> {
    static constexpr const char* what = "path";
};
template <>
struct Words<project::CommonCauseKind>
    : PlainWords<project::CommonCauseKind, project::commonCauseKindFromWord, 4> {
    static constexpr const char* what = "kind of common cause";
};
template <>
struct Words<project::CauseStatus>
    : PlainWords<project::CauseStatus, project::causeStatusFromWord, 3> {
    static constexpr const char* what = "status";
};
template <>
struct Words<project::AssessmentState>
    : PlainWords<project::AssessmentState, project::assessmentStateFromWord, 3> {
    static constexpr const char* what = "state";
};

template <>
struct Words<project::ActionState>
    : PlainWords<project::ActionState, project::actionStateFromWord, 5> {
    static constexpr const char* what = "state";
};

template <>
struct Words<project::ModelKind> {
    static constexpr const char* what = "kind of failure model";
    static std::string_view to(project::ModelKind kind) { return project::facts(kind).word; }
    static std::optional<project::ModelKind> from(std::string_view word) {
        return project::modelFromWord(word);
    }
    static std::vector<std::string_view> all() {
        std::vector<std::string_view> words;
        for (const auto& model : project::allModels())
            words.push_back(model.word);
        return words;
    }
};

template <>
struct Words<project::Clock> {
    static constexpr const char* what = "clock";
    static std::string_view to(project::Clock clock) { return project::facts(clock).word; }
    static std::optional<project::Clock> from(std::string_view word) {
        return project::clockFromWord(word);
    }
    static std::vector<std::string_view> all() {
        std::vector<std::string_view> words;
        for (const auto& clock : project::allClocks())
            words.push_back(clock.word);
        return words;
    }
};

template <>
struct Words<project::Unit> {
    static constexpr const char* what = "unit";
    static std::string_view to(project::Unit unit) { return project::facts(unit).symbol; }
    static std::optional<project::Unit> from(std::string_view symbol) {
        // An empty unit is left out, not written.
        return symbol.empty() ? std::nullopt : project::unitFromSymbol(symbol);
    }
    static std::vector<std::string_view> all() {
        std::vector<std::string_view> words;
        for (const auto& unit : project::allUnits())
            if (!unit.symbol.empty()) words.push_back(unit.symbol);
        return words;
    }
};

} // namespace cutwater::document
