// SPDX-License-Identifier: GPL-3.0-or-later
// Inks and line widths. Every fill is light enough to vanish in grey print: shape, line and words
// carry the meaning, colour only pleases.
#pragma once

#include "app/drawing/picture.h"

namespace cutwater::drawing {

inline constexpr Ink kBlack{24, 30, 38};
inline constexpr Ink kSoft{84, 92, 102}; // captions: 7 : 1 against white
inline constexpr Ink kWhite{255, 255, 255};
inline constexpr Ink kGateFill{222, 234, 240};
inline constexpr Ink kEventFill{250, 241, 219};
inline constexpr Ink kUndevelopedFill{244, 231, 236};
inline constexpr Ink kHouseFill{228, 240, 226};
inline constexpr Ink kConditionFill{236, 232, 246};
inline constexpr Ink kMarked{150, 24, 24};

inline constexpr double kThin = 0.6;   // points: frames of texts, cells
inline constexpr double kLine = 0.9;   // symbols and connections
inline constexpr double kHeavy = 2.2;  // what is marked
inline constexpr double kBorder = 1.3; // of the sheet

} // namespace cutwater::drawing
