// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/plot_colours.h"

#include <array>

namespace cutwater::editor {
namespace {

// At least 4.5:1 against white and against the dark base.
constexpr std::array<QRgb, 5> kOnLight = {0xff005a8c, 0xffa33b00, 0xff2f6b1f, 0xff6b3fa0,
                                          0xff555555};
constexpr std::array<QRgb, 5> kOnDark = {0xff6fc3f2, 0xffffa766, 0xff8fd67a, 0xffc9a8f5,
                                         0xffc8c8c8};
constexpr std::array kLines = {Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine,
                               Qt::DashDotDotLine};
constexpr std::array kHatchings = {Qt::SolidPattern, Qt::BDiagPattern, Qt::Dense5Pattern,
                                   Qt::CrossPattern, Qt::HorPattern};

QColor colour(std::size_t series, const QPalette& palette) {
    const bool dark = palette.color(QPalette::Base).lightness() < 128;
    return QColor::fromRgb((dark ? kOnDark : kOnLight)[series % kOnLight.size()]);
}

} // namespace

QPen curvePen(std::size_t series, const QPalette& palette) {
    return {colour(series, palette), 2, kLines[series % kLines.size()]};
}

QBrush barBrush(std::size_t series, const QPalette& palette) {
    return {colour(series, palette), kHatchings[series % kHatchings.size()]};
}

QPalette paperPalette() {
    QPalette palette;
    palette.setColor(QPalette::Base, Qt::white);
    palette.setColor(QPalette::Text, Qt::black);
    return palette;
}

} // namespace cutwater::editor
