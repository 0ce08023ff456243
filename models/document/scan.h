// SPDX-License-Identifier: GPL-3.0-or-later
// From a text to its elements and attributes, and a look whether it is XML of the plain kind that
// we write: strict, says where the fault is, and never recurses.
#pragma once

#include "models/document/markup.h"
#include "models/project/problem.h"

#include <cstddef>
#include <optional>
#include <string_view>

namespace cutwater::document {

// Deeper nesting than any of ours (7) or of a newer version's is refused, as are more elements and
// attributes than memory should be spent on.
inline constexpr std::size_t kMaxDepth = 100;
inline constexpr std::size_t kMaxAttributes = 64;
inline constexpr std::size_t kMaxPieces = 20'000'000;

// Fills `markup` from its text, that of a whole file without a byte-order mark; the first fault in
// its form.
std::optional<project::Problem> scanDocument(Markup& markup);

// The offset behind the element whose '<' stands at `start`; npos where it is not well formed.
std::size_t elementEnd(std::string_view text, std::size_t start);

} // namespace cutwater::document
