// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/paper-report/plot_svg.h"

#include "plugins/paper-report/markup.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace cutwater::paper_report {
namespace {

constexpr double kBar = 13, kType = 8;
constexpr double kLabels = 190; // room for the labels of bars
constexpr double kSide = 66, kFoot = 36, kHead = 10, kRight = 16, kCurve = 220;
constexpr std::size_t kLetters = 42;

// From numbers to places; decades where it is logarithmic.
class Axis {
public:
    Axis(double low, double high, bool logarithmic, double from, double to)
        : m_log(logarithmic), m_from(from), m_to(to) {
        if (m_log) {
            m_low = std::floor(std::log10(low) + 1e-9);
            m_high = std::ceil(std::log10(high) - 1e-9);
            if (m_high <= m_low) m_high = m_low + 1;
            const double step = std::max(1.0, std::ceil((m_high - m_low) / 6));
            for (double at = m_low; at <= m_high + 1e-9; at += step)
                m_ticks.push_back(std::pow(10, at));
            return;
        }
        if (high <= low) high = low + (low == 0 ? 1 : std::abs(low));
        const double rough = (high - low) / 5;
        const double power = std::pow(10, std::floor(std::log10(rough)));
        double step = power;
        for (const double factor : {1.0, 2.0, 5.0, 10.0})
            if (power * factor >= rough) {
                step = power * factor;
                break;
            }
        m_low = std::floor(low / step + 1e-9) * step;
        m_high = std::ceil(high / step - 1e-9) * step;
        for (int i = 0; m_low + i * step <= m_high + step * 1e-6 && i < 20; ++i)
            m_ticks.push_back(std::abs(m_low + i * step) < step * 1e-9 ? 0 : m_low + i * step);
    }
    double place(double value) const {
        const double at = m_log ? (value > 0 ? std::log10(value) : m_low) : value;
        return m_from +
               (std::clamp(at, m_low, m_high) - m_low) / (m_high - m_low) * (m_to - m_from);
    }
    const std::vector<double>& ticks() const { return m_ticks; }
    std::string words(double tick) const {
        return m_log ? fmt::format("{:.0e}", tick) : fmt::format("{:.4g}", tick);
    }

private:
    bool m_log;
    double m_from, m_to, m_low = 0, m_high = 1;
    std::vector<double> m_ticks;
};

std::string text(double x, double y, const char* anchor, std::string_view words,
                 std::string_view more = {}) {
    return fmt::format("<text x=\"{:.1f}\" y=\"{:.1f}\" text-anchor=\"{}\"{}>{}</text>\n", x, y,
                       anchor, more, escaped(words));
}

std::string line(double x1, double y1, double x2, double y2, const char* ink) {
    return fmt::format("<line x1=\"{:.1f}\" y1=\"{:.1f}\" x2=\"{:.1f}\" y2=\"{:.1f}\" "
                       "stroke=\"{}\" stroke-width=\"0.6\"/>\n",
                       x1, y1, x2, y2, ink);
}

std::string whole(const std::string& title, double height, const std::string& inside) {
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}pt\" height=\"{1}pt\" "
        "viewBox=\"0 0 {0} {1}\" role=\"img\" font-family=\"DejaVu Sans, sans-serif\" "
        "font-size=\"{2}\">\n<title>{3}</title>\n"
        "<rect width=\"{0}\" height=\"{1}\" fill=\"#ffffff\"/>\n{4}</svg>\n",
        kPlotWidth, height, kType, escaped(title), inside);
}

std::string shortened(const std::string& words) {
    std::size_t letters = 0, at = 0;
    for (; at < words.size(); ++at)
        if ((static_cast<unsigned char>(words[at]) & 0xC0) != 0x80 && ++letters > kLetters) break;
    return at < words.size() ? words.substr(0, at) + "\u2026" : words;
}

std::string withUnit(const std::string& title, const std::string& unit) {
    return unit.empty() ? title : fmt::format("{} [{}]", title, unit);
}

// The numbers that can be drawn: finite, and above zero where the axis asks for it.
bool canBeDrawn(double value, bool logarithmic) {
    return std::isfinite(value) && (!logarithmic || value > 0);
}

PlotPicture bars(const sdk::Series& series) {
    const std::size_t all = std::min(series.x.size(), series.y.size());
    const std::size_t count = std::min(all, kMostBars);
    double low = std::numeric_limits<double>::infinity(), high = 0;
    for (std::size_t i = 0; i < count; ++i)
        if (canBeDrawn(series.y[i], series.logY)) {
            low = std::min(low, series.y[i]);
            high = std::max(high, series.y[i]);
        }
    if (!std::isfinite(low)) return {};
    const double bottom = kHead + kBar * static_cast<double>(count);
    const Axis axis(series.logY ? low / 1.001 : std::min(low, 0.0), high, series.logY, kLabels,
                    kPlotWidth - kRight);
    std::string inside;
    for (const double tick : axis.ticks()) {
        inside += line(axis.place(tick), kHead, axis.place(tick), bottom, "#bbbbbb");
        inside += text(axis.place(tick), bottom + 11, "middle", axis.words(tick));
    }
    for (std::size_t i = 0; i < count; ++i) {
        const double y = kHead + kBar * static_cast<double>(i);
        const std::string label =
            i < series.labels.size() ? series.labels[i] : fmt::format("{:g}", series.x[i]);
        inside += text(kLabels - 4, y + 9.5, "end", shortened(label));
        if (!canBeDrawn(series.y[i], series.logY)) continue;
        const double zero = series.logY ? kLabels : axis.place(0), to = axis.place(series.y[i]);
        inside +=
            fmt::format("<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{}\" "
                        "fill=\"#4f6d7a\"/>\n",
                        std::min(zero, to), y + 2, std::max(0.6, std::abs(to - zero)), kBar - 4);
    }
    inside += line(kLabels, kHead, kLabels, bottom, "#000000");
    inside += text((kLabels + kPlotWidth) / 2, bottom + 24, "middle",
                   withUnit(series.yTitle, series.yUnit));
    PlotPicture picture;
    picture.height = bottom + 30;
    picture.svg = whole(series.title, picture.height, inside);
    if (all > count) picture.remark = fmt::format("The first {} of {} bars.", count, all);
    return picture;
}

PlotPicture curve(const sdk::Series& series) {
    const std::size_t count = std::min(series.x.size(), series.y.size());
    constexpr double kNone = std::numeric_limits<double>::infinity();
    double lowX = kNone, highX = -kNone, lowY = kNone, highY = -kNone;
    for (std::size_t i = 0; i < count; ++i) {
        if (!std::isfinite(series.x[i]) || !canBeDrawn(series.y[i], series.logY)) continue;
        lowX = std::min(lowX, series.x[i]);
        highX = std::max(highX, series.x[i]);
        lowY = std::min(lowY, series.y[i]);
        highY = std::max(highY, series.y[i]);
    }
    if (!std::isfinite(lowX)) return {};
    const double right = kPlotWidth - kRight, bottom = kHead + kCurve;
    const Axis across(lowX, highX, false, kSide, right),
        up(lowY, highY, series.logY, bottom, kHead);
    std::string inside;
    for (const double tick : across.ticks()) {
        inside += line(across.place(tick), kHead, across.place(tick), bottom, "#dddddd");
        inside += text(across.place(tick), bottom + 11, "middle", across.words(tick));
    }
    for (const double tick : up.ticks()) {
        inside += line(kSide, up.place(tick), right, up.place(tick), "#dddddd");
        inside += text(kSide - 4, up.place(tick) + 3, "end", up.words(tick));
    }
    std::string points;
    double before = 0;
    bool open = false;
    for (std::size_t i = 0; i < count; ++i) {
        if (!std::isfinite(series.x[i]) || !canBeDrawn(series.y[i], series.logY)) {
            open = false; // a gap
            continue;
        }
        const double x = across.place(series.x[i]), y = up.place(series.y[i]);
        if (open && series.kind == sdk::PlotKind::step)
            points += fmt::format("L{:.1f} {:.1f}", x, before);
        points += fmt::format("{}{:.1f} {:.1f}", open ? 'L' : 'M', x, y);
        before = y;
        open = true;
    }
    inside += fmt::format("<path d=\"{}\" fill=\"none\" stroke=\"#1d3f58\" "
                          "stroke-width=\"1.4\"/>\n",
                          points);
    inside += line(kSide, kHead, kSide, bottom, "#000000");
    inside += line(kSide, bottom, right, bottom, "#000000");
    inside +=
        text((kSide + right) / 2, bottom + 25, "middle", withUnit(series.xTitle, series.xUnit));
    inside += text(12, kHead + kCurve / 2, "middle", withUnit(series.yTitle, series.yUnit),
                   fmt::format(" transform=\"rotate(-90 12 {:.1f})\"", kHead + kCurve / 2));
    PlotPicture picture;
    picture.height = bottom + kFoot;
    picture.svg = whole(series.title, picture.height, inside);
    return picture;
}

} // namespace

PlotPicture plotOf(const sdk::Series& series) {
    return series.kind == sdk::PlotKind::bar ? bars(series) : curve(series);
}

} // namespace cutwater::paper_report
