// SPDX-License-Identifier: GPL-3.0-or-later
// What happened and what is being considered: common-cause groups, the failure log and its
// exposure, assessments.
#pragma once

#include "models/project/quantity.h"
#include "models/project/value.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::project {

enum class CommonCauseKind { beta, multipleGreekLetters, alpha, alphaStaggered };

std::string_view
word(CommonCauseKind kind); // as in the file: "beta", "mgl", "alpha", "alpha-staggered"
std::optional<CommonCauseKind> commonCauseKindFromWord(std::string_view word);

struct CommonCauseGroup {
    Id id;
    std::string name;
    CommonCauseKind kind = CommonCauseKind::beta;
    std::vector<Quantity> factors;  // beta; beta, gamma, delta ...; alpha-1, alpha-2 ...
    std::vector<Reference> members; // events
    std::string reason;             // why they fail together: fuel, room, feed, hand, design
    SourceLine line;
    Kept kept;
    bool operator==(const CommonCauseGroup&) const = default;
};

enum class CauseStatus { notFound, probable, confirmed };

std::string_view word(CauseStatus status); // "not-found", "probable", "confirmed"
std::optional<CauseStatus> causeStatusFromWord(std::string_view word);

struct LogEntry {
    Id id;
    std::string date;                   // ISO 8601: 2025-08-05
    std::string time;                   // HH:MM, local; empty where unknown
    std::string unit;                   // which machine: "Boiler 1"
    std::optional<double> runningHours; // reading of the hour meter
    std::optional<double> starts;       // reading of the start counter
    std::string phase;                  // "start", "firing", "stop", "test"
    Id component;                       // empty: not yet known
    Id mode;                            // empty: not yet known
    std::string found;                  // what was found to have failed, in the writer's words
    std::string indication;             // what was seen: alarms, lamps, readings
    std::string effect;
    Id topEvent; // empty: none
    std::optional<double> downtimeHours;
    std::string remedy;
    CauseStatus status = CauseStatus::notFound;
    std::string batch; // of fuel, or whatever else groups entries
    std::string remark;
    SourceNote source;
    SourceLine line;
    Kept kept;
    bool operator==(const LogEntry&) const = default;
};

// For how long the log watched a component: without it a count is not a rate.
struct Exposure {
    Id component;
    std::string from, to; // ISO dates, both included
    std::optional<double> calendarHours, firingHours, starts;
    SourceNote source;
    SourceLine line;
    Kept kept;
    bool operator==(const Exposure&) const = default;
};

struct ForcedEvent {
    Reference event;
    bool state = true;
    Kept kept;
    bool operator==(const ForcedEvent&) const = default;
};

enum class AssessmentState { draft, issued, closed };

std::string_view word(AssessmentState state);
std::optional<AssessmentState> assessmentStateFromWord(std::string_view word);

// A named what-if: a bypass, a jumper, a unit out of service. The tool lists what is lost; people
// decide.
struct Assessment {
    Id id;
    std::string name;
    AssessmentState state = AssessmentState::draft;
    std::vector<ForcedEvent> forced;
    std::optional<Quantity> duration;
    std::vector<std::string> measures; // compensating
    std::string reason;
    std::string decidedBy; // role, not a name
    std::string remark;
    SourceLine line;
    Kept kept;
    bool operator==(const Assessment&) const = default;
};

} // namespace cutwater::project
