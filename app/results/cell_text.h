// SPDX-License-Identifier: GPL-3.0-or-later
// Cells and columns in the words that the shell and the editor show alike.
#pragma once

#include "plugins/sdk/result.h"

#include <string>

namespace cutwater::results {

bool isNumeric(const sdk::Column& column);

// One line. A probability has four digits ("1.250e-03"), near certainty what is left to it
// ("1-2.000e-05"); other numbers six digits, percentages three.
std::string cellText(const sdk::Cell& cell, const sdk::Column& column);

// "Probability", or "Share [%]" where there is a unit.
std::string columnTitle(const sdk::Column& column);

// The points of a curve or bars as rows, the labels first where there are any.
sdk::Table tableOf(const sdk::Series& series);

} // namespace cutwater::results
