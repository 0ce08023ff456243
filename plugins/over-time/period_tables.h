// SPDX-License-Identifier: GPL-3.0-or-later
// The tables and curves of one top event over a period.
#pragma once

#include "plugins/sdk/tree/courses.h"

namespace cutwater::over_time {

struct Walked {
    const sdk::tree::Solved& solved;
    const reliability::TopCourse& course;
    const reliability::PeriodFigures& figures;
};

sdk::Table figuresTable();
void addFigures(sdk::Table& table, const Walked& walked);

// The events that carry the top at its worst moment, the heaviest first; at most `most` of each
// top.
sdk::Table worstTable();
void addWorst(sdk::Result& result, sdk::Table& table, const project::Project& project,
              const project::Index& index, const Walked& walked, std::size_t most);

// Which event completes the failures of the top.
sdk::Table completedTable();
void addCompleted(sdk::Result& result, sdk::Table& table, const project::Project& project,
                  const project::Index& index, const Walked& walked, std::size_t most);

void addCurves(std::vector<sdk::Series>& series, const Walked& walked);

// "at 730 h, just before", for tables and sentences.
std::string momentText(double time, reliability::Side side, double end);

} // namespace cutwater::over_time
