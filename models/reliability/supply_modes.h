// SPDX-License-Identifier: GPL-3.0-or-later
// Which failure modes of a part break a supply path that runs through it. The project does not say
// so; the rule reads the mode's name, and the user's own lists go before the rule.
#pragma once

#include "models/project/plant.h"

#include <set>
#include <string>

namespace cutwater::reliability {

enum class PartRole {
    device, // the connection runs through it: fuse, diode, terminal, valve
    node,   // connections begin or end at it: board, bus, unit, tank
};

struct PathRule {
    std::set<project::Id> breaks, passes; // modes, as the user decided
};

struct ModeVerdict {
    bool breaks = false;
    std::string why; // "open: no current", "its name says nothing about the path"
};

// Volts in the name of the medium: an open circuit breaks, a closed one passes. Otherwise something
// flows: there it is the other way round.
bool isElectrical(const std::string& medium);

// The words are looked for in the name of the mode, small or capital.
//   electrical  breaks: open, loose, no output, dead, blown, does not close ...; a short breaks at
//   a
//               node and passes in a device
//   flow        breaks: closed, shut, choked, plugged, empty, stops, does not open, does not start
//               ..., and an open coil or winding
// Whatever is not recognised passes.
ModeVerdict verdictOf(const project::FailureMode& mode, PartRole role, bool electrical,
                      const PathRule& rule);

} // namespace cutwater::reliability
