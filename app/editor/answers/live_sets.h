// SPDX-License-Identifier: GPL-3.0-or-later
// The sets of a solved tree in the words of a live answer.
#pragma once

#include "app/editor/answers/live_answer.h"
#include "plugins/sdk/tree/figures.h"

namespace cutwater::editor {

// Fills in the counts by order, the single failures and the most probable of the other sets. False
// where it was asked to stop.
bool addSets(LiveAnswer& answer, const project::Project& project, const project::Index& index,
             const sdk::tree::Solved& solved, const sdk::tree::Figures& figures,
             const sdk::tree::FigureBook& book, const std::stop_token& stop);

} // namespace cutwater::editor
