// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the risk matrix, or cannot be placed there, as a table of a result.
#pragma once

#include "app/editor/session/session.h"
#include "models/worksheet/risk_placement.h"
#include "plugins/sdk/result.h"

#include <memory>
#include <optional>
#include <utility>

namespace cutwater::editor {

// Frequency and severity index of a cell; none: all, and behind them what cannot be placed.
using CellWish = std::optional<std::pair<int, int>>;

std::shared_ptr<const sdk::Result> riskTable(const project::Project& project,
                                             const worksheet::RiskPicture& picture,
                                             const CellWish& cell);

} // namespace cutwater::editor
