// SPDX-License-Identifier: GPL-3.0-or-later
// Failure modes and top events in the risk matrix, by their computed frequency and their severity.
#pragma once

#include "models/worksheet/risk_matrix.h"
#include "models/worksheet/rows.h"
#include "models/worksheet/top_figures.h"

#include <functional>
#include <set>
#include <string>
#include <vector>

namespace cutwater::worksheet {

struct RiskItem {
    bool isTop = false;
    std::size_t position = 0; // in project.modes or project.tops
    project::Id id;
    std::string name;
    std::string severity;             // as written
    std::optional<int> severityIndex; // none: the word is not in the matrix
    std::optional<double> perYear;
    std::string how; // of the frequency, or why there is none
    std::optional<Placed> frequencyIndex;
    std::optional<int> riskIndex; // none: it cannot be placed
    std::string band;
};

struct RiskPicture {
    project::RiskMatrix matrix;
    std::vector<RiskItem> items; // top events first, then modes, each in the order of the project
    bool cancelled = false;
    std::set<std::size_t> groups; // common-cause groups that were counted
    // Those that can be placed at these indices.
    std::vector<const RiskItem*> at(int frequency, int severity) const;
};

struct RiskWish {
    bool modes = true, tops = true;
    TopLimits limits;
    std::function<void(double, const std::string&)> progress; // may be empty
};

RiskPicture placeRisks(const project::Project& project, const project::Index& index,
                       const RiskWish& wish);

} // namespace cutwater::worksheet
