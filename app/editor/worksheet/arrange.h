// SPDX-License-Identifier: GPL-3.0-or-later
// Which rows are seen, and in which order: filter, sort, group. Pure functions over a SheetData.
#pragma once

#include "app/editor/worksheet/sheet_data.h"

#include <QSet>
#include <QString>

#include <map>
#include <optional>
#include <vector>

namespace cutwater::editor {

struct SortKey {
    int column = 0; // place in sheetColumns()
    bool descending = false;
    bool operator==(const SortKey&) const = default;
};

// All that is given has to hold.
struct ColumnFilter {
    std::optional<QSet<QString>> values; // only cells that show one of these
    QString contains;                    // a part of the text, whatever its capitals
    std::optional<double> least, most;   // of numbers; cells without one do not pass
    bool empty() const { return !values && contains.isEmpty() && !least && !most; }
    bool operator==(const ColumnFilter&) const = default;
};

enum class GroupBy { none, component, endEffect, severity, location };

struct Arrangement {
    std::vector<SortKey> keys; // the first one counts most; the order of the project last
    std::map<int, ColumnFilter> filters;
    QString words; // each of them has to stand somewhere in the row
    bool dormantOnly = false;
    GroupBy group = GroupBy::none;
    bool hasFilter() const { return !filters.empty() || !words.trimmed().isEmpty() || dormantOnly; }
    bool operator==(const Arrangement&) const = default;
};

// Places of the rows in the order in which they are seen. Sorting is stable; numbers are compared
// as numbers, texts as people order them, and cells without anything come last either way.
std::vector<std::size_t> arranged(const SheetData& data, const EffectFigures& figures,
                                  const Arrangement& arrangement);

// What a row's group is called; rows of one group have the same.
QString groupOf(const SheetData& data, std::size_t row, GroupBy group);

// Equal for rows of one group: two spellings of one end effect are one.
QString groupKey(const SheetData& data, std::size_t row, GroupBy group);

// Rows of one group brought together: groups in the order of their first row, severities from the
// worst.
std::vector<std::size_t> grouped(const SheetData& data, std::vector<std::size_t> rows,
                                 GroupBy group);

bool passes(const SheetData& data, const EffectFigures& figures, const Arrangement& arrangement,
            std::size_t row);

} // namespace cutwater::editor
