// SPDX-License-Identifier: GPL-3.0-or-later
// Folds: which gates show their inputs. A large tree starts folded, or nobody could read it.
#pragma once

#include "app/editor/diagram/tree.h"
#include "app/editor/selection/selection.h"

#include <set>

namespace cutwater::editor {

using Folds = std::set<project::Id>; // gates that hide their inputs

// A tree that nobody folded yet shows about this many boxes; more than kMostVisible are never laid
// out at once.
inline constexpr std::size_t kFirstVisible = 90;
inline constexpr std::size_t kMostVisible = 2500;

// Opens gates level by level from the top until `most` boxes are shown; those in `folds` stay
// folded. What lies above the spots in `open` is opened first, whatever it takes up to
// kMostVisible. Where the room ends, a gate is folded with all gates below it, so that unfolding
// goes on level by level.
Folds settleFolds(const Tree& tree, const Folds& folds, const std::vector<Spot>& open,
                  std::size_t most);

// The folds without those that hide one of the spots.
Folds revealed(const Tree& tree, Folds folds, const std::vector<Spot>& spots);

// Whether a folded gate hides the spot. False where the tree does not have it.
bool isHidden(const Tree& tree, const Folds& folds, const Spot& spot);

// All gates below this one, itself included, that have inputs and are drawn there.
std::vector<project::Id> gatesBelow(const Tree& tree, const project::Id& gate);

} // namespace cutwater::editor
