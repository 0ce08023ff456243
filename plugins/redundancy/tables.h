// SPDX-License-Identifier: GPL-3.0-or-later
// The traced supplies as tables, in words that a watchkeeper can take to the panel.
#pragma once

#include "plugins/redundancy/drawn.h"

namespace cutwater::redundancy_plugin {

struct Tables {
    sdk::Table loads, singles, pairs, drawn, paths, modes;
    std::vector<sdk::Mark> marks;
    std::vector<sdk::Note> notes;
};
Tables emptyTables();

// `one` is finished; `difference` where a drawn tree was found for it.
void addLoad(Tables& tables, const project::Project& project, const project::Index& index,
             const Traced& one, const std::optional<Difference>& difference);

} // namespace cutwater::redundancy_plugin
