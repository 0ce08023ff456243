// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/judge.h"

#include <algorithm>
#include <utility>

namespace cutwater::project {

Problems validate(const Project& project) {
    Judge judge(project);
    judgeProject(judge);
    judgePlant(judge);
    judgeTrees(judge);
    judgeHistory(judge);
    judgeWorksheet(judge);
    // Stable: what has no line stays in the order of the rules, before the rest.
    std::stable_sort(judge.problems.begin(), judge.problems.end(),
                     [](const Problem& a, const Problem& b) { return a.line < b.line; });
    return std::move(judge.problems);
}

} // namespace cutwater::project
