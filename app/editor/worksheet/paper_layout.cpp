// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/paper.h"

#include "app/editor/worksheet/cautions_dialog.h"
#include "app/editor/worksheet/paper_measures.h"
#include "models/worksheet/scales.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>
#include <map>

namespace cutwater::editor {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Paper)
};

constexpr double kTightest = 0.62; // of the usual widths, where that brings all on one sheet

struct Widths {
    double usual = 0, least = 0; // points
};

Widths widthOf(int place, const QFont& hundred, double letter) {
    using namespace paper;
    const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(place)];
    QFont bold = hundred;
    bold.setBold(true);
    double least = wordWidth(bold, kHead, column.title);
    if (column.kind == worksheet::ColumnKind::number)
        least = std::max(least, wordWidth(hundred, kText, QStringLiteral("0.0008765")));
    if (column.editor == CellEditor::date || column.id == "next-test")
        least = std::max(least, wordWidth(hundred, kText, QStringLiteral("0000-00-00 |")));
    least += 2 * kPad + 1;
    return {std::max(column.width * letter + 2 * kPad, least), least};
}

// Columns side by side on one sheet.
std::vector<std::vector<int>> strips(const PaperOrder& order, double width,
                                     const std::map<int, Widths>& widths) {
    double tight = 0;
    for (const int place : order.columns)
        tight += std::max(widths.at(place).least, widths.at(place).usual * kTightest);
    if (tight <= width) return {order.columns};
    const auto frozen = static_cast<std::size_t>(
        std::clamp(order.frozen, 0, static_cast<int>(order.columns.size())));
    const std::vector<int> standing(order.columns.begin(),
                                    order.columns.begin() + std::ptrdiff_t(frozen));
    double base = 0;
    for (const int place : standing)
        base += widths.at(place).usual;
    std::vector<std::vector<int>> all;
    double used = 0;
    for (std::size_t i = frozen; i < order.columns.size(); ++i) {
        const double more = widths.at(order.columns[i]).usual;
        if (all.empty() || used + more > width * 1.05) {
            all.push_back(standing);
            used = base;
        }
        all.back().push_back(order.columns[i]);
        used += more;
    }
    if (all.empty()) all.push_back(standing);
    return all;
}

// Every column gets what it needs at least; the rest goes by what is usual.
std::vector<double> leftsOf(const std::vector<int>& columns, const std::map<int, Widths>& widths,
                            double width) {
    double least = 0, more = 0;
    for (const int place : columns) {
        least += widths.at(place).least;
        more += widths.at(place).usual - widths.at(place).least + 1;
    }
    std::vector<double> lefts;
    double left = 0;
    const double squeeze = least > width ? width / least : 1;
    for (const int place : columns) {
        const Widths& one = widths.at(place);
        lefts.push_back(left);
        left +=
            one.least * squeeze + std::max(width - least, 0.0) * (one.usual - one.least + 1) / more;
    }
    lefts.push_back(width);
    return lefts;
}

} // namespace

namespace paper {

QFont hundredOf(const QFont& font) {
    QFont hundred = font;
    hundred.setPixelSize(100);
    return hundred;
}

double textHeight(const QFont& hundred, double points, const QString& text, double width,
                  QPainter* painter, Qt::Alignment side) {
    const double scale = points / 100;
    QTextOption option(side);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    double y = 0;
    for (const QString& paragraph : text.split(u'\n')) {
        QTextLayout layout(paragraph, hundred);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(std::max(width / scale, 1.0));
            line.setPosition({0, y});
            y += line.height();
        }
        layout.endLayout();
        if (painter) layout.draw(painter, {0, 0});
    }
    return y * scale;
}

double wordWidth(const QFont& hundred, double points, const QString& text) {
    const QFontMetricsF metrics(hundred);
    double widest = 0;
    for (const QString& word : text.split(u' '))
        widest = std::max(widest, metrics.horizontalAdvance(word));
    return widest * points / 100;
}

} // namespace paper

QStringList paperWords(const PaperOrder& order) {
    QStringList words;
    const auto shown = [&](std::string_view id) {
        return std::find(order.columns.begin(), order.columns.end(), sheetColumn(id)) !=
               order.columns.end();
    };
    if (shown("rpn") || shown("rpn-after"))
        words.append(Words::tr("RPN: %1").arg(
            QCoreApplication::translate("Worksheet", worksheet::kRpnWarning)));
    for (const QString& caution : standingCautions())
        words.append(Words::tr("Caution: %1").arg(caution));
    for (const std::string& own : order.data->snapshot->cautions)
        words.append(Words::tr("Caution of this plant: %1").arg(QString::fromStdString(own)));
    return words;
}

std::vector<PaperPage> layOut(const PaperOrder& order, double width, double height,
                              const std::function<void(double)>& progress, std::stop_token stop) {
    using namespace paper;
    const QFont hundred = hundredOf(order.font);
    const double letter = QFontMetricsF(hundred).averageCharWidth() * kText / 100;
    std::map<int, Widths> widths;
    for (const int place : order.columns)
        widths[place] = widthOf(place, hundred, letter);
    std::vector<PaperPage> pages;
    const auto sheets = strips(order, width, widths);
    const double all = static_cast<double>(sheets.size() * order.lines.size());
    std::size_t done = 0;
    for (const std::vector<int>& columns : sheets) {
        PaperPage fresh;
        fresh.columns = columns;
        fresh.lefts = leftsOf(columns, widths, width);
        PaperPage page = fresh;
        double y = 0;
        const auto turn = [&] {
            pages.push_back(std::move(page));
            page = fresh;
            y = 0;
        };
        for (const PaperLine& line : order.lines) {
            if (stop.stop_requested()) return pages;
            if (progress && ++done % 100 == 0) progress(static_cast<double>(done) / all);
            double tall = kGroup;
            if (line.row >= 0) {
                tall = kText * 1.3;
                for (std::size_t i = 0; i < columns.size(); ++i)
                    tall = std::max(
                        tall, textHeight(hundred, kText, paperText(order, line.row, columns[i]),
                                         fresh.lefts[i + 1] - fresh.lefts[i] - 2 * kPad));
                tall += 2 * kPad;
            }
            tall = std::min(tall, height);
            // The head of a group does not stand alone at the foot of a page.
            const double needed = line.row < 0 ? tall + kText * 3 : tall;
            if (y + needed > height && !page.lines.empty()) turn();
            page.lines.push_back({line, y, tall});
            y += tall;
        }
        if (!page.lines.empty() || pages.empty()) turn();
    }
    PaperPage last;
    double y = 0;
    for (const QString& words : paperWords(order)) {
        const double tall = textHeight(hundred, kWords, words, width) + kWords * 0.6;
        if (y + tall > height && !last.words.isEmpty()) {
            pages.push_back(std::move(last));
            last = {};
            y = 0;
        }
        last.words.append(words);
        y += tall;
    }
    pages.push_back(std::move(last));
    return pages;
}

} // namespace cutwater::editor
