// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/reliability/sweep.h"
#include "plugins/sweep/figure.h"

namespace cutwater::sweep_plugin {

struct Swept {
    const sdk::tree::Target& target;
    const Varied& varied;
    Measure measure;
    const reliability::SweepFigures& figures;
    double now = 0; // the figure at the present value
    std::optional<double> limit;
    bool largest = true;
};

sdk::Table bestTable(const Varied& varied, Measure measure);
sdk::Table pointTable(const Varied& varied, Measure measure);
// Rows of one top in both, its curve, and what is to be said about its best value.
void addSwept(sdk::Result& result, const Swept& swept);

} // namespace cutwater::sweep_plugin
