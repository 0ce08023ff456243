// SPDX-License-Identifier: GPL-3.0-or-later
// A series of a result as a small SVG plot for paper: black on white, readable without colour.
#pragma once

#include "plugins/sdk/result.h"

#include <string>

namespace cutwater::paper_report {

inline constexpr double kPlotWidth = 480; // points

struct PlotPicture {
    std::string svg; // empty where there is nothing to draw
    double height = 0;
    std::string remark; // what was left out; empty: nothing
};

// Bars lie, so that their labels can be read; of more than kMostBars the first are drawn.
PlotPicture plotOf(const sdk::Series& series);

inline constexpr std::size_t kMostBars = 40;

} // namespace cutwater::paper_report
