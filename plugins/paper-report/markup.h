// SPDX-License-Identifier: GPL-3.0-or-later
// Markup: pieces of HTML from pieces of data. One dialect that browsers, and Qt's rich text for PDF
// and ODT, both read.
#pragma once

#include "plugins/sdk/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace cutwater::paper_report {

// Where the markup goes: a browser draws SVG and obeys style sheets, Qt's rich text knows pictures
// by name and attributes.
enum class Dialect { browser, richText };

// Text for the page: & < > " become entities; control characters, which no page can show, U+FFFD.
std::string escaped(std::string_view text);

// As the shell and the editor write it: a probability has four digits, near certainty what is left
// to it.
std::string cellWords(const sdk::Cell& cell, const sdk::Column& column);
std::string columnWords(const sdk::Column& column);
bool isNumeric(const sdk::Column& column);

std::string heading(int level, std::string_view text);
// Line ends make paragraphs.
std::string paragraph(std::string_view text, std::string_view kind = {});
std::string list(const std::vector<std::string>& texts);
// The first words of each row are a heading of it; `numeric` columns stand at the right.
std::string table(const std::vector<std::string>& titles,
                  const std::vector<std::vector<std::string>>& rows,
                  const std::vector<bool>& numeric = {});
// Two columns: what, and its value; rows without a value are left out.
std::string facts(const std::vector<std::pair<std::string, std::string>>& rows);

} // namespace cutwater::paper_report
