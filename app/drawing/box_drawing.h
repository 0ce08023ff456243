// SPDX-License-Identifier: GPL-3.0-or-later
// One box of the tree: the text, the symbol under it, and what stands beside.
#pragma once

#include "app/drawing/labels.h"
#include "app/drawing/picture.h"
#include "app/drawing/symbols.h"

namespace cutwater::drawing {

// Sizes in units of the drawing before it is fitted to the paper.
inline constexpr double kStem = 8; // between text and symbol
inline constexpr double kSymbolHigh = 32, kSymbolWide = 38;
inline constexpr double kUnderText = 10; // a line of text under an event's symbol
inline constexpr double kGateFoot = 2;   // line below a gate's symbol

// Height of a box whose text part is `text` high. Gates are lower: lines start at their foot. A
// folded gate takes as much as an event.
double boxHeight(double text, bool isGate);

struct BoxWords {
    Label label;
    std::string inside;  // the symbol: "2/3", "true", a sheet number
    std::string under;   // under the symbol of a leaf
    std::string atLeft;  // of a gate's symbol
    std::string usedOn;  // at the small triangle; empty: no triangle
    std::string folded;  // of a gate whose inputs are not shown: what they are, "34 events"
    bool dashed = false; // the text is about a thing that is drawn elsewhere
    bool marked = false;
    bool rightTaken = false; // by the line to a condition
    bool hasFoot = false;    // lines go on below
};

// `at` is the middle of the upper edge; `text` the height of the text part. In units of the
// drawing.
std::vector<Mark> drawBox(SymbolKind symbol, const BoxWords& words, Spot at, double text,
                          const Lettering& lettering);

// From units of the drawing to the paper. Lines keep their width.
void place(std::vector<Mark>& marks, double scale, Spot origin);

} // namespace cutwater::drawing
