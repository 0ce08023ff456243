// SPDX-License-Identifier: GPL-3.0-or-later
// Turning the numbers of a project: knobs, swings and sweeps.
#include "models/reliability/event_model.h"
#include "models/reliability/sensitivity.h"
#include "models/reliability/sweep.h"
#include "models/reliability/tree_formula.h"
#include "tests/oracle/solved.h"

#include <cmath>

namespace cutwater::reliability {
namespace {

using oracle::near;
using project::Role;

project::Quantity quantity(double value, project::Unit unit) {
    project::Quantity made;
    made.value = value;
    made.unit = unit;
    return made;
}

// A and B share one rate (lognormal, median 1e-4, EF 10) and their test interval; C has its own.
project::Project plant() {
    project::Project plant;
    project::Parameter rate{"rate", "", quantity(1e-4, project::Unit::perHour), {}, {}};
    rate.quantity.uncertainty = project::Lognormal{1e-4, 10};
    project::Parameter interval{"interval", "", quantity(1, project::Unit::weeks), {}, {}};
    plant.parameters = {rate, interval};
    project::Quantity shared, sharedInterval;
    shared.parameter = "rate";
    sharedInterval.parameter = "interval";
    for (const char* id : {"A", "B"}) {
        project::Event event;
        event.id = id;
        event.model.kind = project::ModelKind::tested;
        event.model.set(Role::rate, shared);
        event.model.set(Role::interval, sharedInterval);
        plant.events.push_back(event);
    }
    project::Event c;
    c.id = "C";
    c.model.kind = project::ModelKind::probability;
    project::Quantity chance = quantity(0.2, project::Unit::number);
    chance.uncertainty = project::Lognormal{0.2, 8}; // its 95 % point is 1.6
    c.model.set(Role::probability, chance);
    plant.events.push_back(c);
    project::Gate gate;
    gate.id = "G";
    gate.kind = project::GateKind::andGate;
    gate.inputs = {{"A", {}}, {"B", {}}, {"C", {}}};
    plant.gates.push_back(gate);
    return plant;
}

std::vector<SolvedTop> solvedTops(const project::Project& plant, const project::Index& index) {
    const TreeFormula tree = toFormula(plant, index, "G");
    return {{*oracle::solved(tree.formula, tree.top), TopVariables(tree)}};
}

TEST(Knobs, EachNumberOnceWithAllItsEvents) {
    const project::Project made = plant();
    const project::Index index(made);
    const auto knobs = knobsOf(made, index, std::vector<std::size_t>{0, 1, 2});
    ASSERT_EQ(knobs.size(), 3u);
    EXPECT_EQ(knobs[0].id(), "rate");
    EXPECT_EQ(knobs[0].events, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(knobs[1].id(), "interval");
    EXPECT_EQ(knobs[2].id(), "C@probability");
    EXPECT_EQ(find(made, knobs[2])->value, 0.2);
    EXPECT_EQ(find(made, Knob{"nowhere", "", Role::rate, 0, {}}), nullptr);
}

TEST(Knobs, TurningComputesAgainWhatHangsOnThem) {
    const project::Project made = plant();
    const project::Index index(made);
    const auto knobs = knobsOf(made, index, std::vector<std::size_t>{0, 1, 2});
    WhatIf whatIf(made, {});
    const double before = *whatIf.probability(0);
    whatIf.turn(knobs[1], 2); // weeks
    EXPECT_TRUE(near(*whatIf.probability(0), testedMeanUnavailability(1e-4, 336), 1e-14));
    EXPECT_EQ(whatIf.course(1)->profile.interval, 336);
    EXPECT_EQ(*whatIf.probability(2), 0.2);
    whatIf.reset(knobs[1]);
    EXPECT_EQ(*whatIf.probability(0), before);
    whatIf.turn(knobs[1], -1);
    EXPECT_FALSE(whatIf.probability(0)); // a sentence, not a figure
    EXPECT_EQ(made, plant());            // the project itself is never touched
}

TEST(Swings, OfSharedNumbersMoveAllTheirEvents) {
    const project::Project made = plant();
    const project::Index index(made);
    const auto outcome = swings(made, index, solvedTops(made, index), {});
    ASSERT_TRUE(outcome);
    const Swings& got = *outcome;
    const auto mean = [](double rate) { return testedMeanUnavailability(rate, 168); };
    EXPECT_TRUE(near(got.point[0], std::pow(mean(1e-4), 2) * 0.2, 1e-13));
    ASSERT_EQ(got.swings.size(), 2u);
    // The 5 % and 95 % points of a lognormal are median / EF and median x EF.
    EXPECT_NEAR(got.swings[0].lowValue, 1e-5, 1e-14);
    EXPECT_NEAR(got.swings[0].highValue, 1e-3, 1e-12);
    EXPECT_NEAR(got.swings[0].low[0] / (std::pow(mean(1e-5), 2) * 0.2), 1, 1e-9);
    EXPECT_NEAR(got.swings[0].high[0] / (std::pow(mean(1e-3), 2) * 0.2), 1, 1e-9);
    EXPECT_FALSE(got.swings[0].cut);
    EXPECT_TRUE(got.swings[1].cut); // 1.6 is no probability
    EXPECT_EQ(got.swings[1].highValue, 1);
    EXPECT_TRUE(near(got.swings[1].high[0], std::pow(mean(1e-4), 2), 1e-13));
    EXPECT_EQ(got.leftAlone, std::vector<std::size_t>{1});

    SwingWish wish;
    wish.factor = 2;
    const auto all = swings(made, index, solvedTops(made, index), {}, wish);
    ASSERT_EQ(all->swings.size(), 3u);
    EXPECT_FALSE(all->swings[1].hasDistribution);
    EXPECT_EQ(all->swings[1].highValue, 2);
}

TEST(Sweep, ClosesInOnTheBestInterval) { // rate tau / 2 + t / tau: the best is sqrt(2 t / rate)
    constexpr double rate = 1e-5, test = 1.5;
    const auto figure = [](double tau) -> std::optional<double> {
        return rate * tau / 2 + test / tau;
    };
    SweepWish wish;
    wish.from = 10;
    wish.to = 10'000;
    wish.steps = 15;
    wish.logarithmic = true;
    wish.limit = 0.01;
    const auto got = sweep(wish, figure);
    ASSERT_TRUE(got);
    EXPECT_EQ(got->points.size(), 15u);
    EXPECT_EQ(got->points.front().x, 10);
    EXPECT_EQ(got->points.back().x, 10'000);
    EXPECT_NEAR(got->points[7].x, std::sqrt(10 * 10'000.0), 1e-9);
    EXPECT_NEAR(got->lowest.x, std::sqrt(2 * test / rate), 0.1);
    EXPECT_NEAR(got->lowest.y, std::sqrt(2 * test * rate), 1e-9);
    EXPECT_FALSE(got->lowestAtEnd);
    // Within 0.01: the roots of rate tau^2 / 2 - 0.01 tau + t.
    const double root = std::sqrt(1e-4 - 2 * rate * test);
    ASSERT_TRUE(got->within);
    EXPECT_NEAR(got->within->x, (0.01 + root) / rate, 0.01);
    EXPECT_LE(got->within->y, 0.01);
    wish.largest = false;
    EXPECT_NEAR(sweep(wish, figure)->within->x, (0.01 - root) / rate, 0.01);
    wish.limit = 1e-3; // lower than it gets anywhere
    EXPECT_FALSE(sweep(wish, figure)->within);
}

TEST(Sweep, SaysWhereTheEndOfTheRangeDecides) {
    SweepWish wish;
    wish.from = 1;
    wish.to = 9;
    wish.steps = 9;
    wish.limit = 100;
    const auto got = sweep(wish, [](double x) -> std::optional<double> { return x; });
    EXPECT_TRUE(got->lowestAtEnd);
    EXPECT_TRUE(got->withinAtEnd);
    EXPECT_EQ(got->within->x, 9);
    EXPECT_EQ(got->points[4].x, 5);
    int asked = 0;
    EXPECT_FALSE(sweep(wish, [&](double) -> std::optional<double> {
        return ++asked < 5 ? std::optional(1.0) : std::nullopt;
    }));
    EXPECT_EQ(asked, 5); // stopped means stopped
}

} // namespace
} // namespace cutwater::reliability
