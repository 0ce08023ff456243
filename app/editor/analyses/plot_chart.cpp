// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/plot_chart.h"

#include "app/editor/analyses/plot_colours.h"
#include "app/editor/answers/own_words.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QBuffer>
#include <QChart>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QGuiApplication>
#include <QHorizontalBarSeries>
#include <QLegend>
#include <QLineSeries>
#include <QLogValueAxis>
#include <QPainter>
#include <QScreen>
#include <QSvgGenerator>
#include <QValueAxis>

#include <algorithm>
#include <cmath>
#include <memory>
#include <set>

namespace cutwater::editor {
namespace {

using sdk::PlotKind;
using sdk::Series;

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString withUnit(const std::string& title, const std::string& unit) {
    QString words = inOwnWords(title, unit);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

bool belongTogether(const Series& a, const Series& b) {
    return a.kind == b.kind && a.xTitle == b.xTitle && a.xUnit == b.xUnit && a.yTitle == b.yTitle &&
           a.yUnit == b.yUnit && a.logY == b.logY &&
           (a.kind != PlotKind::bar || a.labels == b.labels);
}

// The lowest and highest value, widened so that nothing touches the frame.
struct Range {
    double low = HUGE_VAL, high = -HUGE_VAL;
    void add(double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    }
    bool empty() const { return low > high; }
};

// 1, 2 or 5 times a power of ten.
double niceStep(double about) {
    const double power = std::pow(10, std::floor(std::log10(about)));
    const double digit = about / power;
    return power * (digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10);
}

QAbstractAxis* valueAxis(Range range, bool logarithmic, bool fromZero) {
    if (range.empty()) range = logarithmic ? Range{0.1, 1} : Range{0, 1};
    if (logarithmic) {
        auto* const axis = new QLogValueAxis;
        const double low = std::floor(std::log10(range.low));
        double high = std::ceil(std::log10(range.high));
        if (high <= low) high = low + 1;
        axis->setBase(10);
        axis->setLabelFormat("%.0e");
        // A hair wider: the axis leaves out a label that rounding puts outside.
        axis->setRange(std::pow(10, low) * (1 - 1e-9), std::pow(10, high) * (1 + 1e-9));
        axis->setMinorTickCount(high - low > 12 ? 0 : 8);
        return axis;
    }
    if (fromZero) range.add(0);
    if (range.high <= range.low) range.high = range.low + std::max(1e-300, std::abs(range.low));
    const double step = niceStep((range.high - range.low) / 5);
    // A height ends at a line of the grid; a time ends where the answer ends.
    if (fromZero) range.high = step * std::ceil(range.high / step * (1 - 1e-9));
    auto* const axis = new QValueAxis;
    axis->setRange(range.low, range.high);
    axis->setTickType(QValueAxis::TicksDynamic);
    axis->setTickAnchor(0);
    axis->setTickInterval(step);
    const double most = std::max(std::abs(range.low), std::abs(range.high));
    axis->setLabelFormat(most < 1e-3 || most >= 1e6 ? "%.1e" : "%g");
    return axis;
}

void paintAxis(QAbstractAxis* axis, const PlotLook& look) {
    const QColor ink = look.palette.color(QPalette::Text);
    QColor faint = ink, fainter = ink;
    faint.setAlphaF(0.30F);
    fainter.setAlphaF(0.12F);
    axis->setLabelsColor(ink);
    axis->setTitleBrush(ink);
    axis->setLinePen(QPen(ink, 1));
    axis->setGridLinePen(QPen(faint, 1));
    axis->setMinorGridLinePen(QPen(fainter, 1));
}

// "T1: mean so far" and "T1: 95 % point": what they share goes into the title of the chart, the
// rest into the legend.
struct Names {
    QString before, behind; // "T1: ", " (all at their point values)"
    std::vector<QString> own;
};

Names namesOf(const std::vector<const Series*>& series) {
    Names names;
    for (const Series* one : series)
        names.own.push_back(text(one->title));
    if (series.size() < 2) return names;
    const auto shared = [&](qsizetype length, bool end) {
        const QString& first = names.own.front();
        return std::all_of(names.own.begin(), names.own.end(), [&](const QString& one) {
            return end ? one.endsWith(first.right(length)) : one.startsWith(first.left(length));
        });
    };
    const QString first = names.own.front();
    const qsizetype colon = first.indexOf(": "), bracket = first.lastIndexOf(" (");
    if (colon > 0 && shared(colon + 2, false)) names.before = first.left(colon + 2);
    if (bracket > colon && shared(first.size() - bracket, true)) names.behind = first.mid(bracket);
    for (QString& own : names.own)
        own = own.mid(names.before.size(), own.size() - names.before.size() - names.behind.size());
    return names;
}

std::vector<QPointF> pointsOf(const Series& one, const PlotLook& look, std::size_t& leftOut) {
    std::vector<QPointF> points;
    const std::size_t count = std::min(one.x.size(), one.y.size());
    for (std::size_t i = 0; i < count; ++i) {
        const double x = one.x[i], y = one.y[i];
        const bool fits =
            std::isfinite(x) && std::isfinite(y) && (!look.logX || x > 0) && (!look.logY || y > 0);
        if (!fits) {
            ++leftOut;
            continue;
        }
        if (one.kind == PlotKind::step && !points.empty())
            points.emplace_back(x, points.back().y());
        points.emplace_back(x, y);
    }
    return points;
}

void addCurves(Plot& plot, const std::vector<const Series*>& series, const PlotLook& look) {
    Range xRange, yRange;
    std::vector<QLineSeries*> lines;
    const Names names = namesOf(series);
    for (std::size_t i = 0; i < series.size(); ++i) {
        auto* const line = new QLineSeries;
        line->setName(names.own[i]);
        for (const QPointF& point : pointsOf(*series[i], look, plot.leftOut)) {
            line->append(point);
            xRange.add(point.x());
            yRange.add(point.y());
        }
        line->setPen(curvePen(i, look.palette));
        // A lone point is no line: it is shown as a dot.
        line->setPointsVisible(line->count() == 1);
        plot.chart->addSeries(line);
        lines.push_back(line);
    }
    QAbstractAxis* const x = valueAxis(xRange, look.logX, false);
    QAbstractAxis* const y = valueAxis(yRange, look.logY, true);
    x->setTitleText(withUnit(series[0]->xTitle, series[0]->xUnit));
    y->setTitleText(withUnit(series[0]->yTitle, series[0]->yUnit));
    plot.chart->addAxis(x, Qt::AlignBottom);
    plot.chart->addAxis(y, Qt::AlignLeft);
    for (QLineSeries* line : lines) {
        line->attachAxis(x);
        line->attachAxis(y);
    }
}

// The axis wants each label once.
QStringList labelsOf(const Series& one, std::size_t count) {
    QStringList labels;
    std::set<QString> seen;
    for (std::size_t i = 0; i < count; ++i) {
        QString label = i < one.labels.size() ? text(one.labels[i]) : QString::number(one.x[i]);
        while (!seen.insert(label).second)
            label += QChar(0x200B); // no width
        labels.push_back(label);
    }
    return labels;
}

void addBars(Plot& plot, const std::vector<const Series*>& series, const PlotLook& look) {
    constexpr int kBar = 14, kAround = 130; // pixels
    std::size_t count = series[0]->y.size();
    for (const Series* one : series)
        count = std::min({count, one->y.size(), one->x.size()});
    const auto fits = [&](double value) {
        return std::isfinite(value) && (!look.logY || value > 0);
    };
    Range range;
    for (const Series* one : series)
        for (std::size_t i = 0; i < count; ++i)
            if (fits(one->y[i])) range.add(one->y[i]);
    // Where a bar has no place its label stands alone.
    const double nothing = !look.logY ? 0 : range.empty() ? 0.1 : range.low / 10;
    const Names names = namesOf(series);
    auto* const bars = new QHorizontalBarSeries;
    // Bars are drawn from the bottom upwards; the first is to stand on top.
    for (std::size_t s = series.size(); s-- > 0;) {
        auto* const set = new QBarSet(names.own[s]);
        for (std::size_t i = count; i-- > 0;) {
            const double value = series[s]->y[i];
            plot.leftOut += fits(value) ? 0 : 1;
            *set << (fits(value) ? value : nothing);
        }
        set->setBrush(barBrush(s, look.palette));
        set->setPen(QPen(barBrush(s, look.palette).color(), 1));
        bars->append(set);
    }
    plot.chart->addSeries(bars);
    QStringList labels = labelsOf(*series[0], count);
    std::reverse(labels.begin(), labels.end());
    auto* const categories = new QBarCategoryAxis;
    categories->append(labels);
    QAbstractAxis* const values = valueAxis(range, look.logY, true);
    values->setTitleText(withUnit(series[0]->yTitle, series[0]->yUnit));
    plot.chart->addAxis(categories, Qt::AlignLeft);
    plot.chart->addAxis(values, Qt::AlignTop); // in sight also where there are many bars
    bars->attachAxis(categories);
    bars->attachAxis(values);
    plot.height = static_cast<int>(count) * (kBar * static_cast<int>(series.size()) + 8) + kAround;
}

} // namespace

std::vector<std::vector<std::size_t>> chartGroups(const std::vector<Series>& series) {
    std::vector<std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (groups.empty() || !belongTogether(series[groups.back().front()], series[i]))
            groups.emplace_back();
        groups.back().push_back(i);
    }
    return groups;
}

QString plotTitle(const std::vector<const Series*>& series) {
    if (series.size() == 1) return inOwnWords(series[0]->title);
    const Names names = namesOf(series);
    QString title = names.before + withUnit(series[0]->yTitle, series[0]->yUnit);
    return names.behind.isEmpty() ? title : title + names.behind;
}

Plot makePlot(const std::vector<const Series*>& series, const PlotLook& look) {
    Plot plot;
    plot.chart = new QChart;
    QChart& chart = *plot.chart;
    chart.setTitle(plotTitle(series));
    if (series[0]->kind == PlotKind::bar)
        addBars(plot, series, look);
    else
        addCurves(plot, series, look);
    const QColor ink = look.palette.color(QPalette::Text);
    chart.setBackgroundBrush(look.palette.color(QPalette::Base));
    chart.setBackgroundRoundness(0);
    chart.setTitleBrush(ink);
    chart.legend()->setVisible(series.size() > 1);
    const bool bars = series[0]->kind == PlotKind::bar;
    chart.legend()->setAlignment(bars ? Qt::AlignTop : Qt::AlignBottom);
    chart.legend()->setReverseMarkers(bars); // the bars were put in from below
    if (!bars) chart.legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
    chart.setMargins(QMargins(6, 6, 12, 6));
    chart.layout()->setContentsMargins(0, 0, 0, 0);
    chart.legend()->setLabelColor(ink);
    chart.legend()->setShowToolTips(true);
    for (QAbstractAxis* axis : chart.axes())
        paintAxis(axis, look);
    return plot;
}

QByteArray plotSvg(const std::vector<const Series*>& series, bool logX, bool logY) {
    PlotLook look;
    look.palette = paperPalette();
    look.logX = logX;
    look.logY = logY;
    QGraphicsScene scene;
    const Plot plot = makePlot(series, look);
    scene.addItem(plot.chart); // and owns it
    const QSizeF size(800, std::max(480, plot.height));
    plot.chart->resize(size);
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF({0, 0}, size));
    // The letters were laid out for the screen: drawn for another one they would overlap.
    generator.setResolution(
        static_cast<int>(QGuiApplication::primaryScreen()->logicalDotsPerInch()));
    generator.setTitle(plotTitle(series));
    QPainter painter(&generator);
    scene.render(&painter, QRectF({0, 0}, size), QRectF({0, 0}, size));
    painter.end();
    return buffer.data();
}

} // namespace cutwater::editor
