// SPDX-License-Identifier: GPL-3.0-or-later
// The plant under an assessment beside its normal state: how many times as likely each top event
// is, and what has become a single failure.
#pragma once

#include "plugins/sdk/tree/figures.h"

namespace cutwater::probability_plugin {

// Two tables behind those that are there. `under` are the tops that were solved under the
// assessment; they are solved once more without it. An ending other than `finished`: stopped.
sdk::Answer<bool> addCompared(sdk::Result& result, const project::Project& project,
                              const project::Index& index, sdk::tree::FigureBook& book,
                              const std::vector<sdk::tree::Solved>& under,
                              const sdk::tree::Circumstances& circumstances, const sdk::Job& job);

} // namespace cutwater::probability_plugin
