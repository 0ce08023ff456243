// SPDX-License-Identifier: GPL-3.0-or-later
// What the FMEA worksheet needs beyond the failure modes themselves: the project's own rating
// scales, its risk matrix, the time that criticality is counted over, and what was decided to do.
#pragma once

#include "models/project/quantity.h"
#include "models/project/value.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::project {

enum class ActionState { open, underWay, done, proved, dropped };

std::string_view word(ActionState state); // "open", "under-way", "done", "proved", "dropped"
std::optional<ActionState> actionStateFromWord(std::string_view word);

// What is to be done about a failure mode. "Done" is not "proved": the effect has to be shown.
struct Action {
    std::string what;
    std::string owner; // a role: "chief engineer"
    std::string due;   // ISO date
    ActionState state = ActionState::open;
    std::string doneOn; // ISO date
    std::string proof;  // how it was shown that it helped, or why it was dropped
    SourceLine line;
    Kept kept;
    bool operator==(const Action&) const = default;
};

// Where a component came from, so that it can be told when the library has moved on.
struct LibraryOrigin {
    std::string library;  // id of the library
    std::string type;     // id of the component type in it
    std::string revision; // of the type when it was taken
    Kept kept;
    bool operator==(const LibraryOrigin&) const = default;
};

// One step of a rating scale. Occurrence: `limit` is the highest frequency per year that still has
// this rating; none on the last step.
struct RatingLevel {
    std::optional<int> rating; // 1..10
    std::string word;
    std::string meaning;
    std::optional<double> limit; // per year, > 0; occurrence only
    SourceLine line;
    Kept kept;
    bool operator==(const RatingLevel&) const = default;
};

// One step of an axis of the risk matrix.
struct RiskLevel {
    std::optional<int> index;
    std::string word;
    std::string meaning;
    // Frequency: events per ship-year; severity: equivalent fatalities. > 0.
    std::optional<double> value;
    SourceLine line;
    Kept kept;
    bool operator==(const RiskLevel&) const = default;
};

// What the owner of the matrix calls a risk index from `from` on.
struct RiskBand {
    std::optional<int> from;
    std::string word;
    std::string meaning;
    SourceLine line;
    Kept kept;
    bool operator==(const RiskBand&) const = default;
};

// Risk index = frequency index + severity index. Empty: the IMO one counts (models/worksheet).
struct RiskMatrix {
    std::string name;
    std::vector<RiskLevel> frequencies;
    std::vector<RiskLevel> severities;
    std::vector<RiskBand> bands;
    SourceNote source;
    SourceLine line;
    Kept kept;
    bool empty() const { return frequencies.empty() && severities.empty() && bands.empty(); }
    bool operator==(const RiskMatrix&) const = default;
};

struct Worksheet {
    std::optional<Quantity> operatingTime; // t of the criticality number, > 0, time
    // Of each scale: empty means that the standard one counts (models/worksheet).
    std::vector<RatingLevel> severityScale, occurrenceScale, detectionScale;
    RiskMatrix matrix;
    bool operator==(const Worksheet&) const = default;
};

} // namespace cutwater::project
