// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/models/project/validate_rule.h"

namespace cutwater::project {

using test::quantity;

// clang-format off
std::vector<Rule> modelRules() {
    return {
    // failure models
    {"RoleMissing", [](Project& p) { modelOfE2(p, ModelKind::mission, Clock::firingHour); }, kError, 450, "(mission) has no rate", "enter its rate"},
    {"RoleUnknown", [](Project& p) { p.events[1].model.set(Role::shape, quantity(2, Unit::number, 455)); }, kError, 455,
     "shape of event e2 means nothing to the failure model probability", "this one takes probability"},
    {"RoleTwice", [](Project& p) { p.events[1].model.numbers.push_back(p.events[1].model.numbers[0]); }, kError, 451, "is given twice", "keep one"},
    {"NumbersWithoutKind", [](Project& p) { p.modes.push_back(p.modes[0]); p.modes[1].id = "burner.worn";
        p.modes[1].line.number = 201; p.modes[1].model = p.events[1].model; p.modes[1].model.kind = ModelKind::none; }, kError, 450,
     "failure model of failure mode burner.worn has numbers but no kind", "choose its kind"},
    {"ProbabilityAboveOne", [](Project& p) { probability(p).value = 1.5; }, kError, 451, "probability of event e2 is 1.5", "from 0 to 1"},
    {"ProbabilityNegative", [](Project& p) { probability(p).value = -0.1; }, kError, 451, "is -0.1", "from 0 to 1"},
    {"ProbabilityNan", [](Project& p) { probability(p).value = kNan; }, kError, 451, "not a finite number", "enter a number"},
    {"ProbabilityInfinite", [](Project& p) { probability(p).value = kInfinity; }, kError, 451, "not a finite number", "enter a number"},
    {"RateNegative", [](Project& p) { tested(p).set(Role::rate, quantity(-1e-6, Unit::perHour, 251)); }, kError, 251,
     "rate of failure mode burner.fouled is -1e-06", "0 or more"},
    {"MeanTimeZero", [](Project& p) { tested(p).set(Role::rate, quantity(0, Unit::years, 251)); }, kError, 251, "is 0", "above 0"},
    {"IntervalZero", [](Project& p) { tested(p).set(Role::interval, quantity(0, Unit::hours, 252)); }, kError, 252, "interval of", "above 0"},
    {"RateWithoutUnit", [](Project& p) { tested(p).set(Role::rate, quantity(1e-6, Unit::unstated, 251)); }, kError, 251, "has no unit", "/h, /1e6h, /1e9h, /y"},
    {"RateInAmperes", [](Project& p) { tested(p).set(Role::rate, quantity(1e-6, Unit::amperes, 251)); }, kError, 251, "given in A (amperes)", "/h"},
    {"IntervalPerHour", [](Project& p) { tested(p).set(Role::interval, quantity(1, Unit::perHour, 252)); }, kError, 252, "interval of", "s, min, h, d, wk, y"},
    {"CapacityInHours", [](Project& p) { p.connections[0].capacity->unit = Unit::hours; }, kError, 351, "capacity of connection feed", "A, kW, kg/h"},
    {"ParameterOfWrongDimension", [](Project& p) { probability(p).parameter = "p-rate"; }, kError, 451, "given in /h", "1, /start, /demand"},
    {"TestLongerThanInterval", [](Project& p) { tested(p).set(Role::testDuration, quantity(2, Unit::weeks, 253)); }, kError, 253,
     "lasts as long as the interval", "shorter test"},
    {"LastTestNoDate", [](Project& p) { tested(p).lastTest = "2026-02-30"; }, kError, 250, "\"2026-02-30\", which is not a date", "2026-02-28"},
    {"LastTestOfUntested", [](Project& p) { p.events[1].model.lastTest = "2026-02-01"; }, kWarning, 450, "not one that is tested", "delete it"},
    {"DormantButSeen", [](Project& p) { FailureModel& m = tested(p); m.kind = ModelKind::repairable; m.numbers.clear(); m.lastTest = "";
        m.set(Role::rate, quantity(1e-6, Unit::perHour)); m.set(Role::repair, quantity(1, Unit::hours)); }, kWarning, 200, "is dormant", "tested"},
    // clocks
    {"ClockUnstated", [](Project& p) { tested(p).clock = Clock::unstated; }, kWarning, 250, "which clock", "firing-hour"},
    {"PerStartOnCalendar", [](Project& p) { probability(p).unit = Unit::perStart; p.events[1].model.clock = Clock::calendarHour; }, kError, 451,
     "per start, but the clock counts hours (calendar-hour)", "set the clock to start"},
    {"PerDemandOnFiring", [](Project& p) { probability(p).unit = Unit::perDemand; p.events[1].model.clock = Clock::firingHour; }, kError, 451,
     "per demand, but the clock counts hours", "set the clock to demand"},
    {"PerHourOnStarts", [](Project& p) { tested(p).clock = Clock::start; }, kError, 251, "but the clock counts each start", "calendar-hour"},
    {"PerDemandOnStarts", [](Project& p) { probability(p).unit = Unit::perDemand; p.events[1].model.clock = Clock::start; }, kWarning, 451,
     "per demand, but the clock counts each start", "each start is a demand"},
    // distributions
    {"ErrorFactor", [](Project& p) { spread(p, Lognormal{0.1, 1}); }, kError, 451, "error factor is 1", "above 1"},
    {"Median", [](Project& p) { spread(p, Lognormal{0, 3}); }, kError, 451, "median is 0", "above 0"},
    {"ErrorFactorNan", [](Project& p) { spread(p, Lognormal{0.1, kNan}); }, kError, 451, "error factor is nan", "above 1"},
    {"Gamma", [](Project& p) { spread(p, Gamma{0, 1}); }, kError, 451, "shape and rate are 0 and 1", "above 0"},
    {"Beta", [](Project& p) { spread(p, Beta{1, -1}); }, kError, 451, "alpha and beta are 1 and -1", "above 0"},
    {"Uniform", [](Project& p) { spread(p, Uniform{0.5, 0.5}); }, kError, 451, "limits are 0.5 and 0.5", "below the high one"},
    {"UniformAboveOne", [](Project& p) { spread(p, Uniform{0.5, 1.5}); }, kError, 451, "reaches above 1", "from 0 to 1"},
    {"UniformBelowZero", [](Project& p) { spread(p, Uniform{-0.5, 0.5}); }, kError, 451, "reaches below 0", "0 or more"},
    {"Triangular", [](Project& p) { spread(p, Triangular{0.1, 0.5, 0.3}); }, kError, 451, "0.1, 0.5 and 0.3", "ascending"},
    {"TriangularInfinite", [](Project& p) { spread(p, Triangular{0.1, 0.5, kInfinity}); }, kError, 451, "0.1, 0.5 and inf", "ascending"},
    {"BetaOfRate", [](Project& p) { Quantity q = quantity(1e-6, Unit::perHour, 251); q.uncertainty = Beta{1, 9}; tested(p).set(Role::rate, q); },
     kError, 251, "beta distribution", "gamma or lognormal"},
    {"SourceTag", [](Project& p) { probability(p).source.tag = "form memory"; }, kError, 451, "unknown tag \"form memory\"", "write from memory"},
    };
}
// clang-format on

} // namespace cutwater::project
