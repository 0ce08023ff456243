// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/judge.h"

#include <algorithm>
#include <fmt/format.h>

namespace cutwater::project {

namespace {

bool contains(const std::vector<Role>& roles, Role role) {
    return std::find(roles.begin(), roles.end(), role) != roles.end();
}

Range rangeOf(Role role, Dimension dimension) {
    switch (role) {
    case Role::probability:
    case Role::coverage: return Range::chance;
    // As a time it is the mean time to failure.
    case Role::rate: return dimension == Dimension::time ? Range::positive : Range::notNegative;
    case Role::repair:
    case Role::interval:
    case Role::shape:
    case Role::scale: return Range::positive;
    case Role::mission:
    case Role::firstTest:
    case Role::testDuration:
    case Role::location:
    case Role::frequency: return Range::notNegative;
    }
    return Range::any;
}

// Numbers that the clock counts for: how soon it fails, not how long a test takes.
bool runsOnTheClock(Role role) {
    return role == Role::probability || role == Role::rate || role == Role::scale ||
           role == Role::frequency;
}

std::string wordsOf(const std::vector<Role>& required, const std::vector<Role>& optional) {
    std::vector<std::string_view> words;
    for (Role role : required)
        words.push_back(facts(role).word);
    for (Role role : optional)
        words.push_back(facts(role).word);
    return fmt::format("{}", fmt::join(words, ", "));
}

} // namespace

void Judge::clock(const FailureModel& model, const Assignment& number, const Quantity& resolved,
                  const Place& place) {
    if (model.clock == Clock::unstated || !runsOnTheClock(number.role)) return;
    const UnitFacts& unit = facts(resolved.unit);
    const bool hours = model.clock == Clock::calendarHour || model.clock == Clock::firingHour;
    const bool counted =
        unit.dimension == Dimension::perStart || unit.dimension == Dimension::perDemand;
    const bool timed = unit.dimension == Dimension::rate || unit.dimension == Dimension::time;
    if (hours && counted)
        error(place,
              fmt::format("{} is given {}, but the clock counts hours ({})", place.words(),
                          unit.words, facts(model.clock).word),
              unit.dimension == Dimension::perStart
                  ? "set the clock to start, or give it per hour"
                  : "set the clock to demand, or give it per hour");
    else if (!hours && timed)
        error(place,
              fmt::format("{} is given in hours or per hour ({}), but the clock counts each {}",
                          place.words(), unit.symbol, facts(model.clock).word),
              "set the clock to calendar-hour or firing-hour, or change the unit");
    else if ((model.clock == Clock::start && unit.dimension == Dimension::perDemand) ||
             (model.clock == Clock::demand && unit.dimension == Dimension::perStart))
        warn(place,
             fmt::format("{} is given {}, but the clock counts each {}", place.words(), unit.words,
                         facts(model.clock).word),
             "make sure that each start is a demand, and use one of the two words");
}

void Judge::model(const FailureModel& model, const Place& owner) {
    const Place place = owner.with("failure model", model.line.number);
    const ModelFacts& known = facts(model.kind);
    if (model.kind == ModelKind::none && !model.numbers.empty())
        error(place, fmt::format("{} has numbers but no kind", place.words()),
              "choose its kind, or delete the numbers");
    for (Role role : known.required)
        if (!model.find(role))
            error(place,
                  fmt::format("{} ({}) has no {}", place.words(), known.word, facts(role).word),
                  fmt::format("enter its {}: {}", facts(role).word, facts(role).sentence));
    bool timed = false;
    for (std::size_t i = 0; i < model.numbers.size(); ++i) {
        const Assignment& number = model.numbers[i];
        const RoleFacts& role = facts(number.role);
        const Place here = owner.with(role.word, number.quantity.line.number);
        if (model.find(number.role) != &number.quantity)
            error(here, fmt::format("{} is given twice", here.words()), "keep one of them");
        if (model.kind != ModelKind::none && !contains(known.required, number.role) &&
            !contains(known.optional, number.role))
            error(here,
                  fmt::format("{} means nothing to the failure model {}", here.words(), known.word),
                  fmt::format("delete it, or use another kind (this one takes {})",
                              wordsOf(known.required, known.optional)));
        const Quantity* resolved = index.resolved(number.quantity);
        const Dimension dimension = resolved ? facts(resolved->unit).dimension : Dimension::number;
        quantity(number.quantity, here, role.dimensions, rangeOf(number.role, dimension));
        if (resolved) {
            clock(model, number, *resolved, here);
            timed = timed || (runsOnTheClock(number.role) && number.role != Role::probability &&
                              (dimension == Dimension::rate || dimension == Dimension::time));
        }
    }
    if (model.clock == Clock::unstated && timed)
        warn(place, fmt::format("{} does not say which clock it runs on", place.words()),
             "state calendar-hour or firing-hour: a burner that fires a third of the time ages a "
             "third as fast on the calendar");
    const Quantity* interval = model.find(Role::interval);
    const Quantity* duration = model.find(Role::testDuration);
    interval = interval ? index.resolved(*interval) : nullptr;
    duration = duration ? index.resolved(*duration) : nullptr;
    const auto isTime = [](const Quantity* given) {
        return given && facts(given->unit).dimension == Dimension::time;
    };
    if (isTime(interval) && isTime(duration) && inBaseUnits(*duration) >= inBaseUnits(*interval) &&
        inBaseUnits(*interval) > 0)
        error(owner.with("test-duration", duration->line.number),
              fmt::format("a test of {} lasts as long as the interval between two tests",
                          owner.words()),
              "enter a shorter test or a longer interval");
    if (model.lastTest.empty()) return;
    const Place test = owner.with("last-test", model.line.number);
    date(model.lastTest, test);
    if (model.kind != ModelKind::tested)
        warn(test,
             fmt::format("{} is given, but its failure model is not one that is tested",
                         test.words()),
             "delete it, or use the failure model tested");
}

} // namespace cutwater::project
