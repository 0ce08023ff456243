// SPDX-License-Identifier: GPL-3.0-or-later
// Cells on their way to and from spreadsheets: our own format, exact; HTML; and text with tabs or
// commas.
#pragma once

#include "app/editor/worksheet/table_html.h"

#include <QMimeData>

#include <vector>

namespace cutwater::editor {

inline constexpr const char* kCellsFormat = "application/x-cutwater-cells";

// `isText` by column: text that a spreadsheet would run gets an apostrophe in front (not in our own
// format).
QMimeData* cellsToMime(const TextBlock& block, const std::vector<bool>& isText);

// What is on the clipboard as cells; empty where there is no text. The best of: our own, a table in
// HTML, TSV with quoted cells, lines and tabs as they stand. `asCsv`: the text is CSV.
TextBlock cellsFromMime(const QMimeData& data, bool asCsv = false);

} // namespace cutwater::editor
