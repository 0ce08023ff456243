// SPDX-License-Identifier: GPL-3.0-or-later
// The tree that somebody drew for the same loss of supply, set against the traced one.
#pragma once

#include "plugins/redundancy/traced.h"

namespace cutwater::redundancy_plugin {

struct Difference {
    project::Id gate;       // the drawn tree
    bool chosen = false;    // by the user; otherwise the most similar gate
    bool comparable = true; // both lists of sets are complete, the drawn tree is coherent
    bool agree = false;
    std::size_t common = 0;          // sets that both have
    std::vector<ModeSet> onlyTraced; // sets that the drawn tree lacks
    // Sets that the traced tree lacks; ids of modes, or of events that are no mode.
    std::vector<std::set<project::Id>> onlyDrawn;
};

// The gate whose events are most like the modes of the trace, or nothing where none shares half of
// them.
std::optional<project::Id> mostSimilarGate(const project::Project& project,
                                           const project::Index& index, const Traced& traced);

// Problem: no such gate.
sdk::Answer<Difference> compareWithDrawn(const project::Project& project,
                                         const project::Index& index, const Traced& traced,
                                         const project::Id& gate, const sdk::Job& job);

} // namespace cutwater::redundancy_plugin
