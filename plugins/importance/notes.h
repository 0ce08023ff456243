// SPDX-License-Identifier: GPL-3.0-or-later
// How to read the measures, and where they fail.
#pragma once

#include "models/reliability/importance.h"
#include "plugins/importance/numbers.h"

namespace cutwater::importance_plugin {

void addReadingNotes(std::vector<sdk::Note>& notes, bool withFrequency);

// Warnings that hold for one top: sets that are not rare, trees with negations, unions left out.
void addTopNotes(sdk::Result& result, const sdk::tree::Solved& solved, const Numbers& numbers,
                 const std::vector<reliability::EventImportance>& entries,
                 const std::vector<std::string>& initiatingIds);

} // namespace cutwater::importance_plugin
