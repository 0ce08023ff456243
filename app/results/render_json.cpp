// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/json_text.h"
#include "app/results/render.h"
#include "app/results/version.h"

#include <fmt/format.h>

namespace cutwater::results {
namespace {

const char* word(sdk::ColumnType type) {
    switch (type) {
    case sdk::ColumnType::text: return "text";
    case sdk::ColumnType::integer: return "integer";
    case sdk::ColumnType::number: return "number";
    case sdk::ColumnType::probability: return "probability";
    case sdk::ColumnType::reference: return "reference";
    }
    return "text";
}

const char* word(sdk::NoteKind kind) {
    switch (kind) {
    case sdk::NoteKind::assumption: return "assumption";
    case sdk::NoteKind::warning: return "warning";
    case sdk::NoteKind::caution: return "caution";
    case sdk::NoteKind::method: return "method";
    }
    return "method";
}

const char* word(sdk::PlotKind kind) {
    switch (kind) {
    case sdk::PlotKind::line: return "line";
    case sdk::PlotKind::bar: return "bar";
    case sdk::PlotKind::step: return "step";
    }
    return "line";
}

std::string cellJson(const sdk::Cell& cell) {
    if (const auto* text = std::get_if<std::string>(&cell)) return jsonString(*text);
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) return fmt::format("{}", *whole);
    if (const auto* real = std::get_if<double>(&cell)) return jsonNumber(*real);
    return "null";
}

// "[a, b]" of what `one` makes of each item; `gap` goes before each item and before the end.
template <typename Items, typename One>
std::string list(const Items& items, One one, const std::string& gap = {}) {
    std::string out = "[";
    bool first = true;
    for (const auto& item : items) {
        if (!first) out += gap.empty() ? ", " : ",";
        first = false;
        out += gap;
        out += one(item);
    }
    if (!first && !gap.empty()) out += gap.substr(0, gap.size() - 2);
    return out + "]";
}

std::string tableJson(const sdk::Table& table) {
    const auto column = [](const sdk::Column& c) {
        return fmt::format(R"({{"id": {}, "title": {}, "type": "{}", "unit": {}}})",
                           jsonString(c.id), jsonString(c.title), word(c.type), jsonString(c.unit));
    };
    const auto row = [](const std::vector<sdk::Cell>& cells) { return list(cells, cellJson); };
    return fmt::format("{{\n      \"id\": {},\n      \"title\": {},\n      \"remark\": {},\n"
                       "      \"columns\": {},\n      \"rows\": {}\n    }}",
                       jsonString(table.id), jsonString(table.title), jsonString(table.remark),
                       list(table.columns, column, "\n        "),
                       list(table.rows, row, "\n        "));
}

std::string seriesJson(const sdk::Series& s) {
    return fmt::format(
        "{{\n      \"id\": {},\n      \"title\": {},\n      \"kind\": \"{}\",\n"
        "      \"x-title\": {},\n      \"x-unit\": {},\n      \"y-title\": {},\n"
        "      \"y-unit\": {},\n      \"log-y\": {},\n      \"x\": {},\n      \"y\": {},\n"
        "      \"labels\": {}\n    }}",
        jsonString(s.id), jsonString(s.title), word(s.kind), jsonString(s.xTitle),
        jsonString(s.xUnit), jsonString(s.yTitle), jsonString(s.yUnit), s.logY,
        list(s.x, jsonNumber), list(s.y, jsonNumber), list(s.labels, jsonString));
}

} // namespace

std::string renderJson(const sdk::Result& result, const Origin& origin) {
    const auto note = [](const sdk::Note& n) {
        return fmt::format(R"({{"kind": "{}", "sentence": {}}})", word(n.kind),
                           jsonString(n.sentence));
    };
    const auto mark = [](const sdk::Mark& m) {
        return fmt::format(R"({{"table": {}, "row": {}, "nodes": {}}})", jsonString(m.table), m.row,
                           list(m.nodes, jsonString));
    };
    const std::string gap = "\n    ";
    return fmt::format(
        "{{\n  \"cutwater\": {},\n  \"command\": {},\n  \"version\": {},\n  \"file\": {},\n"
        "  \"title\": {},\n  \"exactness\": \"{}\",\n  \"tables\": {},\n  \"series\": {},\n"
        "  \"notes\": {},\n  \"marks\": {}\n}}\n",
        jsonString(kVersion), jsonString(origin.command), jsonString(origin.pluginVersion),
        jsonString(origin.file), jsonString(result.title),
        result.exactness == sdk::Exactness::exact ? "exact" : "bounded",
        list(result.tables, tableJson, gap), list(result.series, seriesJson, gap),
        list(result.notes, note, gap), list(result.marks, mark, gap));
}

} // namespace cutwater::results
