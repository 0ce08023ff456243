// SPDX-License-Identifier: GPL-3.0-or-later
// The risk matrix: frequency by severity, risk index RI = FI + SI. Standard: IMO Formal Safety
// Assessment, MSC-MEPC.2/Circ.12/Rev.2 (9 April 2018), appendix 4.
#pragma once

#include "models/project/project.h"

#include <optional>
#include <string_view>
#include <vector>

namespace cutwater::worksheet {

// The project's own where it has one, else IMO's; levels ascending by index.
project::RiskMatrix matrixOf(const project::Project& project);
// FI 1..7 (value: per ship-year, 10^(FI - 6); 2, 4 and 6 have no word in the source), SI 1..4
// (value: equivalent fatalities, 10^(SI - 3)). No bands: the guidelines give no limit of the index.
project::RiskMatrix imoMatrix();

struct Placed {
    int index = 0;
    bool beyond = false; // the number lies outside the scale by more than half a step
};

// The level whose value is nearest to `value` (> 0) on a logarithmic scale; of two as near, the
// higher. None where no level has a value, or `value` is not above 0.
std::optional<Placed> indexOf(const std::vector<project::RiskLevel>& levels, double value);

// The level with that word, small and capital letters alike, or with that index written as a
// number. None where there is none.
std::optional<int> severityIndex(const project::RiskMatrix& matrix, std::string_view severity);

const project::RiskLevel* levelOf(const std::vector<project::RiskLevel>& levels, int index);
// The band that begins at `riskIndex` or next below; null where there is none.
const project::RiskBand* bandOf(const project::RiskMatrix& matrix, int riskIndex);

} // namespace cutwater::worksheet
