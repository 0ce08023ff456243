// SPDX-License-Identifier: GPL-3.0-or-later
// What may be asked of the simulation.
#pragma once

#include "models/reliability/uncertainty.h"
#include "plugins/sdk/interfaces.h"

namespace cutwater::uncertainty_plugin {

struct Wish {
    reliability::UncertaintyWish drawing;
    bool commonCauses = false;
};

std::vector<sdk::Parameter> wishParameters();
// Rounds the samples up to whole batches where they are stratified.
Wish wishOf(const sdk::Values& values);

} // namespace cutwater::uncertainty_plugin
