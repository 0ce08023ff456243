// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/event_model.h"

#include <cmath>
#include <fmt/format.h>
#include <initializer_list>
#include <limits>
#include <utility>

namespace cutwater::reliability {

namespace {

using project::Clock;
using project::Dimension;
using project::Event;
using project::FailureModel;
using project::ModelKind;
using project::Outcome;
using project::Problem;
using project::Problems;
using project::Quantity;
using project::Role;
using project::Severity;

// Above this the usual approximation rate x interval / 2 is more than 3 % too high.
constexpr double kSmallRateTimesInterval = 0.1;
constexpr double kInfinity = std::numeric_limits<double>::infinity();

// Reads a model's numbers in hours and collects what is wrong with them, so that the formulas below
// read as in a book: a number that could not be had is 0 and the caller stops at `problems`.
class Reader {
public:
    Reader(const project::Index& index, const Event& event, const FailureModel& model)
        : m_index(index), m_event(event), m_model(model) {}

    bool has(Role role) const { return m_model.find(role) != nullptr; }

    double probability() { return number(Role::probability, 0, 1); }
    double coverage() { return has(Role::coverage) ? number(Role::coverage, 0, 1) : 1.0; }
    double shape() {
        const double value = number(Role::shape, 0, kInfinity);
        if (problems.empty() && value == 0)
            complain(Role::shape, "is zero", "give a shape above zero");
        return value;
    }

    // Per hour; a mean time to failure is turned over.
    double rate() {
        const Quantity* quantity = resolve(Role::rate);
        if (!quantity) return 0;
        const Dimension dimension = project::facts(quantity->unit).dimension;
        if (quantity->unit == project::Unit::unstated ||
            (dimension != Dimension::rate && dimension != Dimension::time)) {
            complain(Role::rate, "has a unit that is neither a rate nor a time",
                     "give it per hour or per year, or as a mean time to failure");
            return 0;
        }
        const double value = project::inBaseUnits(*quantity);
        if (!(value >= 0) || std::isinf(value) || (dimension == Dimension::time && value == 0)) {
            complain(Role::rate, fmt::format("is {}", value),
                     dimension == Dimension::time ? "give a time above zero"
                                                  : "give a rate of zero or more");
            return 0;
        }
        return dimension == Dimension::time ? 1 / value : value;
    }

    // Hours. `positive`: zero makes no sense.
    double time(Role role, bool positive) {
        const Quantity* quantity = resolve(role);
        if (!quantity) return 0;
        if (project::facts(quantity->unit).dimension != Dimension::time) {
            complain(role, "has a unit that is not a time", "give it in hours, days or years");
            return 0;
        }
        const double value = project::inBaseUnits(*quantity);
        if (!(value >= 0) || std::isinf(value) || (positive && value == 0)) {
            complain(role, fmt::format("is {} h", value),
                     positive ? "give a time above zero" : "give a time of zero or more");
            return 0;
        }
        return value;
    }

    void complain(Role role, const std::string& what, const std::string& remedy) {
        const Quantity* quantity = m_model.find(role);
        problem(fmt::format("the {} {}", project::facts(role).word, what), remedy,
                quantity && quantity->line.number ? quantity->line.number : m_model.line.number);
    }

    void problem(std::string what, std::string remedy, int line) {
        problems.push_back(Problem{Severity::error, std::move(what), std::move(remedy),
                                   fmt::format("event {}", m_event.id),
                                   line ? line : m_event.line.number});
    }

    Problems problems;

private:
    double number(Role role, double low, double high) {
        const Quantity* quantity = resolve(role);
        if (!quantity) return 0;
        const double value = project::inBaseUnits(*quantity);
        if (!(value >= low && value <= high) || std::isinf(value)) {
            complain(role, fmt::format("is {}", value),
                     std::isinf(high) ? fmt::format("give a number of {} or more", low)
                                      : fmt::format("give a number from {} to {}", low, high));
            return 0;
        }
        return value;
    }

    const Quantity* resolve(Role role) {
        const Quantity* own = m_model.find(role);
        if (!own) {
            complain(role, "is missing", "give it");
            return nullptr;
        }
        const Quantity* quantity = m_index.resolved(*own);
        if (!quantity)
            complain(role,
                     fmt::format("names the parameter {}, which does not exist", own->parameter),
                     "name a parameter of the project or give a value");
        return quantity;
    }

    const project::Index& m_index;
    const Event& m_event;
    const FailureModel& m_model;
};

// The mission time in hours: the model's own, else the caller's, else nothing.
std::optional<double> missionTime(Reader& read, std::optional<double> fallback) {
    if (read.has(Role::mission)) return read.time(Role::mission, false);
    if (fallback && !(*fallback >= 0))
        read.problem(fmt::format("the mission time of the analysis is {} h", *fallback),
                     "give a time of zero or more", 0);
    return fallback;
}

void needMission(Reader& read, const std::optional<double>& mission) {
    if (!mission)
        read.problem("the failure model has no mission time",
                     "give the model a mission time or the analysis one", 0);
}

EventProbability missionProbability(Reader& read, std::optional<double> fallback) {
    const double rate = read.rate();
    const auto mission = missionTime(read, fallback);
    needMission(read, mission);
    return {
        missionUnreliability(rate, mission.value_or(0)), "failed by the end of the mission", {}};
}

EventProbability repairableProbability(Reader& read, std::optional<double> fallback) {
    const double rate = read.rate();
    const double repair = read.time(Role::repair, true);
    const auto mission = missionTime(read, fallback);
    if (!read.problems.empty()) return {};
    return {repairableUnavailability(rate, repair, mission.value_or(kInfinity)),
            mission ? "down at the end of the mission, working at its start"
                    : "share of the time under repair, in the long run",
            {}};
}

EventProbability testedProbability(Reader& read, std::optional<double> fallback) {
    TestedPart part;
    part.rate = read.rate();
    part.interval = read.time(Role::interval, true);
    part.coverage = read.coverage();
    if (read.has(Role::testDuration)) part.testDuration = read.time(Role::testDuration, false);
    if (read.has(Role::repair)) part.repair = read.time(Role::repair, true);
    if (part.coverage < 1) {
        const auto lifetime = missionTime(read, fallback);
        part.lifetime = lifetime.value_or(0);
        if (!lifetime)
            read.problem("the test does not find all failures, and there is no mission time after "
                         "which the others are found",
                         "give the mission time from one complete overhaul to the next", 0);
    }
    const double firstTest = read.has(Role::firstTest) ? read.time(Role::firstTest, false) : 0.0;
    if (!read.problems.empty()) return {};

    EventProbability result;
    if (part.testDuration == 0 && part.repair == 0 && part.coverage == 1) {
        result.value = testedMeanUnavailability(part.rate, part.interval);
        result.how = "mean over the test interval";
    } else {
        result.value = testedCycleUnavailability(part);
        result.how = part.coverage < 1
                         ? "mean over the test cycle, and failures that the test does not find"
                         : "mean over the test cycle";
    }
    const double load = part.rate * part.interval;
    if (load > kSmallRateTimesInterval)
        result.warnings.push_back(fmt::format(
            "rate x interval is {:.2g}: the part is likely to be found failed; the exact mean is "
            "used, rate x interval / 2 would give {:.2g}; test more often",
            load, load / 2));
    if (part.coverage < 1 && part.lifetime < part.interval)
        result.warnings.push_back(
            "the mission time is shorter than the test interval, so that no test falls into it");
    if (firstTest > part.interval)
        result.warnings.push_back(fmt::format(
            "the first test comes after {:.6g} h, later than the interval: until then the part is "
            "down more often than this mean says",
            firstTest));
    return result;
}

EventProbability weibullProbability(Reader& read, std::optional<double> fallback) {
    const double shape = read.shape();
    const double scale = read.time(Role::scale, true);
    const double location = read.has(Role::location) ? read.time(Role::location, false) : 0.0;
    const auto mission = missionTime(read, fallback);
    needMission(read, mission);
    if (!read.problems.empty()) return {};
    return {weibullUnreliability(shape, scale, location, *mission),
            "failed by the end of the mission, new at its start",
            {}};
}

void warnOfClock(const FailureModel& model, EventProbability& result) {
    switch (model.clock) {
    case Clock::unstated:
        result.warnings.push_back("no clock is stated: the times are taken as calendar hours");
        break;
    case Clock::firingHour:
        if (model.find(Role::mission) || model.kind == ModelKind::repairable) break;
        result.warnings.push_back(model.kind == ModelKind::tested
                                      ? "the clock is firing hours: the test interval is taken as "
                                        "firing hours, not calendar hours"
                                      : "the clock is firing hours: the mission time of the "
                                        "analysis is taken as firing hours");
        break;
    case Clock::start:
    case Clock::demand:
        result.warnings.push_back(fmt::format(
            "the clock is '{}' but the model counts hours: use a probability per {} instead",
            project::facts(model.clock).word, project::facts(model.clock).word));
        break;
    case Clock::calendarHour: break;
    }
}

bool countsHours(ModelKind kind) {
    return kind == ModelKind::mission || kind == ModelKind::repairable ||
           kind == ModelKind::tested || kind == ModelKind::weibull;
}

} // namespace

Outcome<EventProbability> probabilityOf(const project::Project&, const project::Index& index,
                                        const Event& event, std::optional<double> mission) {
    if (event.kind == project::EventKind::house)
        return EventProbability{event.state ? 1.0 : 0.0,
                                event.state ? "house event, set true" : "house event, set false",
                                {}};
    const FailureModel* model = index.modelOf(event);
    if (!model)
        return Problem{Severity::error,
                       fmt::format("the failure mode {} does not exist", event.mode),
                       "name a failure mode of the project", fmt::format("event {}", event.id),
                       event.line.number};

    Reader read(index, event, *model);
    EventProbability result;
    switch (model->kind) {
    case ModelKind::none:
        read.problem("there is no failure model, so it has no probability",
                     "give a probability or a rate", model->line.number);
        break;
    case ModelKind::frequency:
        read.problem("the failure model says how often it happens, not whether it is there",
                     "ask for the frequency, or give a model with a probability",
                     model->line.number);
        break;
    case ModelKind::probability: result = {read.probability(), "probability as given", {}}; break;
    case ModelKind::perDemand:
        result = {read.probability(),
                  model->clock == Clock::start ? "probability per start" : "probability per demand",
                  {}};
        break;
    case ModelKind::mission: result = missionProbability(read, mission); break;
    case ModelKind::repairable: result = repairableProbability(read, mission); break;
    case ModelKind::tested: result = testedProbability(read, mission); break;
    case ModelKind::weibull: result = weibullProbability(read, mission); break;
    }
    if (!read.problems.empty()) return read.problems;
    if (countsHours(model->kind)) warnOfClock(*model, result);
    return result;
}

} // namespace cutwater::reliability
