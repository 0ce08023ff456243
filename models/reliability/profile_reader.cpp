// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/profile_reader.h"

#include "models/reliability/model_reader.h"

#include <fmt/format.h>

namespace cutwater::reliability {

namespace {

using project::Clock;
using project::FailureModel;
using project::ModelKind;
using project::Role;
using Kind = EventProfile::Kind;

constexpr double kSmallRateTimesInterval = 0.1;

void readMission(ModelReader& read, const ProfileWish& wish, EventProfile& profile) {
    if (read.has(Role::mission))
        profile.renewal = read.time(Role::mission, true);
    else if (wish.mission && *wish.mission > 0)
        profile.renewal = *wish.mission;
}

void readTested(ModelReader& read, const ProfileWish& wish, EventCourse& course) {
    EventProfile& part = course.profile;
    part.kind = Kind::tested;
    part.rate = read.rate();
    part.interval = read.time(Role::interval, true);
    part.coverage = read.coverage();
    part.firstTest = part.interval;
    if (read.has(Role::firstTest)) part.firstTest = read.time(Role::firstTest, false);
    if (read.has(Role::testDuration)) part.testDuration = read.time(Role::testDuration, false);
    if (read.has(Role::repair)) part.repair = read.time(Role::repair, true);
    if (part.coverage < 1) readMission(read, wish, part);
    if (!read.problems.empty()) return;
    if (part.testDuration >= part.interval)
        read.problem("a test lasts as long as the interval between two tests",
                     "give a shorter test or a longer interval", 0);
    const double load = part.rate * part.interval;
    if (load > kSmallRateTimesInterval)
        course.warnings.push_back(fmt::format(
            "rate x interval is {:.2g}: the part is likely to be found failed; test more often",
            load));
    if (part.coverage < 1 && part.renewal == 0)
        course.warnings.push_back("the test does not find all failures and no overhaul is given: "
                                  "the others build up over the whole period");
}

// A clock that runs only for a share of the calendar: failures come more slowly by it, and missions
// and tests that it counts lie further apart. Repairs and tests themselves take what they take.
void spread(EventProfile& part, double share) {
    part.rate *= share;
    part.renewal /= share;
    part.interval /= share;
    part.firstTest /= share;
    part.scale /= share;
    part.location /= share;
}

// Turns firing hours into calendar hours where that is wished and known.
void applyClock(const FailureModel& model, const project::Event& event, const ProfileWish& wish,
                EventCourse& course) {
    switch (model.clock) {
    case Clock::firingHour: {
        const Exposed exposed = wish.calendar ? wish.calendar->of(event) : Exposed{};
        if (exposed.firingShare) {
            course.converted = {exposed.component, exposed.firingShare, {}};
            spread(course.profile, *exposed.firingShare);
        } else if (wish.calendar) {
            course.warnings.push_back(
                "the clock is firing hours, and no exposure of its component or one above it says "
                "how many of the calendar's hours these are: every hour is taken as firing");
        } else {
            course.warnings.push_back(
                "the clock is firing hours: every hour of the period is taken as an hour of "
                "firing. For a period of the calendar its frequency is too high; the analysis "
                "over-time takes --clock calendar");
        }
        break;
    }
    case Clock::start:
    case Clock::demand:
        course.warnings.push_back(
            fmt::format("the clock is '{}' but the model counts hours: use a probability per {} "
                        "instead",
                        project::facts(model.clock).word, project::facts(model.clock).word));
        break;
    case Clock::unstated:
        course.warnings.push_back("no clock is stated: the times are taken as calendar hours");
        break;
    case Clock::calendarHour: break;
    }
}

} // namespace

project::Outcome<EventCourse> courseOf(const project::Index& index, const project::Event& event,
                                       const ProfileWish& wish) {
    EventCourse course;
    EventProfile& profile = course.profile;
    if (event.kind == project::EventKind::house) {
        profile.probability = event.state ? 1 : 0;
        return course;
    }
    const FailureModel* const model = index.modelOf(event);
    if (!model)
        return project::Problem{project::Severity::error,
                                fmt::format("event {} names the failure mode {}, which does not "
                                            "exist",
                                            event.id, event.mode),
                                "name a failure mode of the project",
                                fmt::format("event {}", event.id), event.line.number};
    ModelReader read(index, event, *model);
    switch (model->kind) {
    case ModelKind::none:
        read.problem("there is no failure model, so it has no course over time",
                     "give a probability or a rate", model->line.number);
        break;
    case ModelKind::probability:
    case ModelKind::perDemand: profile.probability = read.probability(); break;
    case ModelKind::mission:
        profile.kind = Kind::failing;
        profile.rate = read.rate();
        readMission(read, wish, profile);
        break;
    case ModelKind::repairable:
        profile.kind = Kind::repairable;
        profile.rate = read.rate();
        profile.repair = read.time(Role::repair, true);
        if (read.has(Role::mission)) readMission(read, wish, profile);
        profile.steady = wish.steady && profile.renewal == 0;
        break;
    case ModelKind::tested: readTested(read, wish, course); break;
    case ModelKind::weibull:
        profile.kind = Kind::weibull;
        profile.shape = read.shape();
        profile.scale = read.time(Role::scale, true);
        if (read.has(Role::location)) profile.location = read.time(Role::location, false);
        readMission(read, wish, profile);
        break;
    case ModelKind::frequency:
        profile.kind = Kind::initiating;
        if (read.isPerStart(Role::frequency)) {
            const Exposed exposed = wish.calendar ? wish.calendar->of(event) : Exposed{};
            profile.rate = read.frequencyPerStart(exposed.startsPerHour);
            course.converted = {exposed.component, {}, exposed.startsPerHour};
            return read.problems.empty() ? project::Outcome<EventCourse>(course)
                                         : project::Outcome<EventCourse>(read.problems);
        }
        profile.rate = read.frequency();
        break;
    }
    if (!read.problems.empty()) return read.problems;
    const bool countsHours = profile.kind != Kind::constant;
    if (countsHours) applyClock(*model, event, wish, course);
    return course;
}

} // namespace cutwater::reliability
