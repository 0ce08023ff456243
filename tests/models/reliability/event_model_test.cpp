// SPDX-License-Identifier: GPL-3.0-or-later
// From a project's failure models to probabilities: units, clocks, missing numbers, warnings.
#include "models/reliability/event_model.h"
#include "tests/oracle/solved.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>

namespace cutwater::reliability {
namespace {

using namespace project;
using oracle::near;
using ::testing::HasSubstr;

struct Given {
    Role role;
    double value;
    Unit unit;
};

Event event(ModelKind kind, Clock clock, const std::vector<Given>& numbers) {
    Event made;
    made.id = "E";
    made.line.number = 7;
    made.model.kind = kind;
    made.model.clock = clock;
    made.model.line.number = 8;
    for (const Given& given : numbers) {
        Quantity quantity;
        quantity.value = given.value;
        quantity.unit = given.unit;
        quantity.line.number = 9;
        made.model.set(given.role, quantity);
    }
    return made;
}

Outcome<EventProbability> ask(const Event& made, std::optional<double> mission = {},
                              Project project = {}) {
    project.events.push_back(made);
    const Index index(project);
    return probabilityOf(project, index, project.events.front(), mission);
}

// The value; fails the test where there is none.
double value(const Outcome<EventProbability>& outcome) {
    if (outcome) return outcome->value;
    for (const auto& problem : outcome.problems())
        ADD_FAILURE() << toSentence(problem);
    return -1;
}

std::string sentences(const Outcome<EventProbability>& outcome) {
    std::string all;
    if (outcome) {
        ADD_FAILURE() << "a value where there should be a problem: " << outcome->value;
        return all;
    }
    for (const auto& problem : outcome.problems())
        all += toSentence(problem) + "\n";
    return all;
}

TEST(EventModel, PlainProbabilitiesCountAsTheyAre) {
    for (const Unit unit : {Unit::number, Unit::unstated, Unit::perStart, Unit::perDemand})
        EXPECT_EQ(value(ask(event(ModelKind::probability, Clock::unstated,
                                  {{Role::probability, 0.003, unit}}))),
                  0.003);
    const auto perStart = ask(
        event(ModelKind::perDemand, Clock::start, {{Role::probability, 0.003, Unit::perStart}}));
    EXPECT_EQ(value(perStart), 0.003);
    EXPECT_EQ(perStart->how, "probability per start");
    EXPECT_TRUE(perStart->warnings.empty());
    const auto perDemand = ask(
        event(ModelKind::perDemand, Clock::demand, {{Role::probability, 0.003, Unit::perDemand}}));
    EXPECT_EQ(perDemand->how, "probability per demand");
}

TEST(EventModel, HouseEventsAreOnOrOff) {
    Event house;
    house.id = "H";
    house.kind = EventKind::house;
    EXPECT_EQ(value(ask(house)), 0);
    house.state = true;
    EXPECT_EQ(value(ask(house)), 1);
}

TEST(EventModel, UnitsOfRatesAndTimes) {
    const double wanted = missionUnreliability(1e-6, 168);
    const std::pair<double, Unit> rates[] = {
        {1e-6, Unit::perHour},    {1, Unit::perMillionHours}, {1000, Unit::perBillionHours},
        {8.76e-3, Unit::perYear}, {1e6, Unit::hours},         {1e6 / 8760, Unit::years}};
    const std::pair<double, Unit> times[] = {
        {168, Unit::hours}, {7, Unit::days}, {1, Unit::weeks}, {10080, Unit::minutes}};
    for (const auto& [rate, rateUnit] : rates)
        for (const auto& [time, timeUnit] : times)
            EXPECT_TRUE(near(
                value(ask(event(ModelKind::mission, Clock::calendarHour,
                                {{Role::rate, rate, rateUnit}, {Role::mission, time, timeUnit}}))),
                wanted, 1e-14));
}

TEST(EventModel, TheModelsOwnMissionComesBeforeTheAnalysis) {
    const Event with = event(ModelKind::mission, Clock::calendarHour,
                             {{Role::rate, 1e-4, Unit::perHour}, {Role::mission, 10, Unit::hours}});
    EXPECT_TRUE(near(value(ask(with, 1000.0)), missionUnreliability(1e-4, 10), 1e-15));
    const Event without =
        event(ModelKind::mission, Clock::calendarHour, {{Role::rate, 1e-4, Unit::perHour}});
    EXPECT_TRUE(near(value(ask(without, 1000.0)), missionUnreliability(1e-4, 1000), 1e-15));
    EXPECT_EQ(
        sentences(ask(without)),
        "line 8: error: event E: the failure model has no mission time; give the model a mission "
        "time or the analysis one.\n");
    EXPECT_THAT(sentences(ask(without, -1.0)),
                HasSubstr("the mission time of the analysis is -1 h"));
    EXPECT_THAT(sentences(ask(without, std::nan(""))), HasSubstr("mission time of the analysis"));
}

TEST(EventModel, RepairableIsTheLongRunWhereNoMissionIsGiven) {
    const Event part = event(ModelKind::repairable, Clock::calendarHour,
                             {{Role::rate, 1e-4, Unit::perHour}, {Role::repair, 8, Unit::hours}});
    EXPECT_TRUE(near(value(ask(part)), 1e-4L / (1e-4L + 0.125L), 1e-14));
    EXPECT_TRUE(near(value(ask(part, 5.0)), repairableUnavailability(1e-4, 8, 5), 1e-15));
}

TEST(EventModel, TestedChoosesThePlainMeanOrTheCycle) {
    std::vector<Given> numbers{{Role::rate, 1e-5, Unit::perHour}, {Role::interval, 30, Unit::days}};
    const auto plain = ask(event(ModelKind::tested, Clock::calendarHour, numbers));
    EXPECT_TRUE(near(value(plain), testedMeanUnavailability(1e-5, 720), 1e-15));
    EXPECT_EQ(plain->how, "mean over the test interval");
    EXPECT_TRUE(plain->warnings.empty());
    numbers.push_back({Role::testDuration, 1.5, Unit::hours});
    numbers.push_back({Role::repair, 19, Unit::hours});
    const auto cycle = ask(event(ModelKind::tested, Clock::calendarHour, numbers));
    EXPECT_NEAR(value(cycle), 0.00585072983, 1e-9); // derived, worked by the cycle
    EXPECT_EQ(cycle->how, "mean over the test cycle");

    numbers.push_back({Role::coverage, 0.9, Unit::number});
    const Event part = event(ModelKind::tested, Clock::calendarHour, numbers);
    EXPECT_THAT(sentences(ask(part)), HasSubstr("the test does not find all failures"));
    const auto partly = ask(part, 87'600.0);
    EXPECT_GT(value(partly), cycle->value);
    EXPECT_THAT(partly->how, HasSubstr("the test does not find"));
}

TEST(EventModel, WarnsWhereTheUsualApproximationFails) {
    const auto warnings = [](double rate) {
        const auto outcome =
            ask(event(ModelKind::tested, Clock::calendarHour,
                      {{Role::rate, rate, Unit::perHour}, {Role::interval, 8760, Unit::hours}}));
        return outcome ? outcome->warnings : std::vector<std::string>{"no value"};
    };
    EXPECT_TRUE(warnings(1e-5).empty());
    ASSERT_EQ(warnings(1e-4).size(), 1u);
    EXPECT_THAT(warnings(1e-4).front(), HasSubstr("rate x interval is 0.88"));
    EXPECT_THAT(warnings(1e-4).front(), HasSubstr("would give 0.44"));
}

TEST(EventModel, WarnsOfALateFirstTest) {
    const auto outcome = ask(event(ModelKind::tested, Clock::calendarHour,
                                   {{Role::rate, 1e-6, Unit::perHour},
                                    {Role::interval, 100, Unit::hours},
                                    {Role::firstTest, 300, Unit::hours}}));
    ASSERT_TRUE(outcome);
    ASSERT_EQ(outcome->warnings.size(), 1u);
    EXPECT_THAT(outcome->warnings.front(), HasSubstr("first test comes after 300 h"));
}

TEST(EventModel, AsksForTheClock) {
    const std::vector<Given> rate{{Role::rate, 1e-5, Unit::perHour}};
    const auto warnings = [&rate](Clock clock, std::vector<Given> more = {}) {
        more.insert(more.begin(), rate.begin(), rate.end());
        const auto outcome = ask(event(ModelKind::mission, clock, more), 100.0);
        return outcome ? outcome->warnings : std::vector<std::string>{"no value"};
    };
    EXPECT_TRUE(warnings(Clock::calendarHour).empty());
    ASSERT_EQ(warnings(Clock::unstated).size(), 1u);
    EXPECT_THAT(warnings(Clock::unstated).front(), HasSubstr("no clock is stated"));
    ASSERT_EQ(warnings(Clock::firingHour).size(), 1u);
    EXPECT_THAT(warnings(Clock::firingHour).front(), HasSubstr("taken as firing hours"));
    EXPECT_TRUE(warnings(Clock::firingHour, {{Role::mission, 50, Unit::hours}}).empty());
    ASSERT_EQ(warnings(Clock::start).size(), 1u);
    EXPECT_THAT(warnings(Clock::start).front(), HasSubstr("a probability per start"));
}

TEST(EventModel, WeibullNeedsItsMission) {
    const Event part = event(ModelKind::weibull, Clock::firingHour,
                             {{Role::shape, 2, Unit::number},
                              {Role::scale, 1000, Unit::hours},
                              {Role::location, 100, Unit::hours}});
    EXPECT_THAT(sentences(ask(part)), HasSubstr("has no mission time"));
    EXPECT_TRUE(near(value(ask(part, 600.0)), 1 - std::exp(-0.25L), 1e-14));
}

TEST(EventModel, ReadsTheModeOfAnEventAndASharedParameter) {
    Project project;
    Parameter shared;
    shared.id = "relay-rate";
    shared.quantity.value = 2;
    shared.quantity.unit = Unit::perMillionHours;
    project.parameters.push_back(shared);
    FailureMode mode;
    mode.id = "M";
    mode.model.kind = ModelKind::mission;
    mode.model.clock = Clock::calendarHour;
    Quantity rate;
    rate.parameter = "relay-rate";
    mode.model.set(Role::rate, rate);
    project.modes.push_back(mode);
    Event made =
        event(ModelKind::probability, Clock::unstated, {{Role::probability, 1, Unit::number}});
    made.mode = "M"; // comes before the event's own model
    EXPECT_TRUE(near(value(ask(made, 100.0, project)), missionUnreliability(2e-6, 100), 1e-15));

    project.parameters.clear();
    EXPECT_THAT(sentences(ask(made, 100.0, project)),
                HasSubstr("the rate names the parameter relay-rate, which does not exist"));
    project.modes.clear();
    EXPECT_THAT(sentences(ask(made, 100.0, project)), HasSubstr("failure mode M does not exist"));
}

TEST(EventModel, SaysWhatCannotBeAProbability) {
    EXPECT_EQ(sentences(ask(event(ModelKind::none, Clock::unstated, {}))),
              "line 8: error: event E: there is no failure model, so it has no probability; give a "
              "probability or a rate.\n");
    EXPECT_THAT(sentences(ask(event(ModelKind::frequency, Clock::calendarHour,
                                    {{Role::frequency, 1, Unit::perYear}}))),
                HasSubstr("how often it happens, not whether it is there"));
}

TEST(EventModel, FindsEveryBadNumberAtItsLine) {
    const double nan = std::nan("");
    const double infinite = std::numeric_limits<double>::infinity();
    for (const double bad : {-1e-9, 1.0000001, nan, infinite})
        EXPECT_THAT(sentences(ask(event(ModelKind::probability, Clock::unstated,
                                        {{Role::probability, bad, Unit::number}}))),
                    HasSubstr("line 9: error: event E: the probability is"));
    for (const double bad : {-1e-9, nan, infinite})
        EXPECT_THAT(sentences(ask(event(
                        ModelKind::mission, Clock::calendarHour,
                        {{Role::rate, bad, Unit::perHour}, {Role::mission, 1, Unit::hours}}))),
                    HasSubstr("line 9: error: event E: the rate is"));
    // A mean time to failure of nothing is no rate.
    EXPECT_THAT(
        sentences(ask(event(ModelKind::mission, Clock::calendarHour,
                            {{Role::rate, 0, Unit::hours}, {Role::mission, 1, Unit::hours}}))),
        HasSubstr("give a time above zero"));
    // Both at once: a rate without its unit and an interval of nothing.
    const std::string both = sentences(
        ask(event(ModelKind::tested, Clock::calendarHour,
                  {{Role::rate, 1e-6, Unit::unstated}, {Role::interval, 0, Unit::hours}})));
    EXPECT_THAT(both, HasSubstr("the rate has no unit"));
    EXPECT_THAT(both, HasSubstr("the interval is 0 h; give a time above zero"));
    EXPECT_THAT(sentences(ask(event(
                    ModelKind::tested, Clock::calendarHour,
                    {{Role::rate, 1e-6, Unit::perHour}, {Role::interval, 1, Unit::perStart}}))),
                HasSubstr("the interval is given per start, which does not fit"));
    EXPECT_THAT(
        sentences(ask(event(ModelKind::weibull, Clock::calendarHour,
                            {{Role::shape, 0, Unit::number}, {Role::scale, 1, Unit::hours}}),
                      1.0)),
        HasSubstr("the shape is zero"));
    EXPECT_THAT(sentences(ask(event(ModelKind::repairable, Clock::calendarHour,
                                    {{Role::rate, 1e-6, Unit::perHour}}))),
                HasSubstr("the repair is missing"));
}

} // namespace
} // namespace cutwater::reliability
