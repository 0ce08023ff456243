// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/paper-report/chapters.h"
#include "plugins/paper-report/plot_svg.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::paper_report {
namespace {

std::string tablePiece(const Order& order, const sdk::Table& table) {
    std::string out = heading(3, table.title);
    if (table.rows.empty())
        return out + paragraph(table.remark.empty() ? "Empty." : table.remark, "remark");
    std::vector<std::string> titles;
    std::vector<bool> numeric;
    for (const sdk::Column& column : table.columns) {
        titles.push_back(columnWords(column));
        numeric.push_back(isNumeric(column));
    }
    std::vector<std::vector<std::string>> rows;
    for (std::size_t r = 0; r < std::min(table.rows.size(), order.rows); ++r) {
        auto& row = rows.emplace_back();
        for (std::size_t c = 0; c < table.columns.size(); ++c)
            row.push_back(c < table.rows[r].size() ? cellWords(table.rows[r][c], table.columns[c])
                                                   : std::string());
    }
    out += paper_report::table(titles, rows, numeric);
    if (table.rows.size() > order.rows)
        out += paragraph(fmt::format("{} of {} rows are shown.", order.rows, table.rows.size()),
                         "remark");
    return out + paragraph(table.remark, "remark");
}

std::string plotPiece(const Order& order, const sdk::Series& series,
                      std::vector<NamedPicture>& pictures) {
    const PlotPicture plot = plotOf(series);
    if (plot.svg.empty()) return {};
    std::string out = heading(3, series.title);
    if (order.dialect == Dialect::browser) {
        out += fmt::format("<div class=\"plot\">{}</div>\n", plot.svg);
    } else {
        const std::string name = fmt::format("plot:{}", pictures.size());
        pictures.push_back({name, plot.svg, kPlotWidth, plot.height});
        out += fmt::format("<p><img src=\"{}\" width=\"{:.0f}\" height=\"{:.0f}\"></p>\n", name,
                           kPlotWidth, plot.height);
    }
    return out + paragraph(plot.remark, "remark");
}

std::string notesOf(const sdk::Result& result, sdk::NoteKind kind, const char* style) {
    std::string out;
    for (const sdk::Note& note : result.notes)
        if (note.kind == kind) out += paragraph(note.sentence, style);
    return out;
}

} // namespace

std::string resultChapter(const Order& order, const sdk::ReportPart& part, int number,
                          std::vector<NamedPicture>& pictures) {
    const sdk::Result& result = part.result;
    std::string out =
        heading(2, fmt::format("{}  {}", number, part.title.empty() ? result.title : part.title));
    out += paragraph(part.comment, "comment");
    std::vector<std::pair<std::string, std::string>> facts{
        {"Result", part.title.empty() || part.title == result.title ? "" : result.title},
        {"Answered by", part.method},
        {"Exactness", result.exactness == sdk::Exactness::exact
                          ? ""
                          : "bounded: something was left out, the warnings say how much"}};
    for (const auto& [name, value] : part.parameters)
        facts.emplace_back(name, value);
    out += paper_report::facts(facts);
    out += paragraph(part.stale, "warning");
    out += notesOf(result, sdk::NoteKind::warning, "warning");
    for (const sdk::Table& table : result.tables)
        out += tablePiece(order, table);
    for (const sdk::Series& series : result.series)
        out += plotPiece(order, series, pictures);
    return out + notesOf(result, sdk::NoteKind::method, "remark");
}

} // namespace cutwater::paper_report
