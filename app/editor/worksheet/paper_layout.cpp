// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/paper.h"

#include "app/editor/worksheet/cautions_dialog.h"
#include "app/editor/worksheet/paper_measures.h"
#include "models/worksheet/scales.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <numeric>

namespace cutwater::editor {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Paper)
};

constexpr double kTightest = 0.62; // of the usual widths, where that brings all on one sheet

double widthOf(int place, double letter) {
    return sheetColumns()[static_cast<std::size_t>(place)].width * letter + 2 * paper::kPad;
}

// Columns side by side on one sheet.
std::vector<std::vector<int>> strips(const PaperOrder& order, double width, double letter) {
    double total = 0;
    for (const int place : order.columns)
        total += widthOf(place, letter);
    if (total * kTightest <= width) return {order.columns};
    const auto frozen = static_cast<std::size_t>(
        std::clamp(order.frozen, 0, static_cast<int>(order.columns.size())));
    const std::vector<int> standing(order.columns.begin(),
                                    order.columns.begin() + std::ptrdiff_t(frozen));
    double base = 0;
    for (const int place : standing)
        base += widthOf(place, letter);
    std::vector<std::vector<int>> all;
    double used = 0;
    for (std::size_t i = frozen; i < order.columns.size(); ++i) {
        const double more = widthOf(order.columns[i], letter);
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

} // namespace

namespace paper {

QFont fontOf(const PaperOrder& order, double points, bool bold) {
    QFont font = order.font;
    font.setPointSizeF(points);
    font.setBold(bold);
    return font;
}

// At 72 dots an inch a point is a dot.
QFontMetricsF measure(const QFont& font) {
    QFont exact = font;
    exact.setPixelSize(100);
    return QFontMetricsF(exact);
}

double textHeight(const QFontMetricsF& hundred, double points, const QString& text, double width) {
    if (text.isEmpty()) return 0;
    const double scale = points / 100;
    return hundred
               .boundingRect(QRectF(0, 0, std::max(width / scale, 1.0), 1e7),
                             Qt::TextWordWrap | Qt::TextWrapAnywhere, text)
               .height() *
           scale;
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

std::vector<PaperPage> layOut(const PaperOrder& order, double width, double height) {
    using namespace paper;
    const QFontMetricsF hundred = measure(order.font);
    const double letter = hundred.averageCharWidth() * kText / 100;
    std::vector<PaperPage> pages;
    for (const std::vector<int>& columns : strips(order, width, letter)) {
        double total = 0;
        for (const int place : columns)
            total += widthOf(place, letter);
        PaperPage fresh;
        fresh.columns = columns;
        double left = 0;
        for (const int place : columns) {
            fresh.lefts.push_back(left);
            left += widthOf(place, letter) * width / total;
        }
        fresh.lefts.push_back(width);
        PaperPage page = fresh;
        double y = 0;
        const auto turn = [&] {
            pages.push_back(std::move(page));
            page = fresh;
            y = 0;
        };
        for (const PaperLine& line : order.lines) {
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
