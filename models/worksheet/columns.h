// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the worksheet, once for every face: what is shown, and what can be typed or
// imported.
#pragma once

#include "models/worksheet/rows.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace cutwater::worksheet {

using Cell = std::variant<std::monostate, std::string, std::int64_t, double>;

enum class ColumnKind { text, whole, number, probability };

struct Column {
    std::string_view id;    // stable, for scripts and files: "end-effect"
    std::string_view title; // for people: "End effect"
    ColumnKind kind = ColumnKind::text;
    std::string_view unit = {};
    std::vector<std::string_view> alsoCalled; // other headings that an imported sheet may have
    std::function<Cell(const Sheet&, const Row&)> read;
    // Puts a text into the fact behind the column. The clause says why it cannot: "is not a whole
    // number from 1 to 10". Empty function: the column is worked out and cannot be typed.
    std::function<std::optional<std::string>(const std::string&, project::FailureMode&)> write;
    // A number of the failure model. It can be typed where the model has a place for it; a table
    // does not bring it, since it brings no failure models either.
    bool ofModel = false;
};

// In the order of the worksheet. The first two, `id` and `component`, name the row and are handled
// by whoever writes rows.
const std::vector<Column>& columns();
const Column* findColumn(std::string_view id);

// Several texts in one cell stand with this between them.
inline constexpr std::string_view kListSeparator = " | ";

// As a cell of text: numbers with the shortest digits that give the same value.
std::string toText(const Cell& cell);

} // namespace cutwater::worksheet
