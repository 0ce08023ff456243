// SPDX-License-Identifier: GPL-3.0-or-later
// Dates and times of day as the log writes them.
#pragma once

#include <string_view>

namespace cutwater::project {

// "2026-02-28": ISO 8601, a day that the calendar has. Two of them compare as texts do.
bool isIsoDate(std::string_view text);
// "00:00" to "23:59".
bool isTimeOfDay(std::string_view text);

} // namespace cutwater::project
