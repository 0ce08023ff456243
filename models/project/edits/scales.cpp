// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/scales.h"

#include <algorithm>
#include <map>
#include <string>

namespace cutwater::project::edits {

namespace {

// What validate() says about a project that has nothing but this worksheet: one rule, one place.
Problems errorsOf(const Worksheet& worksheet) {
    Project small;
    small.worksheet = worksheet;
    Problems problems = validate(small);
    std::erase_if(problems, [](const Problem& each) { return each.severity != Severity::error; });
    return problems;
}

template <typename Levels, typename Key>
void sortBy(Levels& levels, Key key) {
    std::stable_sort(levels.begin(), levels.end(),
                     [&](const auto& a, const auto& b) { return key(a) < key(b); });
}

} // namespace

Result setScale(const Project& project, Scale scale, std::vector<RatingLevel> levels) {
    sortBy(levels, [](const RatingLevel& each) { return each.rating; });
    Worksheet only;
    (scale == Scale::severity     ? only.severityScale
     : scale == Scale::occurrence ? only.occurrenceScale
                                  : only.detectionScale) = levels;
    if (Problems problems = errorsOf(only); !problems.empty()) return problems;
    Changed changed{project, "Change the severity scale", {}, {}};
    Worksheet& worksheet = changed.project.worksheet;
    switch (scale) {
    case Scale::severity: worksheet.severityScale = std::move(levels); break;
    case Scale::occurrence:
        changed.doing = "Change the occurrence scale";
        worksheet.occurrenceScale = std::move(levels);
        break;
    case Scale::detection:
        changed.doing = "Change the detection scale";
        worksheet.detectionScale = std::move(levels);
        break;
    }
    return changed;
}

Result setMatrix(const Project& project, RiskMatrix matrix, const RiskMatrix& standard) {
    sortBy(matrix.frequencies, [](const RiskLevel& each) { return each.index; });
    sortBy(matrix.severities, [](const RiskLevel& each) { return each.index; });
    sortBy(matrix.bands, [](const RiskBand& each) { return each.from; });
    Worksheet only;
    only.matrix = matrix;
    if (Problems problems = errorsOf(only); !problems.empty()) return problems;
    Changed changed{project, "Change the risk matrix", {}, {}};
    std::map<std::string, std::string> words;
    const RiskMatrix& own = project.worksheet.matrix;
    for (const RiskLevel& old : (own.empty() ? standard : own).severities)
        for (const RiskLevel& now : (matrix.empty() ? standard : matrix).severities)
            if (old.index == now.index && old.word != now.word && !old.word.empty())
                words[old.word] = now.word;
    const auto follow = [&](std::string& severity) {
        if (const auto found = words.find(severity); found != words.end()) severity = found->second;
    };
    for (FailureMode& mode : changed.project.modes)
        follow(mode.severity);
    for (TopEvent& top : changed.project.tops)
        follow(top.severity);
    changed.project.worksheet.matrix = std::move(matrix);
    return changed;
}

} // namespace cutwater::project::edits
