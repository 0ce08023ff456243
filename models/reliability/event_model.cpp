// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/event_model.h"

#include "models/reliability/model_reader.h"

#include <cmath>
#include <fmt/format.h>
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

// The mission time in hours: the model's own, else the caller's, else nothing.
std::optional<double> missionTime(ModelReader& read, std::optional<double> fallback) {
    if (read.has(Role::mission)) return read.time(Role::mission, false);
    if (fallback && !(*fallback >= 0))
        read.problem(fmt::format("the mission time of the analysis is {} h", *fallback),
                     "give a time of zero or more", 0);
    return fallback;
}

void needMission(ModelReader& read, const std::optional<double>& mission) {
    if (!mission)
        read.problem("the failure model has no mission time",
                     "give the model a mission time or the analysis one", 0);
}

EventProbability missionProbability(ModelReader& read, std::optional<double> fallback) {
    const double rate = read.rate();
    const auto mission = missionTime(read, fallback);
    needMission(read, mission);
    return {
        missionUnreliability(rate, mission.value_or(0)), "failed by the end of the mission", {}};
}

EventProbability repairableProbability(ModelReader& read, std::optional<double> fallback) {
    const double rate = read.rate();
    const double repair = read.time(Role::repair, true);
    const auto mission = missionTime(read, fallback);
    if (!read.problems.empty()) return {};
    return {repairableUnavailability(rate, repair, mission.value_or(kInfinity)),
            mission ? "down at the end of the mission, working at its start"
                    : "share of the time under repair, in the long run",
            {}};
}

EventProbability testedProbability(ModelReader& read, std::optional<double> fallback) {
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

EventProbability weibullProbability(ModelReader& read, std::optional<double> fallback) {
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
        if (model.kind == ModelKind::repairable ||
            (model.kind != ModelKind::tested && model.find(Role::mission)))
            break;
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

// A probability counts as it is, whatever it is counted by.
std::string asGiven(const FailureModel& model) {
    const Quantity* probability = model.find(Role::probability);
    const auto dimension =
        probability ? project::facts(probability->unit).dimension : Dimension::number;
    if (dimension == Dimension::perStart || model.clock == Clock::start)
        return "probability per start";
    if (dimension == Dimension::perDemand || model.kind == ModelKind::perDemand)
        return "probability per demand";
    return "probability as given";
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
        return Problem{
            Severity::error,
            fmt::format("event {}: the failure mode {} does not exist", event.id, event.mode),
            "name a failure mode of the project", fmt::format("event {}", event.id),
            event.line.number};

    ModelReader read(index, event, *model);
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
    case ModelKind::probability:
    case ModelKind::perDemand: result = {read.probability(), asGiven(*model), {}}; break;
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
