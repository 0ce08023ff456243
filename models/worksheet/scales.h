// SPDX-License-Identifier: GPL-3.0-or-later
// Rating scales of the worksheet: the project's own, or a standard set of our own. From 1 (best) to
// 10 (worst), as IEC 60812 has them; the words and limits of the standard set are no part of it.
#pragma once

#include "models/project/project.h"

#include <optional>
#include <vector>

namespace cutwater::worksheet {

struct Scales {
    std::vector<project::RatingLevel> severity, occurrence, detection; // ascending by rating
    bool ownSeverity = false, ownOccurrence = false, ownDetection = false;
};

Scales scalesOf(const project::Project& project);

// The step that holds for a rating: itself, or the nearest one below it where the scale leaves it
// out. Null where the rating is below the lowest step.
const project::RatingLevel* stepOf(const std::vector<project::RatingLevel>& scale, int rating);

// The rating whose limit is the lowest one at or above `perYear`; the last step where it is above
// all of them. None where no step has a limit.
std::optional<int> occurrenceRating(const std::vector<project::RatingLevel>& scale, double perYear);

// S x O x D, 1..1000; none where one of them is missing. An ordering of words, not a measure: see
// kRpnWarning.
std::optional<int> riskPriorityNumber(const std::optional<int>& severity,
                                      const std::optional<int>& occurrence,
                                      const std::optional<int>& detection);

inline constexpr const char* kRpnWarning =
    "The risk priority number multiplies ranks, and ranks are names in an order, not amounts: of "
    "the numbers from 1 to 1000 only 120 can occur, twice the number is not twice the risk, and "
    "9 x 2 x 5 equals 3 x 6 x 5 although one kills and the other annoys. Look at the severity "
    "first; a limit on the number decides nothing.";

} // namespace cutwater::worksheet
