// SPDX-License-Identifier: GPL-3.0-or-later
// The worksheet on paper: laid out for A4 or A3 across, headings on every page, first columns
// repeated where the others need several sheets side by side. Nothing here touches a window: it may
// run in any thread.
#pragma once

#include "app/editor/worksheet/sheet_data.h"

#include <QDate>
#include <QFont>
#include <QPagedPaintDevice>
#include <QStringList>

#include <functional>
#include <memory>
#include <stop_token>
#include <vector>

namespace cutwater::editor {

struct PaperLine {
    int row = -1;    // place in the sheet; -1: the head of a group
    QString heading; // of the group
};

struct PaperOrder {
    std::shared_ptr<const SheetData> data;
    EffectFigures figures;
    std::vector<int> columns; // places in sheetColumns()
    int frozen = 0;           // of them: repeated on each sheet
    std::vector<PaperLine> lines;
    QString filter; // in words; empty: every row
    QDate today;
    QFont font;
};

struct PaperCell {
    QRectF place; // points, from the upper left of the paper's inside
    QString text;
    bool cut = false; // there was no room for all of it
};

struct PaperPage {
    std::vector<int> columns;
    std::vector<double> lefts; // of the columns, and the right end
    struct Line {
        PaperLine line;
        double top = 0, height = 0;
    };
    std::vector<Line> lines;
    QStringList words; // a page of words: cautions and what the numbers mean
};

// Room for the table on one page: `width` and `height` in points.
// `progress`: 0 to 1. Where `stop` was asked the pages are not all there.
std::vector<PaperPage> layOut(const PaperOrder& order, double width, double height,
                              const std::function<void(double)>& progress = {},
                              std::stop_token stop = {});

// Sentences that go with the sheet: the weakness of the RPN where it is shown, all cautions.
QStringList paperWords(const PaperOrder& order);

// False where the device fails, or where `stop` was asked. `progress`: 0 to 1.
bool paintPaper(QPagedPaintDevice& device, const PaperOrder& order,
                const std::function<void(double)>& progress = {}, std::stop_token stop = {});

} // namespace cutwater::editor
