// SPDX-License-Identifier: GPL-3.0-or-later
// Which numbers are varied together, and between which values.
#pragma once

#include "models/reliability/knob.h"
#include "plugins/sdk/interfaces.h"

#include <string>
#include <vector>

namespace cutwater::sweep_plugin {

struct Varied {
    std::vector<reliability::Knob> knobs; // all of one dimension
    std::vector<double> factors;          // of each one's unit
    std::string unit;                     // "h", "/h", "/start" or ""
    double from = 0, to = 0;              // in that unit
    double point = 0;                     // what the first of them is now
    bool logarithmic = false;

    // Of the ids, as the user named them: "every-month", "a@interval and b@interval".
    std::string words() const;
    bool isInterval() const;
    // Sets all of them.
    void turn(reliability::WhatIf& whatIf, double value) const;
};

// `names`: ids of knobs with commas between them. `from` and `to` may carry a unit; without them a
// tenth and ten times the present value. Problems: an unknown name (the nearest one is proposed),
// numbers of different kinds, a value out of range, no span.
project::Outcome<Varied> variedOf(const project::Project& project,
                                  const std::vector<reliability::Knob>& known,
                                  const std::optional<std::string>& names,
                                  const std::optional<std::string>& from,
                                  const std::optional<std::string>& to, const std::string& scale);

} // namespace cutwater::sweep_plugin
