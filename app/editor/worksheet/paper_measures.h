// SPDX-License-Identifier: GPL-3.0-or-later
// Measures of the printed worksheet, in points. Private to the folder.
#pragma once

#include "app/editor/worksheet/paper.h"

#include <QFont>

class QPainter;

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

// The font at 100 dots: to be scaled, for printers round small sizes.
QFont hundredOf(const QFont& font);
// Wrapped between words where that is possible. Draws where there is a painter.
double textHeight(const QFont& hundred, double points, const QString& text, double width,
                  QPainter* painter = nullptr, Qt::Alignment side = Qt::AlignLeft);
// Of the longest word.
double wordWidth(const QFont& hundred, double points, const QString& text);
QString paperText(const PaperOrder& order, int row, int column);

} // namespace cutwater::editor::paper
