// SPDX-License-Identifier: GPL-3.0-or-later
// A look through the text before it is parsed: is it XML of the plain kind that we write? The
// parser that follows is quick but lenient; this one is strict, says where the fault is, and never
// recurses.
#pragma once

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

// The first fault in the form of a whole file's text (without a byte-order mark).
std::optional<project::Problem> scanDocument(std::string_view text);

// The offset behind the element whose '<' stands at `start`; npos where it is not well formed.
std::size_t elementEnd(std::string_view text, std::size_t start);

} // namespace cutwater::document
