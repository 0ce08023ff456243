// SPDX-License-Identifier: GPL-3.0-or-later
// A chance in words that say the same to everybody.
#pragma once

#include "app/editor/answers/live_answer.h"

#include <QCoreApplication>
#include <QString>

namespace cutwater::editor {

class FigureWords {
    Q_DECLARE_TR_FUNCTIONS(FigureWords)

public:
    // "1.250e-03", as every table shows it.
    static QString number(double probability);
    // "1.250e-03", "1.000e-03 to 1.250e-03", or "at most 1.250e-03".
    static QString figure(const LiveFigure& figure);
    // "about 1 in 800"; of a figure that is not exact its upper end.
    static QString oneIn(const LiveFigure& figure);
    // "higher: 2.1 times the figure before (5.952e-04)". Empty where there is nothing to compare.
    static QString change(const LiveFigure& before, const LiveFigure& now);
};

} // namespace cutwater::editor
