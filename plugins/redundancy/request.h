// SPDX-License-Identifier: GPL-3.0-or-later
// What may be asked: which load, and how the drawing is to be read.
#pragma once

#include "models/reliability/supply.h"
#include "plugins/sdk/interfaces.h"

namespace cutwater::redundancy_plugin {

std::vector<sdk::Parameter> requestParameters(const project::Project* project);
// Problems: ids that the project does not have.
project::Outcome<reliability::SupplyWish>
wishOf(const project::Project& project, const project::Index& index, const sdk::Values& values);
// The named load, or all that are drawn with several ways of supply. Problems: there is none.
project::Outcome<std::vector<reliability::SupplyLoad>>
loadsOf(const project::Project& project, const reliability::SupplyNetwork& network,
        const std::optional<std::string>& wish);

} // namespace cutwater::redundancy_plugin
