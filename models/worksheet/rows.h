// SPDX-License-Identifier: GPL-3.0-or-later
// The FMEA worksheet: a view of the project's failure modes with what follows from them. Nothing is
// stored here; one fact stands in one place, in the project.
#pragma once

#include "models/project/index.h"
#include "models/worksheet/criticality.h"
#include "models/worksheet/frequency.h"
#include "models/worksheet/risk_matrix.h"
#include "models/worksheet/scales.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::worksheet {

struct Row {
    std::size_t mode = 0;                          // position in project.modes
    const project::FailureMode* facts = nullptr;   // of the project that the sheet was made of
    const project::Component* component = nullptr; // null where there is none
    std::string place;                             // "Boiler 1 > burner > ignition electrodes"
    std::optional<int> rpn, rpnAfter; // after: with the ratings after action, where one is given
    Frequency frequency;
    std::optional<int> computedOccurrence; // what the frequency makes on the occurrence scale
    Criticality criticality;
    std::optional<double> itemCriticality; // Cr of its component within its severity
    std::optional<Placed> frequencyIndex;
    std::optional<int> severityIndex, riskIndex;
    std::vector<std::size_t> tops; // positions of the top events in whose tree it is
    std::string nextTest;          // ISO date: last test + interval; empty where one is missing
    bool dormant = false;          // said so, or found by tests only
    std::size_t openActions = 0;   // neither proved nor dropped
};

struct Sheet {
    std::vector<Row> rows;
    Scales scales;
    project::RiskMatrix matrix;
    OperatingTime time;
};

// Holds pointers into `project`, which has to outlive it unchanged.
Sheet sheetOf(const project::Project& project, const project::Index& index);

// Stable; what has no number comes last. `severity`: by the severity index, then the severity
// rating, then the criticality number.
enum class Order { file, severity, rpn, criticality, risk };
void sortRows(Sheet& sheet, Order order);

// What is missing for a row to be complete: "no end effect", "dormant without a test" ... Clauses.
std::vector<std::string> gapsOf(const Row& row);

// "Boiler 1 > burner": the names from the top of the plant down.
std::string placeOf(const project::Index& index, const project::Component& component);

// The day on which `interval` hours have gone by since `last`; empty where it is no date, or where
// the day is beyond the year 9999.
std::string dayAfter(const std::string& last, double hours);

// A due date before `today` (ISO) and not yet done.
bool isOverdue(const project::Action& action, std::string_view today);

} // namespace cutwater::worksheet
