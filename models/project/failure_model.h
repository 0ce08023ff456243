// SPDX-License-Identifier: GPL-3.0-or-later
// How often a thing fails: the kind of model, the clock it runs on, and its numbers by role.
#pragma once

#include "models/project/quantity.h"

#include <optional>
#include <string_view>
#include <vector>

namespace cutwater::project {

enum class ModelKind {
    none,        // not quantified
    probability, // a constant probability
    mission,     // failure rate over a mission, no repair
    repairable,  // failure rate and mean time to repair, failures are seen at once
    tested,      // dormant: failure rate, found only by a periodic test
    perDemand,   // probability that it fails when asked
    weibull,     // ageing over a mission
    frequency,   // an initiating event: how often it happens, not whether it is there
};

// Which count makes the thing older. A rate "per start" is not a rate per hour: the tool must ask.
enum class Clock { unstated, calendarHour, firingHour, start, demand };

enum class Role {
    probability,  // 0..1, number, per start or per demand
    rate,         // >= 0, a rate, or a time > 0 (then it is the mean time to failure)
    mission,      // >= 0, time
    repair,       // mean time to repair, > 0, time
    interval,     // between tests, > 0, time
    firstTest,    // time of the first test, >= 0, time
    testDuration, // out of service for the test, >= 0, time
    coverage,     // share of the failures that the test finds, 0..1, number
    shape,        // Weibull shape > 0, number
    scale,        // Weibull characteristic life > 0, time
    location,     // failure-free time >= 0, time
    frequency,    // >= 0, a rate or per start
};

struct RoleFacts {
    Role role;
    std::string_view word; // in the file: "rate", "first-test" ...
    std::string_view sentence;
    std::vector<Dimension> dimensions; // allowed ones, the usual one first
};

struct ModelFacts {
    ModelKind kind;
    std::string_view word; // in the file
    std::string_view sentence;
    std::vector<Role> required;
    std::vector<Role> optional;
};

struct ClockFacts {
    Clock clock;
    std::string_view word; // in the file: "calendar-hour", "firing-hour", "start", "demand"
    std::string_view sentence;
};

const std::vector<RoleFacts>& allRoles();
const std::vector<ModelFacts>& allModels();
const std::vector<ClockFacts>& allClocks();
const RoleFacts& facts(Role role);
const ModelFacts& facts(ModelKind kind);
const ClockFacts& facts(Clock clock);
std::optional<Role> roleFromWord(std::string_view word);
std::optional<ModelKind> modelFromWord(std::string_view word);
std::optional<Clock> clockFromWord(std::string_view word);

struct Assignment {
    Role role = Role::probability;
    Quantity quantity;
    bool operator==(const Assignment&) const = default;
};

struct FailureModel {
    ModelKind kind = ModelKind::none;
    Clock clock = Clock::unstated;
    std::vector<Assignment> numbers; // in the order of Role, one per role
    std::string lastTest;            // ISO date, tested models only; empty where unknown
    SourceLine line;
    Kept kept;

    const Quantity* find(Role role) const; // null where it is not given
    void set(Role role, Quantity quantity);
    bool operator==(const FailureModel&) const = default;
};

} // namespace cutwater::project
