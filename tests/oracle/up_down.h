// SPDX-License-Identifier: GPL-3.0-or-later
// Lives of parts drawn by chance, failure by failure and repair by repair: an oracle for everything
// that is computed over time. It shares no formula with the models; it only knows what happens to a
// part.
#pragma once

#include <cstdint>
#include <functional>
#include <random>
#include <vector>

namespace cutwater::oracle {

struct Part {
    enum class Kind { failing, repairable, tested, weibull, initiating };
    Kind kind = Kind::failing;
    double rate = 0, repair = 0;                          // per hour; mean hours
    double interval = 0, firstTest = 0, testDuration = 0; // of tests
    double coverage = 1;                                  // share of the failures that tests find
    double shape = 1, scale = 1;                          // Weibull
    double renewal = 0;                                   // begins as new each so many hours
};

// A mean with its standard error.
struct Counted {
    double mean = 0, error = 0;
};

struct Lives {
    Counted number;      // how often the top came in (0, end], by a failure (not by a test outage)
    Counted share;       // of the time that it was there
    Counted atLeastOnce; // it came or was there
    Counted atEnd;       // it was there at the end
};

// `top` answers for the states of all parts (true: down). An initiating part is down for an
// instant.
Lives liveThrough(const std::vector<Part>& parts,
                  const std::function<bool(const std::vector<char>&)>& top, double end,
                  std::size_t histories, std::uint64_t seed);

} // namespace cutwater::oracle
