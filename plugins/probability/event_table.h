// SPDX-License-Identifier: GPL-3.0-or-later
// The probabilities that went into a calculation, each with how it was found and its source.
#pragma once

#include "plugins/sdk/tree/figures.h"

namespace cutwater::probability_plugin {

sdk::Table eventTable(const project::Project& project, const project::Index& index,
                      const sdk::tree::FigureBook& book);

// "rate: NUREG-0492, January 1981, table 1 [seen]; interval: ...", the sources of all numbers of
// the model; one source for all of them is named once.
std::string sourcesOf(const project::Index& index, const project::FailureModel& model);

} // namespace cutwater::probability_plugin
