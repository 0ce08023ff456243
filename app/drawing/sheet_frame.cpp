// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/sheet_frame.h"

#include "app/drawing/palette.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::drawing {
namespace {

constexpr double kMargin = 28; // about 10 mm: what printers leave white anyway
constexpr double kCaption = 6.5, kWords = 8, kSmall = 7;
constexpr double kLegendRow = 15, kSymbolWidth = 17, kSymbolHeight = 12, kEntryGap = 12;
constexpr double kTitleHeight = 36, kCautionLine = 9;
constexpr double kPad = 4;

struct Entry { // of the legend
    std::optional<SymbolKind> symbol;
    std::string words;
};

std::vector<Entry> entriesOf(const FrameLegend& legend) {
    std::vector<Entry> entries;
    for (const SymbolKind kind : legend.symbols)
        entries.push_back({kind, legendOf(kind)});
    if (legend.marked) entries.push_back({std::nullopt, "heavy line and dot: marked set"});
    if (!legend.valuesRemark.empty()) entries.push_back({std::nullopt, legend.valuesRemark});
    return entries;
}

double entryWidth(const Entry& entry, const Lettering& lettering) {
    return (entry.symbol ? kSymbolWidth + 4 : 0) + lettering.measure(entry.words, kSmall, false) +
           kEntryGap;
}

Text line(std::string words, Spot at, double size, bool bold, const Lettering& lettering) {
    Text text;
    text.width = lettering.measure(words, size, bold);
    text.words = std::move(words);
    text.at = at;
    text.anchor = Anchor::start;
    text.size = size;
    text.bold = bold;
    text.ink = kBlack;
    return text;
}

struct Cell {
    const char* caption;
    std::vector<std::string> words; // paragraphs
    double share;                   // of the width
    bool bold = false;
};

std::vector<std::string> linesOf(const Cell& cell, double room, std::size_t most, double size,
                                 const Lettering& lettering) {
    std::vector<std::string> lines;
    for (const std::string& words : cell.words)
        for (std::string& one : wrap(words, room, most, size, cell.bold, lettering.measure))
            lines.push_back(std::move(one));
    return lines;
}

} // namespace

SheetFrame::SheetFrame(double width, double height, const FrameWords& words,
                       const FrameLegend& legend, const Lettering& lettering)
    : m_lettering(lettering), m_border{kMargin, kMargin, width - 2 * kMargin,
                                       height - 2 * kMargin} {
    const auto strip = [&](double bottom, double stripHeight) {
        return Box{m_border.left, bottom - stripHeight, m_border.width, stripHeight};
    };
    m_caution = strip(m_border.bottom(),
                      static_cast<double>(cautionLines(words).size()) * kCautionLine + 6);
    m_title = strip(m_caution.top, kTitleHeight);
    m_legend = strip(m_title.top, legendHeight(legend));
    constexpr double kClear = 8;
    m_room = {m_border.left + kClear, m_border.top + kClear, m_border.width - 2 * kClear,
              m_legend.top - m_border.top - 2 * kClear};
}

std::vector<std::string> SheetFrame::cautionLines(const FrameWords& words) const {
    const double room = m_border.width - 2 * kPad;
    std::vector<std::string> lines =
        wrap(kStandingCaution, room, 4, kSmall, true, m_lettering.measure);
    // The project's own ones follow as one paragraph: a line each would push the tree off the
    // sheet.
    std::string rest;
    for (const std::string& caution : words.cautions)
        rest += (rest.empty() ? "" : "  \xE2\x80\xA2 ") + caution;
    constexpr std::size_t kMost = 8;
    std::vector<std::string> more = wrap(rest, room, 100, kSmall, false, m_lettering.measure);
    if (more.size() > kMost) {
        more.resize(kMost - 1);
        more.push_back("There are more words of caution in the project: read them there.");
    }
    lines.insert(lines.end(), more.begin(), more.end());
    return lines;
}

double SheetFrame::legendHeight(const FrameLegend& legend) const {
    double x = kPad, rows = 1;
    for (const Entry& entry : entriesOf(legend)) {
        const double width = entryWidth(entry, m_lettering);
        if (x > kPad && x + width > m_border.width) {
            x = kPad;
            ++rows;
        }
        x += width;
    }
    return rows * kLegendRow + 5;
}

void SheetFrame::drawLegend(Picture& picture, const FrameLegend& legend) const {
    Group group;
    group.id = "legend";
    group.kind = "legend";
    group.title = "Legend";
    Path rule = polygon({{m_legend.left, m_legend.top}, {m_legend.right(), m_legend.top}}, false);
    rule.width = kThin;
    rule.line = kBlack;
    add(group.marks, rule);
    double x = m_legend.left + kPad, y = m_legend.top + 4;
    for (const Entry& entry : entriesOf(legend)) {
        const double width = entryWidth(entry, m_lettering);
        if (x > m_legend.left + kPad && x + width > m_legend.right()) {
            x = m_legend.left + kPad;
            y += kLegendRow;
        }
        double at = x;
        if (entry.symbol) {
            for (const Path& path : symbolPaths(*entry.symbol, {x, y, kSymbolWidth, kSymbolHeight},
                                                {kThin, kBlack, true}))
                add(group.marks, path);
            at += kSymbolWidth + 4;
        }
        add(group.marks, line(entry.words, {at, y + 8.6}, kSmall, false, m_lettering));
        x += width;
    }
    picture.groups.push_back(std::move(group));
}

void SheetFrame::drawTitleBlock(Picture& picture, const FrameWords& words) const {
    Group group;
    group.id = "title-block";
    group.kind = "frame";
    group.title = "Title block";
    const std::vector<Cell> cells = {
        {"Top event", {words.topEvent, words.topRemark}, 0.28, true},
        {"This sheet shows", {words.sheetTitle}, 0.21},
        {"Project", {words.project, words.plant}, 0.17},
        {"Prepared, checked", {words.preparedBy, words.checkedBy}, 0.14},
        {"Rev., date", {words.revision, words.date}, 0.11},
        {"Sheet", {fmt::format("{} of {}", words.sheet, words.sheets)}, 0.09, true},
    };
    const auto rule = [&](Spot from, Spot to) {
        Path path = polygon({from, to}, false);
        path.width = kThin;
        path.line = kBlack;
        add(group.marks, path);
    };
    rule({m_title.left, m_title.top}, {m_title.right(), m_title.top});
    rule({m_title.left, m_title.bottom()}, {m_title.right(), m_title.bottom()});
    double x = m_title.left;
    for (const Cell& cell : cells) {
        const double width = cell.share * m_title.width;
        if (x > m_title.left) rule({x, m_title.top}, {x, m_title.bottom()});
        const double room = width - 2 * kPad;
        // A long caption is cut rather than shrunk; the words below it matter more.
        const std::vector<std::string> caption =
            wrap(cell.caption, room, 1, kCaption, false, m_lettering.measure);
        Text small =
            line(caption.front(), {x + kPad, m_title.top + 8}, kCaption, false, m_lettering);
        small.ink = kSoft;
        add(group.marks, small);
        double size = kWords, pitch = 10.5;
        std::vector<std::string> lines = linesOf(cell, room, 3, size, m_lettering);
        if (lines.size() > 2) {
            size = kSmall;
            pitch = 8.2;
            lines = linesOf(cell, room, 3, size, m_lettering);
            // The first paragraph matters more: the others give way.
            for (std::size_t most = 2; lines.size() > 3 && most > 0; --most)
                lines = linesOf(cell, room, most, size, m_lettering);
        }
        double y = m_title.top + (pitch > 9 ? 18.5 : 16.5);
        for (const std::string& one : lines) {
            add(group.marks, line(one, {x + kPad, y}, size, cell.bold, m_lettering));
            y += pitch;
        }
        x += width;
    }
    double y = m_caution.top + 9;
    for (const std::string& caution : cautionLines(words)) {
        const bool standing = y < m_caution.top + 10;
        add(group.marks, line(caution, {m_caution.left + kPad, y}, kSmall, standing, m_lettering));
        y += kCautionLine;
    }
    picture.groups.push_back(std::move(group));
}

void SheetFrame::draw(Picture& picture, const FrameWords& words, const FrameLegend& legend) const {
    Group border;
    border.id = "border";
    border.kind = "frame";
    Path path = rectangle(m_border);
    path.width = kBorder;
    path.line = kBlack;
    add(border.marks, path);
    picture.groups.push_back(std::move(border));
    drawLegend(picture, legend);
    drawTitleBlock(picture, words);
}

} // namespace cutwater::drawing
