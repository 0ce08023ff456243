// SPDX-License-Identifier: GPL-3.0-or-later
// Nodes taken away, moved, put in another order; gates put in between and taken out again.
#pragma once

#include "models/project/edits/changed.h"
#include "models/project/edits/place.h"

#include <vector>

namespace cutwater::project::edits {

// Takes these uses away. A node that nothing uses any more is deleted, with what is then unused
// below it, and with its place in common-cause groups and assessments. Refused where entries of the
// log speak of a top event.
Result removeUses(const Project& project, const std::vector<Use>& uses);

// Takes the uses from where they are to the place, in the order given. The row of the place counts
// before anything is moved. Refused where a node would stand below itself or twice below one gate.
Result moveUses(const Project& project, const std::vector<Use>& uses, const Place& place);

// Moves one use among its siblings by `steps` (negative: up). Refused at either end.
Result reorder(const Project& project, const Use& use, int steps);

// A new gate takes the place of the uses, which become its inputs; all have one parent, or it is
// one top event.
Result insertGateAbove(const Project& project, const std::vector<Use>& uses, GateKind kind,
                       const std::string& name);

// The gate goes; its inputs (and its condition) take its place wherever it was used. Refused where
// it is a top event and has not exactly one input.
Result dissolveGate(const Project& project, const Id& gate);

} // namespace cutwater::project::edits
