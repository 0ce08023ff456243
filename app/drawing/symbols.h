// SPDX-License-Identifier: GPL-3.0-or-later
// The distinctive shapes of IEC 61025 / IEEE 91 for gates and events, drawn by us.
#pragma once

#include "app/drawing/picture.h"
#include "models/project/tree.h"

#include <string>
#include <vector>

namespace cutwater::drawing {

enum class SymbolKind {
    andGate,
    orGate,
    vote,
    exactlyOne,
    notGate,
    inhibit,
    priorityAnd,
    basic,
    undeveloped,
    house,
    conditioning,
    transferIn,
    transferOut, // the small triangle at the side
};

SymbolKind symbolOf(project::GateKind kind);
SymbolKind symbolOf(project::EventKind kind);

// What the symbol is called: "and gate", "basic event".
std::string nameOf(SymbolKind kind);
// What it means, for the legend: "and: all inputs occur".
std::string legendOf(SymbolKind kind);

// The oval of a condition reaches this share of the box' width to each side of its middle.
inline constexpr double kOvalReach = 0.62;

struct SymbolLook {
    double lineWidth = 0.9;
    Ink line;
    bool filled = true;
};

// The symbol inside `box`. Its output is at the middle of the upper edge, its input at the middle
// of the lower edge.
std::vector<Path> symbolPaths(SymbolKind kind, const Box& box, const SymbolLook& look);

} // namespace cutwater::drawing
