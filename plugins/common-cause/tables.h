// SPDX-License-Identifier: GPL-3.0-or-later
// The comparison as tables.
#pragma once

#include "plugins/common-cause/comparison.h"

namespace cutwater::common_cause_plugin {

struct Tables {
    sdk::Table tops, added, groups, effects;
    std::vector<sdk::Mark> marks;
};
Tables emptyTables();
void addTop(Tables& tables, const project::Project& project, const sdk::tree::Target& target,
            const Comparison& comparison);
// One row per group of the project: its factors and how its members share out.
void addGroups(Tables& tables, const project::Project& project, const project::Index& index);

} // namespace cutwater::common_cause_plugin
