// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/display_text.h"
#include "app/results/render.h"

#include <fmt/format.h>

#include <cmath>

namespace cutwater::results {
namespace {

std::string quoted(const std::string& text) {
    if (text.find_first_of(",\"\n\r") == std::string::npos && (text.empty() || text[0] != '#'))
        return text;
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + "\"";
}

// A spreadsheet runs text that begins like this as a formula: the file may come from a stranger.
std::string harmless(const std::string& text) {
    const bool formula =
        !text.empty() && std::string_view("=+-@\t\r").find(text[0]) != std::string_view::npos;
    return formula ? "'" + text : text;
}

std::string cellCsv(const sdk::Cell& cell) {
    if (const auto* text = std::get_if<std::string>(&cell)) return quoted(harmless(*text));
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) return fmt::format("{}", *whole);
    if (const auto* real = std::get_if<double>(&cell))
        return std::isfinite(*real) ? fmt::format("{}", *real) : std::string{};
    return {};
}

void appendLine(std::string& out, const std::vector<std::string>& cells) {
    out += fmt::format("{}\n", fmt::join(cells, ","));
}

void appendTable(std::string& out, const sdk::Table& table, bool single) {
    if (!single) {
        if (!out.empty()) out += '\n';
        out += fmt::format("# table {}: {}\n", table.id, printable(table.title));
    }
    std::vector<std::string> cells;
    for (const sdk::Column& column : table.columns)
        cells.push_back(
            quoted(column.unit.empty() ? column.id : column.id + " [" + column.unit + "]"));
    appendLine(out, cells);
    for (const auto& row : table.rows) {
        cells.clear();
        for (const sdk::Cell& cell : row)
            cells.push_back(cellCsv(cell));
        appendLine(out, cells);
    }
}

sdk::Table notesTable(const sdk::Result& result) {
    sdk::Table table{"notes", "Notes", {{"kind", "Kind"}, {"sentence", "Sentence"}}, {}, {}};
    const auto name = [](sdk::NoteKind kind) -> std::string {
        switch (kind) {
        case sdk::NoteKind::assumption: return "assumption";
        case sdk::NoteKind::warning: return "warning";
        case sdk::NoteKind::caution: return "caution";
        case sdk::NoteKind::method: return "method";
        }
        return {};
    };
    for (const sdk::Note& note : result.notes)
        table.rows.push_back({name(note.kind), note.sentence});
    return table;
}

} // namespace

std::string renderCsv(const sdk::Result& result, bool single) {
    std::string out;
    for (const sdk::Table& table : result.tables)
        appendTable(out, table, single);
    for (const sdk::Series& series : result.series) {
        sdk::Table table{series.id, series.title, {}, {}, {}};
        table.columns = {{"label", "", sdk::ColumnType::text, ""},
                         {"x", series.xTitle, sdk::ColumnType::number, series.xUnit},
                         {"y", series.yTitle, sdk::ColumnType::number, series.yUnit}};
        for (std::size_t i = 0; i < series.x.size(); ++i)
            table.rows.push_back(
                {i < series.labels.size() ? sdk::Cell(series.labels[i]) : sdk::Cell(), series.x[i],
                 series.y[i]});
        appendTable(out, table, single);
    }
    if (!single && !result.notes.empty()) appendTable(out, notesTable(result), false);
    return out;
}

} // namespace cutwater::results
