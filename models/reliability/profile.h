// SPDX-License-Identifier: GPL-3.0-or-later
// One event over time: whether it is there at the time t, and how often it comes. Hours throughout;
// at t = 0 everything works and every test interval begins. Formulas: docs/methods/over-time.md.
#pragma once

#include <vector>

namespace cutwater::reliability {

// Where something jumps (a test, the end of a mission), which side of the jump is meant.
enum class Side { before, after };

struct EventMoment {
    double unavailability = 0; // q(t), 0..1
    double frequency = 0;      // w(t), failures per hour, not on condition that it works
    double restoration = 0;    // v(t), per hour, continuous repair only; not what a test mends
};

struct EventProfile {
    enum class Kind {
        constant,   // q = probability; never fails nor recovers
        failing,    // constant rate, not repaired: q = 1 - exp(-rate t)
        repairable, // constant rate, seen and repaired at once
        tested,     // dormant, found by tests at firstTest + k interval
        weibull,    // ageing, not repaired
        initiating, // comes `rate` times per hour and is over at once: q = 0, w = rate
    };
    Kind kind = Kind::constant;
    double probability = 0;
    double rate = 0;         // per hour, >= 0
    double repair = 0;       // mean, exponential; tested: 0 means at once
    double interval = 0;     // from the start of one test to the start of the next, > testDuration
    double firstTest = 0;    // >= 0
    double testDuration = 0; // out of service from the start of each test
    double coverage = 1;     // share of the rate that tests find
    double shape = 1, scale = 1, location = 0;
    // Begins as new each time this many hours are over: a mission that is followed by the next, or
    // an overhaul (tested: of what the tests do not find). 0: never.
    double renewal = 0;
    bool steady = false; // repairable: in its long-run state from the start

    EventMoment at(double time, Side side = Side::after) const;
    // Chance of at least one failure in (0, t]. Of a constant: its probability.
    double unreliability(double time) const;
    // Times in (0, end) where q or w jumps or has a kink, ascending. May be many: see
    // breakpointCount().
    std::vector<double> breakpoints(double end) const;
    // An upper bound of their number.
    double breakpointCount(double end) const;
    // q never falls: once failed it stays failed.
    bool neverRecovers() const;
    // How long ago the latest test ended or the mission began; negative: a test is going on.
    double sinceTest(double time, Side side) const;
};

} // namespace cutwater::reliability
