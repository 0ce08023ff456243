// SPDX-License-Identifier: GPL-3.0-or-later
// A Result as text for people, JSON or CSV for scripts. None of them knows which plug-in answered.
#pragma once

#include "plugins/sdk/result.h"

#include <string>

namespace cutwater::results {

// What the JSON says besides the result.
struct Origin {
    std::string command;
    std::string pluginVersion; // empty for a built-in command
    std::string file;
};

// `width`: columns of the terminal. Tables that do not fit are wrapped; where that would squeeze
// the text too much, each row becomes a block of lines.
std::string renderText(const sdk::Result& result, std::size_t width);

// One object: cutwater, command, version, file, title, exactness, tables, series, notes, marks.
// NaN and infinity become null. Ends with a line end.
std::string renderJson(const sdk::Result& result, const Origin& origin);

// RFC 4180 quoting, lines end with LF. Each table after a line "# table ID: title", an empty line
// between; notes as a last table. With `single` no such lines: only the rows of one table.
// Text that a spreadsheet would take for a formula (it begins with = + - @ or a tab) gets an
// apostrophe in front.
std::string renderCsv(const sdk::Result& result, bool single);

} // namespace cutwater::results
