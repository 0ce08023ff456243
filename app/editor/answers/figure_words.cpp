// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/figure_words.h"

#include "app/results/cell_text.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace cutwater::editor {

QString FigureWords::number(double probability) {
    const sdk::Column column{"p", "", sdk::ColumnType::probability, ""};
    return QString::fromStdString(results::cellText(sdk::Cell(probability), column));
}

QString FigureWords::figure(const LiveFigure& figure) {
    if (figure.lower == figure.upper) return number(figure.upper);
    if (figure.lower <= 0) return tr("at most %1").arg(number(figure.upper));
    return tr("%1 to %2").arg(number(figure.lower), number(figure.upper));
}

QString FigureWords::oneIn(const LiveFigure& figure) {
    const double p = figure.upper;
    if (p <= 0) return tr("cannot happen in this tree");
    if (p >= 1) return tr("certain");
    if (p > 0.9) return tr("nearly certain");
    const double times = 1 / p;
    if (times > 1e15) return tr("less than 1 in 10 to the power of 15");
    // Two digits: more would claim what nobody knows.
    const double step = std::pow(10.0, std::max(0.0, std::floor(std::log10(times)) - 1));
    const double rounded = times < 10 ? times : std::round(times / step) * step;
    QString words = times < 10 ? QString::number(times, 'f', 1)
                               : QLocale(QLocale::English).toString(rounded, 'f', 0);
    words.replace(',', ' '); // a comma would be a decimal point to half of the world
    return figure.exact ? tr("about 1 in %1").arg(words) : tr("at most about 1 in %1").arg(words);
}

QString FigureWords::change(const LiveFigure& before, const LiveFigure& now) {
    if (before.upper == now.upper && before.lower == now.lower)
        return tr("as before the last change");
    const QString was = figure(before);
    if (before.upper <= 0 || now.upper <= 0) return tr("before the last change: %1").arg(was);
    const double ratio = now.upper / before.upper;
    const double larger = std::max(ratio, 1 / ratio);
    const QString size = larger < 1.0005 ? tr("by a hair")
                         : larger < 2    ? tr("by %1 %").arg(100 * std::abs(ratio - 1), 0, 'g', 2)
                                         : tr("by a factor of %1").arg(larger, 0, 'g', 2);
    return (ratio > 1 ? tr("\u25B2 higher %1 than before the last change (%2)")
                      : tr("\u25BC lower %1 than before the last change (%2)"))
        .arg(size, was);
}

} // namespace cutwater::editor
