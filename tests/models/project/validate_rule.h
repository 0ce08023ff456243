// SPDX-License-Identifier: GPL-3.0-or-later
// A rule of the validation, as its tests see it: how a sound project is spoilt, and what is then
// found.
#pragma once

#include "tests/models/project/sound_project.h"

#include <functional>
#include <limits>
#include <ostream>
#include <vector>

namespace cutwater::project {

struct Rule {
    const char* name;
    std::function<void(Project&)> spoil;
    Severity severity;
    int line;
    const char* what;
    const char* remedy;
};

inline void PrintTo(const Rule& rule, std::ostream* out) {
    *out << rule.name;
}

inline constexpr auto kError = Severity::error;
inline constexpr auto kWarning = Severity::warning;

// The failure model, and a number, that most rules about them spoil.
inline FailureModel& tested(Project& p) {
    return p.modes[0].model;
}
// Event e2's own model replaced by one of the kind and clock given.
inline FailureModel& modelOfE2(Project& p, ModelKind kind, Clock clock) {
    FailureModel& model = p.events[1].model;
    model = {};
    model.kind = kind;
    model.clock = clock;
    model.line.number = 450;
    return model;
}
inline Quantity& probability(Project& p) {
    return p.events[1].model.numbers[0].quantity;
}
inline void spread(Project& p, Distribution distribution) {
    probability(p).uncertainty = distribution;
}

inline const double kNan = std::numeric_limits<double>::quiet_NaN();
inline const double kInfinity = std::numeric_limits<double>::infinity();

// The rules about failure models and their numbers: validate_model_rules.cpp.
std::vector<Rule> modelRules();
// Shares, actions, scales and the risk matrix: validate_worksheet_rules.cpp.
std::vector<Rule> worksheetRules();

} // namespace cutwater::project
