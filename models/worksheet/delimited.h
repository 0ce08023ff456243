// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as text: CSV (RFC 4180, also with semicolons) and TSV, as spreadsheets write and paste
// them.
#pragma once

#include "models/project/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace cutwater::worksheet {

struct Record {
    std::vector<std::string> cells;
    int line = 0; // where it starts, 1 and up
};

// `separator` 0: the one of comma, semicolon and tab that stands most often in the first line,
// outside quotes. A byte-order mark is skipped, empty lines are left out, lines end with LF or CR
// LF. Problems: a quote that is not closed; text behind a closing quote; no UTF-8; over 64 MB.
project::Outcome<std::vector<Record>> readDelimited(std::string_view text, char separator = 0);

// One record with its line end (LF). Cells are quoted where they have to be.
std::string writeRecord(const std::vector<std::string>& cells, char separator);

// Text that a spreadsheet would run as a formula (it begins with = + - @, a tab or a line end) gets
// an apostrophe in front. asTyped() takes it away again: asTyped(harmless(t)) == t for every t.
std::string harmless(const std::string& text);
std::string asTyped(const std::string& text);

} // namespace cutwater::worksheet
