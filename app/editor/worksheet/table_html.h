// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as HTML, as spreadsheets put them on the clipboard. No recursion; whatever is no table is
// skipped, and no address in it is ever looked at.
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace cutwater::editor {

using TextBlock = std::vector<QStringList>; // rows of cells

// The first table of the text, or nothing. Line breaks within a cell stay; cells that reach over
// several places leave those empty. At most 200,000 cells are read.
TextBlock tableFromHtml(const QString& html);
QString tableToHtml(const TextBlock& block);

} // namespace cutwater::editor
