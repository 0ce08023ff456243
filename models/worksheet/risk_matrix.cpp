// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/risk_matrix.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <string>

namespace cutwater::worksheet {

namespace {

using project::RiskBand;
using project::RiskLevel;
using project::RiskMatrix;

RiskLevel level(int index, const char* word, const char* meaning, double value) {
    RiskLevel level;
    level.index = index;
    level.word = word;
    level.meaning = meaning;
    level.value = value;
    return level;
}

bool sameWord(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
        return std::tolower(static_cast<unsigned char>(x)) ==
               std::tolower(static_cast<unsigned char>(y));
    });
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

} // namespace

RiskMatrix imoMatrix() {
    RiskMatrix matrix;
    matrix.name = "IMO Formal Safety Assessment";
    // Meanings in our own words.
    matrix.frequencies = {
        level(1, "Extremely remote", "once in the life of a fleet of thousands of ships", 1e-5),
        level(2, "", "", 1e-4),
        level(3, "Remote", "once a year in a fleet of 1000 ships", 1e-3),
        level(4, "", "", 1e-2),
        level(5, "Reasonably probable", "once a year in a fleet of ten ships", 0.1),
        level(6, "", "", 1),
        level(7, "Frequent", "about once a month on one ship", 10),
    };
    matrix.severities = {
        level(1, "Minor", "slight injuries, local damage to equipment", 0.01),
        level(2, "Significant", "several slight or a grave injury, damage to the ship", 0.1),
        level(3, "Severe", "a death or several grave injuries, severe damage", 1),
        level(4, "Catastrophic", "several deaths, loss of the ship", 10),
    };
    matrix.source = {"IMO MSC-MEPC.2/Circ.12/Rev.2",
                     "9 April 2018",
                     "appendix 4",
                     "seen",
                     "indices, words and values; the meanings are put in our own words",
                     {}};
    return matrix;
}

RiskMatrix matrixOf(const project::Project& project) {
    if (project.worksheet.matrix.empty()) return imoMatrix();
    RiskMatrix matrix = project.worksheet.matrix;
    const auto byIndex = [](const RiskLevel& a, const RiskLevel& b) {
        return a.index.value_or(0) < b.index.value_or(0);
    };
    std::stable_sort(matrix.frequencies.begin(), matrix.frequencies.end(), byIndex);
    std::stable_sort(matrix.severities.begin(), matrix.severities.end(), byIndex);
    return matrix;
}

std::optional<Placed> indexOf(const std::vector<RiskLevel>& levels, double value) {
    if (!(value > 0) || std::isinf(value)) return {};
    std::vector<std::pair<double, int>> steps; // log10 of the value, index; ascending
    for (const RiskLevel& one : levels)
        if (one.index && one.value && *one.value > 0)
            steps.emplace_back(std::log10(*one.value), *one.index);
    if (steps.empty()) return {};
    const double at = std::log10(value);
    // Rounding of log10 must not push a value on the border down.
    constexpr double kBorder = 1e-12;
    std::size_t best = 0;
    for (std::size_t i = 1; i < steps.size(); ++i)
        if (std::abs(steps[i].first - at) <= std::abs(steps[best].first - at) + kBorder) best = i;
    const double half = steps.size() < 2 ? 0.5
                        : best == 0      ? (steps[1].first - steps[0].first) / 2
                                         : (steps[best].first - steps[best - 1].first) / 2;
    const double off = at - steps[best].first;
    const bool beyond =
        (best + 1 == steps.size() && off > half + kBorder) || (best == 0 && -off > half + kBorder);
    return Placed{steps[best].second, beyond};
}

std::optional<int> severityIndex(const RiskMatrix& matrix, std::string_view severity) {
    const std::string_view wanted = trimmed(severity);
    if (wanted.empty()) return {};
    for (const RiskLevel& one : matrix.severities)
        if (one.index && !one.word.empty() && sameWord(one.word, wanted)) return one.index;
    for (const RiskLevel& one : matrix.severities)
        if (one.index && std::to_string(*one.index) == wanted) return one.index;
    return {};
}

const RiskLevel* levelOf(const std::vector<RiskLevel>& levels, int index) {
    for (const RiskLevel& one : levels)
        if (one.index == index) return &one;
    return nullptr;
}

const RiskBand* bandOf(const RiskMatrix& matrix, int riskIndex) {
    const RiskBand* found = nullptr;
    for (const RiskBand& band : matrix.bands)
        if (band.from && *band.from <= riskIndex && (!found || *band.from > *found->from))
            found = &band;
    return found;
}

} // namespace cutwater::worksheet
