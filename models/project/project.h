// SPDX-License-Identifier: GPL-3.0-or-later
// Project: all that is known about a plant, as one value. A copy is a snapshot.
#pragma once

#include "models/project/history.h"
#include "models/project/plant.h"
#include "models/project/problem.h"
#include "models/project/tree.h"
#include "models/project/worksheet.h"

#include <string>
#include <utility>
#include <vector>

namespace cutwater::project {

struct Project {
    std::string name;
    std::string plant; // the ship or installation
    std::string description;
    std::string revision;
    std::string date;                  // ISO 8601
    std::string preparedBy, checkedBy; // roles or names, the user's business
    std::string operatingMode;         // of the plant, for the analyses as a whole
    std::vector<std::string> rules;    // which rule and edition the user works to, in his words
    std::vector<std::string> assumptions;
    std::vector<std::string> cautions; // added to the standing ones, never instead of them

    std::vector<Parameter> parameters;
    std::vector<Component> components;
    std::vector<FailureMode> modes;
    std::vector<Connection> connections;
    std::vector<Event> events;
    std::vector<Gate> gates;
    std::vector<TopEvent> tops;
    std::vector<CommonCauseGroup> commonCauses;
    std::vector<Exposure> exposures;
    std::vector<LogEntry> log;
    std::vector<Assessment> assessments;
    Worksheet worksheet;

    Kept kept;
    // What a newer file said about a section as a whole: its word ("events", "log"), and what is
    // kept.
    std::vector<std::pair<std::string, Kept>> keptInSections;
    // The file's minor version where it is newer than the reader's, so that it is saved under the
    // version that what is kept needs; else 0.
    int newerMinorVersion = 0;
    bool operator==(const Project&) const = default;
};

// Finds every problem in one pass, errors and warnings, in the order of the file. Runs in time
// linear in the size of the project but for sorting; uses no recursion.
Problems validate(const Project& project);

} // namespace cutwater::project
