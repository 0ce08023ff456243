// SPDX-License-Identifier: GPL-3.0-or-later
// The project's own rating scales and risk matrix.
#pragma once

#include "models/project/edits/changed.h"

#include <vector>

namespace cutwater::project::edits {

enum class Scale { severity, occurrence, detection };

// Empty: the standard scale counts again. Refused: a rating outside 1..10 or twice; a limit that is
// not above 0. Kept in ascending order.
Result setScale(const Project& project, Scale scale, std::vector<RatingLevel> levels);

// Levels and bands are kept in ascending order. An empty matrix: the standard one counts again.
// `standard` is the one that counts where the project has none. Where the word of a severity level
// becomes another, the failure modes and top events with that word follow.
// Refused: an axis without levels; an index or a word twice; a value that is not above 0, or does
// not grow with the index.
Result setMatrix(const Project& project, RiskMatrix matrix, const RiskMatrix& standard);

} // namespace cutwater::project::edits
