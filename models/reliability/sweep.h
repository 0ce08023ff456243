// SPDX-License-Identifier: GPL-3.0-or-later
// A figure as a function of one number: its course, its lowest point, and how far the number may go
// under a limit.
#pragma once

#include <functional>
#include <optional>
#include <vector>

namespace cutwater::reliability {

struct SweepPoint {
    double x = 0, y = 0;
};

struct SweepWish {
    double from = 0, to = 1;     // from < to
    std::size_t steps = 25;      // points on the way, both ends included; at least 2
    bool logarithmic = false;    // equal ratios; from > 0
    std::optional<double> limit; // the figure must not be above this
    bool largest = true;         // of the numbers within the limit the largest is wanted
};

struct SweepFigures {
    std::vector<SweepPoint> points; // ascending in x
    // The lowest point: of the grid, then closed in between its neighbours (golden section; of
    // several dips the deepest that the grid has seen).
    SweepPoint lowest;
    bool lowestAtEnd = false; // at one of the ends: it may fall further beyond
    // The wanted number within the limit, closed in by halving between the grid points; nothing
    // where no grid point is within it, or without a limit.
    std::optional<SweepPoint> within;
    bool withinAtEnd = false;
};

// `figure` answers nothing where it was stopped: then the sweep has no answer either.
std::optional<SweepFigures> sweep(const SweepWish& wish,
                                  const std::function<std::optional<double>(double)>& figure);

} // namespace cutwater::reliability
