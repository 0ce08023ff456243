// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/cell_text.h"
#include "app/results/display_text.h"
#include "app/results/render.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::results {
namespace {

constexpr std::size_t kGap = 2;          // between columns
constexpr std::size_t kNarrowest = 14;   // a wrapped column narrower than this is hard to read
constexpr std::size_t kTitleRoom = 12;   // a number's title is not squeezed below this
constexpr std::size_t kWidestTitle = 24; // of a row that is shown as a block

std::size_t longestWord(const std::string& text) {
    std::size_t longest = 1, begin = 0;
    while (begin < text.size()) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        longest =
            std::max(longest, displayWidth(std::string_view(text).substr(begin, end - begin)));
        begin = end + 1;
    }
    return longest;
}

struct Grid {
    std::vector<std::string> titles;
    std::vector<std::vector<std::string>> rows;
};

Grid gridOf(const sdk::Table& table) {
    Grid grid;
    for (const sdk::Column& column : table.columns)
        grid.titles.push_back(columnTitle(column));
    for (const auto& row : table.rows) {
        auto& texts = grid.rows.emplace_back();
        for (std::size_t c = 0; c < row.size(); ++c)
            texts.push_back(cellText(row[c], table.columns[c]));
    }
    return grid;
}

// Widths that fit into `width`, or nothing where some text would get too narrow. Numbers are never
// broken; what is left is shared by the text columns, the short ones taking only what they need.
std::vector<std::size_t> columnWidths(const sdk::Table& table, const Grid& grid,
                                      std::size_t width) {
    const std::size_t count = table.columns.size();
    std::vector<std::size_t> widths(count);
    std::vector<std::size_t> wide; // columns that may be narrowed
    std::size_t fixed = count > 0 ? (count - 1) * kGap : 0;
    for (std::size_t c = 0; c < count; ++c) {
        std::size_t content = 0;
        for (const auto& row : grid.rows)
            content = std::max(content, displayWidth(row[c]));
        if (isNumeric(table.columns[c])) {
            widths[c] = std::max({content, longestWord(grid.titles[c]),
                                  std::min(displayWidth(grid.titles[c]), kTitleRoom)});
            fixed += widths[c];
        } else {
            widths[c] = std::max(content, displayWidth(grid.titles[c]));
            wide.push_back(c);
        }
    }
    std::sort(wide.begin(), wide.end(),
              [&](std::size_t a, std::size_t b) { return widths[a] < widths[b]; });
    std::size_t left = width > fixed ? width - fixed : 0;
    for (std::size_t i = 0; i < wide.size(); ++i) {
        const std::size_t share = left / (wide.size() - i);
        std::size_t& mine = widths[wide[i]];
        if (mine > share && share < kNarrowest) return {};
        mine = std::min(mine, share);
        left -= mine;
    }
    if (wide.empty() && width < fixed) return {};
    return widths;
}

void appendRow(std::string& out, const std::vector<std::string>& cells,
               const std::vector<std::size_t>& widths, const sdk::Table& table) {
    std::vector<std::vector<std::string>> lines;
    std::size_t height = 1;
    for (std::size_t c = 0; c < cells.size(); ++c) {
        lines.push_back(wrapped(cells[c], widths[c]));
        height = std::max(height, lines.back().size());
    }
    for (std::size_t h = 0; h < height; ++h) {
        std::string line;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            if (c > 0) line.append(kGap, ' ');
            line += padded(h < lines[c].size() ? lines[c][h] : std::string{}, widths[c],
                           isNumeric(table.columns[c]));
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out += line + '\n';
    }
}

std::string asTable(const sdk::Table& table, const Grid& grid,
                    const std::vector<std::size_t>& widths) {
    std::string out;
    appendRow(out, grid.titles, widths, table);
    for (std::size_t c = 0; c < widths.size(); ++c) {
        if (c > 0) out.append(kGap, ' ');
        out.append(widths[c], '-');
    }
    out += '\n';
    for (const auto& row : grid.rows)
        appendRow(out, row, widths, table);
    return out;
}

std::string asBlocks(const Grid& grid, std::size_t width) {
    std::size_t title = 0;
    for (const std::string& text : grid.titles)
        title = std::max(title, displayWidth(text));
    title = std::min({title, kWidestTitle, width / 2});
    std::string out;
    for (std::size_t r = 0; r < grid.rows.size(); ++r) {
        if (r > 0) out += '\n';
        for (std::size_t c = 0; c < grid.titles.size(); ++c) {
            if (grid.rows[r][c].empty()) continue;
            const auto name = wrapped(grid.titles[c], title);
            for (std::size_t i = 0; i + 1 < name.size(); ++i)
                out += "  " + name[i] + '\n';
            out += paragraph(grid.rows[r][c], width, "  " + padded(name.back(), title) + "  ");
        }
    }
    return out;
}

std::string tableText(const sdk::Table& table, std::size_t width) {
    std::string out = paragraph(printable(table.title), width);
    const Grid grid = gridOf(table);
    if (table.rows.empty()) {
        out += "  (none)\n";
    } else {
        const auto widths = columnWidths(table, grid, width);
        out += widths.empty() ? asBlocks(grid, width) : asTable(table, grid, widths);
    }
    if (!table.remark.empty()) out += paragraph(printable(table.remark), width);
    return out;
}

void appendNotes(std::string& out, const sdk::Result& result, sdk::NoteKind kind, const char* title,
                 std::size_t width) {
    bool first = true;
    for (const sdk::Note& note : result.notes) {
        if (note.kind != kind) continue;
        if (first) out += fmt::format("\n{}\n", title);
        first = false;
        out += paragraph(printable(note.sentence), width, "  - ");
    }
}

} // namespace

std::string renderText(const sdk::Result& result, std::size_t width) {
    std::string out = paragraph(printable(result.title), width);
    if (!out.empty()) out += std::string(std::min(width, displayWidth(result.title)), '=') + '\n';
    for (const sdk::Table& table : result.tables)
        out += '\n' + tableText(table, width);
    for (const sdk::Series& series : result.series)
        out += '\n' + tableText(tableOf(series), width);
    if (result.exactness == sdk::Exactness::bounded)
        out +=
            '\n' +
            paragraph("Not everything here is exact; the notes say what, and by how much.", width);
    appendNotes(out, result, sdk::NoteKind::warning, "Warnings", width);
    appendNotes(out, result, sdk::NoteKind::method, "How it was found", width);
    appendNotes(out, result, sdk::NoteKind::assumption, "What is assumed", width);
    appendNotes(out, result, sdk::NoteKind::caution, "Caution", width);
    return out;
}

} // namespace cutwater::results
