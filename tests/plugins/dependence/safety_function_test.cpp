// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/analyses/plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace plants;
using testing::HasSubstr;
using testing::Not;

namespace {

constexpr double kRate = 1e-5, kYear = 8760;

project::Quantity number(double value, project::Unit unit) {
    project::Quantity quantity;
    quantity.value = value;
    quantity.unit = unit;
    return quantity;
}

// Two channels, tested together once a year; dangerous rate 1e-5 each.
project::Project channels(project::GateKind kind, std::optional<double> beta = {}) {
    project::Project plant = twoPumps();
    plant.events.resize(2);
    plant.gates = {gate("silent", kind, {"pump-a", "pump-b"})};
    plant.tops = {top("T1", "silent")};
    for (auto& one : plant.events) {
        one.model = {};
        one.model.kind = project::ModelKind::tested;
        one.model.clock = project::Clock::calendarHour;
        one.model.set(project::Role::rate, number(kRate, project::Unit::perHour));
        one.model.set(project::Role::interval, number(1, project::Unit::years));
    }
    if (beta) {
        project::CommonCauseGroup group;
        group.id = "CC";
        group.factors = {number(*beta, project::Unit::number)};
        group.members = {{"pump-a", {}}, {"pump-b", {}}};
        plant.commonCauses = {group};
    }
    return plant;
}

sdk::Values values(const char* topId, const char* voting = nullptr, double rate = 2 * kRate,
                   double beta = 0.1) {
    sdk::Values given;
    if (topId) given.set("top", std::string(topId));
    if (!voting) return given;
    given.set("voting", std::string(voting));
    given.set("rate", rate);
    given.set("beta", beta);
    return given;
}

double simpson(double (*f)(double), double end) {
    constexpr int kSteps = 20'000;
    double sum = f(0) + f(end);
    for (int i = 1; i < kSteps; ++i)
        sum += f(end * i / kSteps) * (i % 2 ? 4 : 2);
    return sum / 3 / kSteps;
}

double failed(double rate, double time) {
    return -std::expm1(-rate * time);
}

} // namespace

// Averages over a test interval, rate 1e-5, interval 8760 h (derived): 1oo2 0.00239652526, 2oo2
// 0.0827006059; the simplified (rate x interval)^2 / 3 = 0.00255792 is 7 % too high.
TEST(SafetyFunction, ThePairIsIntegratedAndNotMultiplied) {
    const auto pair = ask("safety-function", channels(project::GateKind::andGate), values("T1"));
    ASSERT_TRUE(pair.content);
    const sdk::Table& figures = table(*pair.content, "figures");
    ASSERT_EQ(figures.rows.size(), 1u);
    EXPECT_NEAR(plants::number(figures, 0, "on-demand") / 0.00239652526, 1, 1e-8);
    EXPECT_EQ(text(figures, 0, "band-on-demand"), "SIL 2 band");
    EXPECT_EQ(std::get<std::int64_t>(cell(figures, 0, "fault-tolerance")), 1);
    // Per hour: d/dt of q^2, so that the mean is q(year)^2 / year.
    const double atEnd = failed(kRate, kYear);
    EXPECT_NEAR(plants::number(figures, 0, "per-hour") / (atEnd * atEnd / kYear), 1, 1e-8);
    const auto either = ask("safety-function", channels(project::GateKind::orGate), values("T1"));
    ASSERT_TRUE(either.content);
    EXPECT_NEAR(plants::number(table(*either.content, "figures"), 0, "on-demand") / 0.0827006059, 1,
                1e-8);
    EXPECT_EQ(std::get<std::int64_t>(cell(table(*either.content, "figures"), 0, "fault-tolerance")),
              0);
}

TEST(SafetyFunction, SmallRatesGiveTheTextbookThird) { // (rate x interval)^2 / 3 within its order
    project::Project plant = channels(project::GateKind::andGate);
    for (auto& one : plant.events)
        one.model.set(project::Role::rate, number(1e-9, project::Unit::perHour));
    const auto answer = ask("safety-function", plant, values("T1"));
    ASSERT_TRUE(answer.content);
    const double load = 1e-9 * kYear;
    EXPECT_NEAR(plants::number(table(*answer.content, "figures"), 0, "on-demand") /
                    (load * load / 3),
                1, 2 * load);
}

TEST(SafetyFunction, CommonCausesShareOutTheRates) {
    const auto answer =
        ask("safety-function", channels(project::GateKind::andGate, 0.1), values("T1"));
    ASSERT_TRUE(answer.content);
    const sdk::Table& figures = table(*answer.content, "figures");
    ASSERT_EQ(figures.rows.size(), 2u);
    const double wanted = simpson(
        [](double time) {
            const double alone = failed(0.9 * kRate, time), both = failed(0.1 * kRate, time);
            return both + (1 - both) * alone * alone;
        },
        kYear);
    EXPECT_NEAR(plants::number(figures, 1, "on-demand") / wanted, 1, 1e-8);
}

TEST(SafetyFunction, TreeAndFormulasSideBySide) {
    const auto answer =
        ask("safety-function", channels(project::GateKind::andGate, 0.1), values("T1", "1oo2"));
    ASSERT_TRUE(answer.content);
    const sdk::Table& figures = table(*answer.content, "figures");
    ASSERT_EQ(figures.rows.size(), 3u);
    // The formula repairs 8 h and takes first terms only: some per cent above the tree.
    const double tree = plants::number(figures, 1, "on-demand");
    const double formula = plants::number(figures, 2, "on-demand");
    EXPECT_GT(formula, tree);
    EXPECT_LT(formula, 1.1 * tree);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), Not(HasSubstr("far apart")));
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::caution),
                testing::AllOf(HasSubstr("systematic capability"), HasSubstr("competent person")));
    EXPECT_EQ(answer.content->series.size(), 1u);
}

TEST(SafetyFunction, WhatIsSharedByTheChannelsShowsUp) {
    project::Project plant = channels(project::GateKind::andGate, 0.1);
    plant.events.push_back(event("panel", 0.05));
    plant.gates.push_back(gate("all", project::GateKind::orGate, {"silent", "panel"}));
    plant.tops = {top("T1", "all")};
    const auto answer = ask("safety-function", plant, values("T1", "1oo2"));
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                testing::AllOf(HasSubstr("far apart"), HasSubstr("the tree tolerates 0")));
}

TEST(SafetyFunction, WarnsWhereTheFormulasAreNoGood) {
    const auto large = ask("safety-function", twoPumps(), values(nullptr, "1oo2", 1e-4, 0));
    ASSERT_TRUE(large.content);
    EXPECT_THAT(notes(*large.content, sdk::NoteKind::warning),
                testing::AllOf(HasSubstr("first terms"), HasSubstr("Beta is 0")));
    const auto small = ask("safety-function", twoPumps(), values(nullptr, "1oo2", 1e-7, 0.1));
    ASSERT_TRUE(small.content);
    EXPECT_EQ(notes(*small.content, sdk::NoteKind::warning), "");
    EXPECT_THAT(notes(*small.content, sdk::NoteKind::method), HasSubstr("2000"));
}

TEST(SafetyFunction, ADemandInTheTreeIsRefused) {
    project::Project plant = channels(project::GateKind::andGate);
    plant.events[0].model = {};
    plant.events[0].model.kind = project::ModelKind::frequency;
    plant.events[0].model.set(project::Role::frequency, number(0.1, project::Unit::perYear));
    const auto answer = ask("safety-function", plant, values("T1"));
    EXPECT_EQ(answer.ending, sdk::Ending::failed);
    ASSERT_FALSE(answer.problems.empty());
    EXPECT_THAT(answer.problems.front().what, HasSubstr("is a demand"));
}

TEST(SafetyFunction, HalfAQuestionIsRefusedInASentence) {
    const auto nothing = ask("safety-function", twoPumps());
    EXPECT_EQ(nothing.ending, sdk::Ending::failed);
    sdk::Values votingOnly;
    votingOnly.set("voting", std::string("2oo3"));
    EXPECT_THAT(ask("safety-function", twoPumps(), votingOnly).problems.front().what,
                HasSubstr("failure rate"));
    sdk::Values rateOnly;
    rateOnly.set("rate", 1e-6);
    rateOnly.set("top", std::string("T1"));
    EXPECT_THAT(ask("safety-function", twoPumps(), rateOnly).problems.front().what,
                HasSubstr("how the channels vote"));
}

TEST(SafetyFunction, APeriodShorterThanTheTestsIsWarnedOf) {
    sdk::Values given = values("T1");
    given.set("interval", 1000.0);
    const auto answer = ask("safety-function", channels(project::GateKind::andGate), given);
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                HasSubstr("Tested less often than every 1000 h: pump-a, pump-b"));
}
