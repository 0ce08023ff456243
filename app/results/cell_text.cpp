// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/cell_text.h"

#include "app/results/display_text.h"

#include <fmt/format.h>

#include <cmath>

namespace cutwater::results {

using sdk::ColumnType;

bool isNumeric(const sdk::Column& column) {
    return column.type == ColumnType::integer || column.type == ColumnType::number ||
           column.type == ColumnType::probability;
}

std::string cellText(const sdk::Cell& cell, const sdk::Column& column) {
    if (const auto* text = std::get_if<std::string>(&cell)) return printable(*text);
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) return fmt::format("{}", *whole);
    if (const auto* real = std::get_if<double>(&cell)) {
        if (std::isnan(*real)) return "not a number";
        if (std::isinf(*real)) return *real > 0 ? "beyond all numbers" : "below all numbers";
        // "1.000e+00" would hide what is left to certainty.
        if (column.type == ColumnType::probability && *real > 0.9995 && *real < 1)
            return fmt::format("1-{:.3e}", 1 - *real);
        if (column.type == ColumnType::probability && *real != 0 && *real != 1)
            return fmt::format("{:.3e}", *real);
        return column.unit == "%" ? fmt::format("{:.3g}", *real) : fmt::format("{:.6g}", *real);
    }
    return {};
}

std::string columnTitle(const sdk::Column& column) {
    return column.unit.empty() ? printable(column.title)
                               : printable(column.title + " [" + column.unit + "]");
}

sdk::Table tableOf(const sdk::Series& series) {
    sdk::Table table;
    table.id = series.id;
    table.title = series.title;
    if (!series.labels.empty()) table.columns.push_back({"label", "", ColumnType::text, ""});
    table.columns.push_back({"x", series.xTitle, ColumnType::number, series.xUnit});
    table.columns.push_back({"y", series.yTitle, ColumnType::number, series.yUnit});
    for (std::size_t i = 0; i < series.x.size(); ++i) {
        auto& row = table.rows.emplace_back();
        if (!series.labels.empty())
            row.emplace_back(i < series.labels.size() ? series.labels[i] : std::string{});
        row.emplace_back(series.x[i]);
        row.emplace_back(series.y[i]);
    }
    return table;
}

} // namespace cutwater::results
