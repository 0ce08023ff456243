// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/failure_model.h"

#include <algorithm>
#include <utility>

namespace cutwater::project {

namespace {

template <typename Facts, typename Value>
std::optional<Value> fromWord(const std::vector<Facts>& all, Value Facts::*value,
                              std::string_view word) {
    for (const Facts& one : all)
        if (one.word == word) return one.*value;
    return std::nullopt;
}

} // namespace

// The three tables stand in the order of their enumerations, so that facts() is a look-up.

const std::vector<RoleFacts>& allRoles() {
    using enum Dimension;
    static const std::vector<RoleFacts> roles = {
        {Role::probability,
         "probability",
         "chance that it has failed or fails when asked, 0 to 1",
         {number, perStart, perDemand}},
        {Role::rate, "rate", "failures per hour, or the mean time to failure", {rate, time}},
        {Role::mission, "mission", "how long it must work", {time}},
        {Role::repair, "repair", "mean time to repair", {time}},
        {Role::interval, "interval", "time between two tests", {time}},
        {Role::firstTest, "first-test", "time of the first test", {time}},
        {Role::testDuration, "test-duration", "how long a test takes it out of service", {time}},
        {Role::coverage, "coverage", "share of the failures that the test finds, 0 to 1", {number}},
        {Role::shape,
         "shape",
         "Weibull shape: below 1 early failures, 1 chance, above 1 ageing",
         {number}},
        {Role::scale, "scale", "Weibull characteristic life: 63.2 % have failed by then", {time}},
        {Role::location, "location", "time in which nothing fails yet", {time}},
        {Role::frequency, "frequency", "how often it happens", {rate, perStart}},
    };
    return roles;
}

const std::vector<ModelFacts>& allModels() {
    using enum Role;
    static const std::vector<ModelFacts> models = {
        {ModelKind::none, "none", "not quantified", {}, {}},
        {ModelKind::probability, "probability", "a constant probability", {probability}, {}},
        {ModelKind::mission,
         "mission",
         "fails at a constant rate during the mission and is not repaired",
         {rate},
         {mission}},
        {ModelKind::repairable,
         "repairable",
         "fails at a constant rate, is seen at once and repaired",
         {rate, repair},
         {mission}},
        {ModelKind::tested,
         "tested",
         "fails unseen at a constant rate and is found only by a periodic test",
         {rate, interval},
         {mission, repair, firstTest, testDuration, coverage}},
        {ModelKind::perDemand,
         "per-demand",
         "fails with a fixed probability when asked",
         {probability},
         {}},
        {ModelKind::weibull,
         "weibull",
         "ages during the mission after Weibull and is not repaired",
         {shape, scale},
         {mission, location}},
        {ModelKind::frequency,
         "frequency",
         "an initiating event: how often it happens",
         {frequency},
         {}},
    };
    return models;
}

const std::vector<ClockFacts>& allClocks() {
    static const std::vector<ClockFacts> clocks = {
        {Clock::unstated, "unstated", "nobody has said what makes it older"},
        {Clock::calendarHour, "calendar-hour", "it ages with every hour on the calendar"},
        {Clock::firingHour, "firing-hour", "it ages only while the burner fires"},
        {Clock::start, "start", "it ages with every start"},
        {Clock::demand, "demand", "it ages with every demand"},
    };
    return clocks;
}

const RoleFacts& facts(Role role) {
    return allRoles()[static_cast<std::size_t>(role)];
}
const ModelFacts& facts(ModelKind kind) {
    return allModels()[static_cast<std::size_t>(kind)];
}
const ClockFacts& facts(Clock clock) {
    return allClocks()[static_cast<std::size_t>(clock)];
}

std::optional<Role> roleFromWord(std::string_view word) {
    return fromWord(allRoles(), &RoleFacts::role, word);
}
std::optional<ModelKind> modelFromWord(std::string_view word) {
    return fromWord(allModels(), &ModelFacts::kind, word);
}
std::optional<Clock> clockFromWord(std::string_view word) {
    return fromWord(allClocks(), &ClockFacts::clock, word);
}

const Quantity* FailureModel::find(Role role) const {
    for (const Assignment& number : numbers)
        if (number.role == role) return &number.quantity;
    return nullptr;
}

void FailureModel::set(Role role, Quantity quantity) {
    auto place = std::find_if(numbers.begin(), numbers.end(),
                              [role](const Assignment& number) { return number.role >= role; });
    if (place != numbers.end() && place->role == role)
        place->quantity = std::move(quantity);
    else
        numbers.insert(place, Assignment{role, std::move(quantity)});
}

} // namespace cutwater::project
