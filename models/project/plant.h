// SPDX-License-Identifier: GPL-3.0-or-later
// The plant: what it consists of, how each part fails, and who supplies whom.
#pragma once

#include "models/project/failure_model.h"
#include "models/project/value.h"
#include "models/project/worksheet.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::project {

struct Component {
    Id id;
    std::string tag; // as on the drawing: "ET-1"; may be renamed, the id stays
    std::string name;
    std::string type; // "ignition electrodes": components of one type fail alike
    std::string function;
    std::string location;
    Id parent;                         // the plant breakdown; empty at the top
    std::vector<Reference> suppliedBy; // components whose loss takes this one with them
    // Of the item as a whole, lambda_p of MIL-STD-1629A; a rate, or a mean time to failure. Only
    // where its modes are shares of it (FailureMode::ratio).
    std::optional<Quantity> failureRate;
    std::optional<LibraryOrigin> origin;
    std::string remark;
    SourceLine line;
    Kept kept;
    bool operator==(const Component&) const = default;
};

// What to look at, how long it takes, and what the answer tells.
struct Check {
    std::string look;
    std::optional<double> minutes; // >= 0
    std::string tells;
    SourceLine line;
    Kept kept;
    bool operator==(const Check&) const = default;
};

// One row of the FMEA worksheet (IEC 60812); used in a tree it is a basic event.
struct FailureMode {
    Id id;
    Id component;
    std::string name; // what fails: "fouled"
    std::vector<std::string> causes;
    std::string localEffect;
    std::string nextEffect;   // on the next higher level
    std::string endEffect;    // on the plant
    std::string detection;    // how it is noticed: which alarm, where
    std::string compensation; // what makes up for it
    std::string provedBy;     // the test that proves the compensation
    std::string provedOn;     // when it last did; ISO date, empty where never or unknown
    bool dormant = false;     // nobody sees it until a test or a demand
    std::string severity;     // category of the project's own scale
    std::optional<int> severityRating, occurrenceRating, detectionRating; // 1..10
    std::optional<int> severityAfter, occurrenceAfter, detectionAfter;    // when the actions work
    std::string operatingMode;     // of the plant; empty: the project's
    std::optional<Quantity> ratio; // alpha: this mode's share of the component's failure rate, 0..1
    std::optional<Quantity> effectChance; // beta: chance that the mode has the end effect, 0..1
    FailureModel model;
    std::vector<Check> checks;
    std::vector<Action> actions;
    std::string libraryMode; // id of the mode in the library that the component came from
    std::string remark;
    SourceLine line;
    Kept kept;
    bool operator==(const FailureMode&) const = default;
};

enum class SupplyPath { feed, back }; // towards the load, or the return from it

std::string_view word(SupplyPath path); // as in the file: "feed", "return"
std::optional<SupplyPath> supplyPathFromWord(std::string_view word);

// One connection of the supply network, between two components. What it runs through (fuse,
// breaker, diode, terminal) is a list of components in the order of the flow, so that a device
// shared by two connections is seen to be shared.
struct Connection {
    Id id;
    std::string name;
    std::string medium; // "24 V DC", "230 V AC", "fuel oil", "control air", "signal"
    SupplyPath path = SupplyPath::feed;
    Id from;
    Id to;
    std::vector<Reference> through;
    std::optional<Quantity> capacity; // what it can carry
    SourceLine line;
    Kept kept;
    bool operator==(const Connection&) const = default;
};

} // namespace cutwater::project
