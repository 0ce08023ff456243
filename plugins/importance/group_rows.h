// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of the importance of several events as one: components and common-cause groups.
#pragma once

#include "models/reliability/importance.h"
#include "plugins/importance/event_rows.h"

namespace cutwater::importance_plugin {

struct Group {
    std::string id, name;
    reliability::EventGroup variables;
    std::vector<std::string> nodes; // ids of its events
};

// The components whose failure modes are in the sets, and the common-cause groups with at least two
// members in them, in the order of the project. Where common causes are counted, a component is
// taken out by its own failures, and spared when neither these nor the causes that take it with
// others come; a group strikes when all its members are there, and is spared when none of its
// common causes comes.
std::vector<Group> componentsOf(const EventRows& rows);
std::vector<Group> commonCausesOf(const EventRows& rows);

sdk::Table componentTable();
sdk::Table commonCauseTable(bool counted);

// Rows of one top, sorted by reduction; answers how many were left out.
std::size_t addGroups(sdk::Result& result, std::size_t table, const EventRows& rows,
                      const std::vector<Group>& groups,
                      const std::vector<reliability::GroupImportance>& entries);

} // namespace cutwater::importance_plugin
