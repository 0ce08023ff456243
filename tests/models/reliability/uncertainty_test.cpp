// SPDX-License-Identifier: GPL-3.0-or-later
// Draws of whole projects: the same on any number of threads, in step with probabilityOf(), and as
// sure as they say.
#include "models/reliability/uncertainty.h"

#include "models/reliability/event_model.h"
#include "models/reliability/uncertainty_statistics.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace cutwater::reliability {
namespace {

using project::ModelKind;
using project::Role;
using project::Unit;

project::Quantity number(double value, Unit unit, project::Distribution distribution = {}) {
    project::Quantity quantity;
    quantity.value = value;
    quantity.unit = unit;
    quantity.uncertainty = distribution;
    return quantity;
}

project::Event event(const std::string& id, ModelKind kind,
                     std::vector<std::pair<Role, project::Quantity>> numbers) {
    project::Event result;
    result.id = id;
    result.model.kind = kind;
    result.model.clock = project::Clock::calendarHour;
    for (const auto& [role, quantity] : numbers)
        result.model.set(role, quantity);
    return result;
}

// One event of every kind, each with uncertain numbers.
project::Project everyKind() {
    project::Project plant;
    const project::Distribution wide = project::Lognormal{2e-5, 5};
    plant.events = {
        event("probability", ModelKind::probability,
              {{Role::probability, number(0.01, Unit::number, project::Beta{2, 200})}}),
        event("demand", ModelKind::perDemand,
              {{Role::probability, number(1e-3, Unit::perDemand, project::Lognormal{1e-3, 3})}}),
        event("mission", ModelKind::mission,
              {{Role::rate, number(20, Unit::perMillionHours, project::Gamma{2.5, 0.125})},
               {Role::mission, number(2, Unit::weeks)}}),
        event("lasting", ModelKind::repairable,
              {{Role::rate, number(5, Unit::years, project::Triangular{2, 5, 9})}, // time to fail
               {Role::repair, number(8, Unit::hours, project::Uniform{2, 30})}}),
        event("new", ModelKind::repairable,
              {{Role::rate, number(2e-5, Unit::perHour, wide)},
               {Role::repair, number(8, Unit::hours)},
               {Role::mission, number(20, Unit::hours)}}),
        event("tested", ModelKind::tested,
              {{Role::rate, number(2e-5, Unit::perHour, wide)},
               {Role::interval, number(1, Unit::years)}}),
        event("cycle", ModelKind::tested,
              {{Role::rate, number(2e-5, Unit::perHour, wide)},
               {Role::interval, number(26, Unit::weeks)},
               {Role::testDuration, number(2, Unit::hours, project::Uniform{1, 4})},
               {Role::repair, number(12, Unit::hours)},
               {Role::coverage, number(0.9, Unit::number, project::Beta{18, 2})},
               {Role::mission, number(5, Unit::years)}}),
        event("ageing", ModelKind::weibull,
              {{Role::shape, number(2.5, Unit::number, project::Uniform{2, 3})},
               {Role::scale, number(4, Unit::years, project::Triangular{2, 4, 7})},
               {Role::location, number(100, Unit::hours)},
               {Role::mission, number(1, Unit::years)}}),
    };
    project::Gate gate;
    gate.id = "G";
    gate.kind = project::GateKind::vote;
    gate.k = 2;
    for (const auto& one : plant.events)
        gate.inputs.push_back({one.id, {}});
    plant.gates = {gate};
    return plant;
}

struct Drawn {
    std::vector<double> top;
    std::vector<std::uint64_t> cut;
};

Drawn drawn(const project::Project& plant, const UncertaintyWish& wish) {
    const project::Index index(plant);
    const TreeFormula tree = toFormula(plant, index, "G");
    const auto outcome = logic::solve(tree.formula, tree.top);
    UncertainTops tops(plant, index, {});
    EXPECT_TRUE(tops.add(*outcome.solution, tree).empty());
    const auto samples = tops.draw(wish);
    EXPECT_TRUE(samples);
    return {samples->ofTop.front(), samples->cut};
}

TEST(Uncertainty, SameToTheBitOnAnyNumberOfThreads) {
    const project::Project plant = everyKind();
    for (const Drawing drawing : {Drawing::plain, Drawing::stratified}) {
        UncertaintyWish wish;
        wish.samples = 30'010; // not a whole number of blocks
        wish.drawing = drawing;
        const Drawn one = drawn(plant, wish);
        for (const unsigned threads : {2u, 8u}) {
            wish.threads = threads;
            const Drawn many = drawn(plant, wish);
            EXPECT_EQ(one.top, many.top) << threads;
            EXPECT_EQ(one.cut, many.cut) << threads;
        }
        wish.seed = 2;
        EXPECT_NE(one.top, drawn(plant, wish).top);
    }
}

TEST(Uncertainty, FewerSamplesAreTheFirstOfMany) {
    const project::Project plant = everyKind();
    UncertaintyWish wish;
    wish.samples = 5000;
    const Drawn many = drawn(plant, wish);
    wish.samples = 1003;
    const Drawn few = drawn(plant, wish);
    EXPECT_TRUE(std::equal(few.top.begin(), few.top.end(), many.top.begin()));
}

// Where the distributions are needles at the point values, every model must give what
// probabilityOf() gives.
TEST(Uncertainty, EveryModelIsTheOneOfThePointValues) {
    project::Project plant = everyKind();
    for (auto& one : plant.events)
        for (auto& assignment : one.model.numbers) {
            const double value = assignment.quantity.value;
            assignment.quantity.uncertainty =
                project::Uniform{value, std::nextafter(value, std::numeric_limits<double>::max())};
        }
    const project::Index index(plant);
    for (std::size_t position = 0; position < plant.events.size(); ++position) {
        UncertainInputs inputs(plant, index, {});
        ASSERT_TRUE(inputs.addEvent(position));
        ASSERT_FALSE(inputs.inputs().empty());
        std::vector<double> draws, q(kSideBySide);
        for (const UncertainInput& input : inputs.inputs())
            draws.insert(draws.end(), kSideBySide, input.sampler(0.5) * input.factor);
        inputs.events(draws, q);
        const auto point = probabilityOf(plant, index, plant.events[position], {});
        ASSERT_TRUE(point);
        EXPECT_NEAR(q[3] / point->value, 1, 1e-13) << plant.events[position].id;
    }
}

TEST(Uncertainty, AnUncertainMissionlessModelTakesTheAnalysisMission) {
    project::Project plant;
    plant.events = {
        event("e", ModelKind::mission,
              {{Role::rate, number(1e-3, Unit::perHour, project::Uniform{1e-3, 2e-3})}})};
    const project::Index index(plant);
    UncertainInputs without(plant, index, {});
    EXPECT_FALSE(without.addEvent(0));
    UncertainInputs with(plant, index, 100.0);
    ASSERT_TRUE(with.addEvent(0));
    std::vector<double> q(kSideBySide);
    with.events(std::vector<double>(kSideBySide, 1.5e-3), q);
    EXPECT_NEAR(q[0], 1 - std::exp(-0.15), 1e-15);
}

// The draws of an input do not depend on what else is asked about.
TEST(Uncertainty, OneTopAloneOrAmongOthersIsTheSame) {
    const project::Project plant = everyKind();
    const project::Index index(plant);
    const TreeFormula last = toFormula(plant, index, "ageing"),
                      whole = toFormula(plant, index, "G");
    const auto solvedLast = logic::solve(last.formula, last.top).solution;
    const auto solvedWhole = logic::solve(whole.formula, whole.top).solution;
    UncertaintyWish wish;
    wish.samples = 1000;
    UncertainTops alone(plant, index, {}), both(plant, index, {});
    EXPECT_TRUE(alone.add(*solvedLast, last).empty());
    EXPECT_TRUE(both.add(*solvedWhole, whole).empty());
    EXPECT_TRUE(both.add(*solvedLast, last).empty());
    EXPECT_EQ(alone.draw(wish)->ofTop[0], both.draw(wish)->ofTop[1]);
}

TEST(Uncertainty, EveryStratumOfEveryBatchIsHitOnce) {
    project::Project plant;
    plant.events = {
        event("a", ModelKind::probability,
              {{Role::probability, number(0.5, Unit::number, project::Uniform{0, 1})}})};
    project::Gate gate;
    gate.id = "G";
    gate.inputs = {{"a", {}}};
    plant.gates = {gate};
    UncertaintyWish wish;
    wish.samples = 7310;
    wish.drawing = Drawing::stratified;
    const Drawn samples = drawn(plant, wish);
    for (std::size_t batch = 0; batch < kBatches; ++batch) {
        std::vector<int> hits(731, 0);
        for (std::size_t i = 0; i < 731; ++i)
            ++hits[static_cast<std::size_t>(samples.top[batch * 731 + i] * 731)];
        EXPECT_EQ(*std::min_element(hits.begin(), hits.end()), 1) << batch;
    }
    const SampleSummary summary = summarise(samples.top, wish.drawing);
    EXPECT_NEAR(summary.mean.value, 0.5, 1e-4); // plain draws would be off by 0.003
    EXPECT_LT(summary.mean.high - summary.mean.low, 1e-3);
}

TEST(Uncertainty, DrawsAboveOneAreCutAndCounted) {
    project::Project plant;
    plant.events = {
        event("a", ModelKind::probability,
              {{Role::probability, number(0.5, Unit::number, project::Lognormal{1, 3})}})};
    project::Gate gate;
    gate.id = "G";
    gate.inputs = {{"a", {}}};
    plant.gates = {gate};
    UncertaintyWish wish;
    wish.samples = 10'000;
    const Drawn samples = drawn(plant, wish);
    const auto ones = std::count(samples.top.begin(), samples.top.end(), 1.0);
    EXPECT_EQ(static_cast<std::uint64_t>(ones), samples.cut.at(0));
    EXPECT_NEAR(static_cast<double>(ones), 5000, 200); // half of them: 4 standard deviations
}

// Of 400 repetitions, 95 % should hold the truth; fewer than 91 % or more than 98.8 % happen once
// in several thousand runs.
TEST(Uncertainty, IntervalsHoldWhatTheyPromise) {
    project::Project plant;
    plant.events = {
        event("a", ModelKind::probability,
              {{Role::probability, number(1e-3, Unit::number, project::Lognormal{1e-3, 3})}}),
        event("b", ModelKind::probability,
              {{Role::probability, number(1e-2, Unit::number, project::Lognormal{1e-2, 2})}})};
    project::Gate gate;
    gate.id = "G";
    gate.kind = project::GateKind::andGate;
    gate.inputs = {{"a", {}}, {"b", {}}};
    plant.gates = {gate};
    const double s = std::hypot(lognormalSigma({1, 3}), lognormalSigma({1, 2})), median = 1e-5;
    for (const Drawing drawing : {Drawing::plain, Drawing::stratified}) {
        int held[4] = {};
        constexpr int kRounds = 400;
        for (int round = 0; round < kRounds; ++round) {
            UncertaintyWish wish;
            wish.samples = 2000;
            wish.seed = static_cast<std::uint64_t>(round);
            wish.drawing = drawing;
            const SampleSummary summary = summarise(drawn(plant, wish).top, drawing);
            const std::pair<Estimate, double> figures[] = {
                {summary.mean, median * std::exp(s * s / 2)},
                {summary.p5, median * std::exp(-kZ95 * s)},
                {summary.median, median},
                {summary.p95, median * std::exp(kZ95 * s)}};
            for (int i = 0; i < 4; ++i)
                held[i] += figures[i].first.low <= figures[i].second &&
                           figures[i].second <= figures[i].first.high;
        }
        for (const int count : held) {
            EXPECT_GT(count, kRounds * 0.91);
            EXPECT_LT(count, kRounds * 0.988);
        }
    }
}

TEST(Uncertainty, StopsWhenAsked) {
    const project::Project plant = everyKind();
    const project::Index index(plant);
    const TreeFormula tree = toFormula(plant, index, "G");
    UncertainTops tops(plant, index, {});
    EXPECT_TRUE(tops.add(*logic::solve(tree.formula, tree.top).solution, tree).empty());
    std::stop_source source;
    UncertaintyWish wish;
    wish.samples = 10'000'000;
    wish.stop = source.get_token();
    wish.progress = [&](double) { source.request_stop(); };
    EXPECT_FALSE(tops.draw(wish));
}

} // namespace
} // namespace cutwater::reliability
