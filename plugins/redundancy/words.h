// SPDX-License-Identifier: GPL-3.0-or-later
// Parts, places and sets in words that a watchkeeper can take to the panel.
#pragma once

#include "plugins/redundancy/traced.h"

namespace cutwater::redundancy_plugin {

std::string tagOf(const project::Component& component); // its id where it has no tag
// "F7 output fuse 24 V: open"
std::string inWords(const project::Project& project, const project::Index& index, std::size_t mode);
// "the feed RM-1 to CB-1, the return CB-1 to PS-1 and 2 more": the traced connections of a part.
std::string places(const project::Project& project, const project::Index& index,
                   const reliability::SupplyTrace& trace, const project::Id& part);
std::string listOf(const project::Project& project, const ModeSet& set);
// The smallest stated rating on a leg, among its connections in the load's own medium.
std::string capacityOf(const project::Project& project, const reliability::SupplyTrace& trace,
                       const reliability::SupplyLeg& leg);
// Ids of events of the trees that are one of these modes, for the highlighter.
std::vector<std::string> nodesOf(const project::Project& project, const ModeSet& modes);

} // namespace cutwater::redundancy_plugin
