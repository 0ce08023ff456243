// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/paper-report/markup.h"

#include <fmt/format.h>

#include <cmath>

namespace cutwater::paper_report {

using sdk::ColumnType;

std::string escaped(std::string_view text) {
    std::string out;
    out.reserve(text.size() + text.size() / 8);
    for (const char c : text) {
        switch (c) {
        case '&': out += "&amp;"; break;
        case '<': out += "&lt;"; break;
        case '>': out += "&gt;"; break;
        case '"': out += "&quot;"; break;
        case '\n':
        case '\t': out += ' '; break;
        default:
            if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f)
                out += "\xEF\xBF\xBD";
            else
                out += c;
        }
    }
    return out;
}

bool isNumeric(const sdk::Column& column) {
    return column.type == ColumnType::integer || column.type == ColumnType::number ||
           column.type == ColumnType::probability;
}

std::string cellWords(const sdk::Cell& cell, const sdk::Column& column) {
    if (const auto* text = std::get_if<std::string>(&cell)) return *text;
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) return fmt::format("{}", *whole);
    const auto* const real = std::get_if<double>(&cell);
    if (!real) return {};
    if (std::isnan(*real)) return "not a number";
    if (std::isinf(*real)) return *real > 0 ? "beyond all numbers" : "below all numbers";
    const bool chance = column.type == ColumnType::probability;
    if (chance && *real > 0.9995 && *real < 1) return fmt::format("1-{:.3e}", 1 - *real);
    if (chance && *real != 0 && *real != 1) return fmt::format("{:.3e}", *real);
    return column.unit == "%" ? fmt::format("{:.3g}", *real) : fmt::format("{:.6g}", *real);
}

std::string columnWords(const sdk::Column& column) {
    return column.unit.empty() ? column.title : fmt::format("{} [{}]", column.title, column.unit);
}

std::string heading(int level, std::string_view text) {
    return fmt::format("<h{0}>{1}</h{0}>\n", level, escaped(text));
}

std::string paragraph(std::string_view text, std::string_view kind) {
    std::string out;
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        if (line.find_first_not_of(" \t\r") != std::string_view::npos)
            out += kind.empty() ? fmt::format("<p>{}</p>\n", escaped(line))
                                : fmt::format("<p class=\"{}\">{}</p>\n", kind, escaped(line));
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return out;
}

std::string list(const std::vector<std::string>& texts) {
    if (texts.empty()) return {};
    std::string out = "<ul>\n";
    for (const std::string& text : texts)
        out += fmt::format("<li>{}</li>\n", escaped(text));
    return out + "</ul>\n";
}

std::string table(const std::vector<std::string>& titles,
                  const std::vector<std::vector<std::string>>& rows,
                  const std::vector<bool>& numeric) {
    const auto side = [&](std::size_t column) {
        return column < numeric.size() && numeric[column] ? " align=\"right\" class=\"number\""
                                                          : "";
    };
    std::string out = "<table class=\"data\" border=\"1\" cellspacing=\"0\" cellpadding=\"3\" "
                      "width=\"100%\">\n<thead><tr>";
    for (std::size_t c = 0; c < titles.size(); ++c)
        out += fmt::format("<th{}>{}</th>", side(c), escaped(titles[c]));
    out += "</tr></thead>\n<tbody>\n";
    for (const std::vector<std::string>& row : rows) {
        out += "<tr>";
        for (std::size_t c = 0; c < row.size(); ++c)
            out += fmt::format("<td{}>{}</td>", side(c), escaped(row[c]));
        out += "</tr>\n";
    }
    return out + "</tbody></table>\n";
}

std::string facts(const std::vector<std::pair<std::string, std::string>>& rows) {
    std::string out = "<table class=\"facts\" cellspacing=\"0\" cellpadding=\"3\">\n";
    for (const auto& [what, value] : rows)
        if (!value.empty())
            out += fmt::format("<tr><th align=\"left\">{}</th><td>{}</td></tr>\n", escaped(what),
                               escaped(value));
    return out + "</table>\n";
}

} // namespace cutwater::paper_report
