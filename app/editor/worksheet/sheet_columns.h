// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the page: those of the worksheet, and what only a face that can wait knows (the
// figures of the trees).
#pragma once

#include "models/worksheet/columns.h"

#include <QString>

#include <string_view>
#include <vector>

namespace cutwater::editor {

// How a cell is typed.
enum class CellEditor {
    none, // worked out, or a fact of another page
    text,
    lines, // several texts, one a line
    component,
    severity, // a word of the risk matrix
    severityRating,
    occurrenceRating,
    detectionRating,
    share,
    interval,
    date,
    yesNo,
    states,
};

struct SheetColumn {
    std::string_view id;
    QString title; // with its unit
    QString tip;   // a sentence: what it is, and from where where it is worked out
    worksheet::ColumnKind kind = worksheet::ColumnKind::text;
    CellEditor editor = CellEditor::none;
    int width = 0;                             // usual one, in widths of a letter
    const worksheet::Column* column = nullptr; // null: one of the page's own
    bool isTyped() const { return editor != CellEditor::none; }
};

// In the order of the worksheet.
const std::vector<SheetColumn>& sheetColumns();
// -1 where there is none.
int sheetColumn(std::string_view id);

} // namespace cutwater::editor
