// SPDX-License-Identifier: GPL-3.0-or-later
// Integrals of several functions at once over a period that is cut where they jump. Each piece: the
// 15-point Gauss-Kronrod rule (Piessens and others, QUADPACK, 1983; from memory), halved until the
// 7-point Gauss rule inside it agrees.
#pragma once

#include <cstddef>
#include <functional>
#include <span>
#include <stop_token>
#include <vector>

namespace cutwater::reliability {

// Writes the functions' values at x, all of one size. x is never the end of a piece.
using Integrand = std::function<void(double x, std::span<double> values)>;

struct IntegralWish {
    std::size_t controlled = 1; // the first so many functions decide about halving
    double relative = 1e-10;    // of each piece, and a thousandth of that of all before it
    int halvings = 12;          // at most, of each piece
    std::stop_token stop{};     // asked at every piece
    std::function<void(double)> progress{}; // 0..1
    // Called after each finished piece with its end and the integrals so far.
    std::function<void(double end, std::span<const double> soFar)> piece{};
};

struct Integral {
    std::vector<double> values; // one for each function
    std::vector<double> errors; // estimates, not bounds
    bool stopped = false;
};

// `cuts` ascending, at least two: the ends of the period and the jumps between them.
Integral integrate(std::span<const double> cuts, std::size_t functions, const Integrand& integrand,
                   const IntegralWish& wish = {});

} // namespace cutwater::reliability
