// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/coverage.h"

#include "models/worksheet/reach.h"
#include "models/worksheet/risk_matrix.h"

#include <algorithm>
#include <cctype>
#include <set>
#include <unordered_map>

namespace cutwater::worksheet {

std::string plainEffect(const std::string& text) {
    std::string plain;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (!std::isspace(byte))
            plain += static_cast<char>(std::tolower(byte));
        else if (!plain.empty() && plain.back() != ' ')
            plain += ' ';
    }
    while (!plain.empty() && (plain.back() == ' ' || plain.back() == '.'))
        plain.pop_back();
    return plain;
}

Coverage coverageOf(const project::Project& project, const project::Index& index) {
    Coverage coverage;
    const auto tops = topsOfModes(project, index);
    const project::RiskMatrix matrix = matrixOf(project);
    std::unordered_map<std::string, std::size_t> effectOf;
    for (std::size_t i = 0; i < project.modes.size(); ++i) {
        const project::FailureMode& mode = project.modes[i];
        if (tops[i].empty()) coverage.modesInNoTree.push_back(i);
        const std::string plain = plainEffect(mode.endEffect);
        if (plain.empty()) continue;
        const auto [found, isNew] = effectOf.try_emplace(plain, coverage.effects.size());
        if (isNew) coverage.effects.emplace_back().text = mode.endEffect;
        EndEffect& effect = coverage.effects[found->second];
        effect.modes.push_back(i);
        const auto severity = severityIndex(matrix, mode.severity);
        if (severity && (!effect.severityIndex || *severity > *effect.severityIndex)) {
            effect.severityIndex = severity;
            effect.severity = mode.severity;
        } else if (effect.severity.empty()) {
            effect.severity = mode.severity;
        }
    }
    for (std::size_t i = 0; i < project.events.size(); ++i) {
        const project::Event& event = project.events[i];
        const bool counts = event.kind == project::EventKind::basic ||
                            event.kind == project::EventKind::undeveloped;
        if (counts && event.mode.empty()) coverage.eventsInNoRow.push_back(i);
    }
    for (std::size_t top = 0; top < project.tops.size(); ++top) {
        const project::TopEvent& one = project.tops[top];
        std::set<std::size_t> answered;
        for (const std::string& effect : one.endEffects) {
            const auto found = effectOf.find(plainEffect(effect));
            if (found == effectOf.end())
                coverage.unknownEffects.emplace_back(top, effect);
            else
                answered.insert(found->second);
        }
        if (const auto found = effectOf.find(plainEffect(one.name)); found != effectOf.end())
            answered.insert(found->second);
        for (const std::size_t effect : answered)
            coverage.effects[effect].answeredBy.push_back(top);
    }
    for (EndEffect& effect : coverage.effects) {
        std::set<std::size_t> in;
        for (const std::size_t mode : effect.modes)
            in.insert(tops[mode].begin(), tops[mode].end());
        for (const std::size_t top : effect.answeredBy)
            in.erase(top);
        effect.foundIn.assign(in.begin(), in.end());
    }
    return coverage;
}

} // namespace cutwater::worksheet
