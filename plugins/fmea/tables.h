// SPDX-License-Identifier: GPL-3.0-or-later
// The worksheet as tables of a result.
#pragma once

#include "models/worksheet/columns.h"
#include "models/worksheet/rows.h"
#include "plugins/sdk/result.h"

#include <string>
#include <vector>

namespace cutwater::fmea_plugin {

sdk::Table worksheetTable(const worksheet::Sheet& sheet,
                          const std::vector<const worksheet::Column*>& columns);
// Dormant failures apart: how often they are tested, when last, and what proves the provision.
sdk::Table dormantTable(const worksheet::Sheet& sheet, const project::Index& index);
sdk::Table itemTable(const project::Project& project,
                     const std::vector<worksheet::ItemCriticality>& items);
sdk::Table actionTable(const worksheet::Sheet& sheet, const std::string& today);
// Both standard and own ones, one under the other.
sdk::Table scaleTable(const worksheet::Sheet& sheet);

} // namespace cutwater::fmea_plugin
