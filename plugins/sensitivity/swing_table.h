// SPDX-License-Identifier: GPL-3.0-or-later
// The ranked table and the bars of one top event's swings.
#pragma once

#include "models/reliability/sensitivity.h"
#include "plugins/sdk/tree/solved.h"

namespace cutwater::sensitivity_plugin {

sdk::Table swingTable();

// Rows of the top with this number, the widest swing first; marks, and two bars for each row.
// Answers how many rows were left out.
std::size_t addSwings(sdk::Result& result, const project::Project& project,
                      const sdk::tree::Target& target, std::size_t top,
                      const reliability::Swings& swings, std::size_t most);

} // namespace cutwater::sensitivity_plugin
