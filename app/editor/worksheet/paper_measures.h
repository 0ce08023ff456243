// SPDX-License-Identifier: GPL-3.0-or-later
// Measures of the printed worksheet, in points. Private to the folder.
#pragma once

#include "app/editor/worksheet/paper.h"

#include <QFontMetricsF>

namespace cutwater::editor::paper {

inline constexpr double kText = 7.5;   // of cells: readable on paper
inline constexpr double kHead = 7.5;   // of headings
inline constexpr double kTitle = 11;   // of the project
inline constexpr double kWords = 8.5;  // of cautions
inline constexpr double kPad = 2.5;    // around the text of a cell
inline constexpr double kGroup = 14;   // height of a group's head
inline constexpr double kTop = 44;     // room above the table: project, mode, date
inline constexpr double kHeading = 22; // height of the headings of the columns
inline constexpr double kFoot = 26;    // room below: page and caution

QFont fontOf(const PaperOrder& order, double points, bool bold);
// Metrics of the font at 100 dots: to be scaled.
QFontMetricsF measure(const QFont& font);
double textHeight(const QFontMetricsF& hundred, double points, const QString& text, double width);
QString paperText(const PaperOrder& order, int row, int column);

} // namespace cutwater::editor::paper
