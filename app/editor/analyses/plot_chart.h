// SPDX-License-Identifier: GPL-3.0-or-later
// Series of a result as a chart: bars, curves and steps, on plain or logarithmic axes.
#pragma once

#include "plugins/sdk/result.h"

#include <QByteArray>
#include <QPalette>
#include <QString>

#include <vector>

QT_FORWARD_DECLARE_CLASS(QChart)

namespace cutwater::editor {

// Positions in `series` that belong into one chart: those that follow each other, are of one kind,
// and measure the same along both axes (of bars: over the same labels).
std::vector<std::vector<std::size_t>> chartGroups(const std::vector<sdk::Series>& series);

struct PlotLook {
    QPalette palette;
    bool logX = false, logY = false;
};

struct Plot {
    QChart* chart = nullptr; // the caller's
    std::size_t leftOut = 0; // points that a logarithmic axis has no place for
    int height = 0;          // pixels that it needs to be readable; 0: any
};

// Series are told apart by colour and by line or hatching.
Plot makePlot(const std::vector<const sdk::Series*>& series, const PlotLook& look);

QString plotTitle(const std::vector<const sdk::Series*>& series);

// The chart as a picture for papers: dark on white, whatever the palette.
QByteArray plotSvg(const std::vector<const sdk::Series*>& series, bool logX, bool logY);

} // namespace cutwater::editor
