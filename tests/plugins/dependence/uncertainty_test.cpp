// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/document.h"
#include "tests/plugins/analyses/plants.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace plants;
using testing::HasSubstr;
using testing::Not;

namespace {

project::Quantity known(double value, project::Distribution distribution) {
    project::Quantity quantity;
    quantity.value = value;
    quantity.unit = project::Unit::number;
    quantity.uncertainty = distribution;
    return quantity;
}

// Both pumps by one parameter, or each by its own.
project::Project uncertain(bool shared) {
    project::Project plant = twoPumps();
    plant.gates[0].inputs = {{"no-flow", {}}};
    plant.events.resize(2);
    plant.parameters.push_back({});
    plant.parameters[0].id = "pump-stops";
    plant.parameters[0].quantity = known(1e-3, project::Lognormal{1e-3, 3});
    for (auto& one : plant.events) {
        one.model.numbers.clear();
        project::Quantity quantity = known(1e-3, project::Lognormal{1e-3, 3});
        if (shared) quantity.parameter = "pump-stops";
        one.model.set(project::Role::probability, quantity);
    }
    return plant;
}

sdk::Values values(std::int64_t samples, std::int64_t threads = 1) {
    sdk::Values given;
    given.set("samples", samples);
    given.set("threads", threads);
    given.set("seed", std::int64_t{42});
    return given;
}

} // namespace

TEST(Uncertainty, SharedEstimatesSpreadFurther) {
    const auto shared = ask("uncertainty", uncertain(true), values(50'000));
    const auto apart = ask("uncertainty", uncertain(false), values(50'000));
    ASSERT_TRUE(shared.content && apart.content);
    const sdk::Table& tops = table(*shared.content, "top-events");
    EXPECT_NEAR(number(tops, 0, "median") / 1e-6, 1, 0.03);
    EXPECT_NEAR(number(tops, 0, "p95") / 9e-6, 1, 0.05); // EF 3 twice
    EXPECT_NEAR(number(tops, 0, "p5") / (1e-6 / 9), 1, 0.05);
    EXPECT_NEAR(number(tops, 0, "mean") / 2.44050371e-6, 1, 0.05);
    EXPECT_NEAR(number(tops, 0, "point"), 1e-6, 1e-18);
    // Apart: EF = exp(1.645 s sqrt 2) = 3^sqrt 2.
    EXPECT_NEAR(number(table(*apart.content, "top-events"), 0, "p95") /
                    (1e-6 * std::pow(3, std::sqrt(2.0))),
                1, 0.05);
    EXPECT_EQ(table(*shared.content, "inputs").rows.size(), 1u);
    EXPECT_EQ(text(table(*shared.content, "inputs"), 0, "events"), "pump-a, pump-b");
    EXPECT_EQ(table(*apart.content, "inputs").rows.size(), 2u);
}

TEST(Uncertainty, SeedIsKeptAndThreadsMakeNoDifference) {
    const auto one = ask("uncertainty", uncertain(true), values(20'000, 1));
    const auto eight = ask("uncertainty", uncertain(true), values(20'000, 8));
    ASSERT_TRUE(one.content && eight.content);
    EXPECT_EQ(*one.content, *eight.content);
    EXPECT_EQ(std::get<std::int64_t>(cell(table(*one.content, "simulation"), 0, "seed")), 42);
}

TEST(Uncertainty, ConvergenceNarrows) {
    const auto answer = ask("uncertainty", uncertain(true), values(40'000));
    ASSERT_TRUE(answer.content);
    const auto series = [&](const std::string& id) -> const sdk::Series& {
        for (const sdk::Series& one : answer.content->series)
            if (one.id == id) return one;
        throw std::runtime_error(id);
    };
    const auto &low = series("T1.mean-low"), &high = series("T1.mean-high");
    EXPECT_EQ(low.x.front(), 100);
    EXPECT_EQ(low.x.back(), 40'000);
    EXPECT_LT(high.y.back() - low.y.back(), (high.y.front() - low.y.front()) / 5);
    EXPECT_EQ(series("T1.mean").y.back(), number(table(*answer.content, "top-events"), 0, "mean"));
}

TEST(Uncertainty, NothingUncertainIsSaid) {
    const auto answer = ask("uncertainty", twoPumps(), values(200));
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                testing::AllOf(HasSubstr("nothing was drawn"), HasSubstr("200 samples are few")));
    const sdk::Table& tops = table(*answer.content, "top-events");
    EXPECT_EQ(number(tops, 0, "p5"), number(tops, 0, "point"));
}

TEST(Uncertainty, AProbabilityThatIsTooWideIsWarnedOf) {
    project::Project plant = uncertain(true);
    plant.parameters[0].quantity = known(0.1, project::Lognormal{0.1, 10});
    const auto answer = ask("uncertainty", plant, values(10'000));
    ASSERT_TRUE(answer.content);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning),
                HasSubstr("parameter pump-stops: 5"));
    EXPECT_NEAR(number(table(*answer.content, "inputs"), 0, "cut"), 5, 1);
}

TEST(Uncertainty, CommonCausesWithAnUncertainFactor) {
    project::Project plant = uncertain(false);
    for (auto& one : plant.events)
        one.model.set(project::Role::probability, known(1e-3, project::Uniform{1e-3, 1.000001e-3}));
    project::CommonCauseGroup group;
    group.id = "CC";
    group.factors = {known(0.1, project::Uniform{0.0, 0.2})};
    group.members = {{"pump-a", {}}, {"pump-b", {}}};
    plant.commonCauses = {group};
    sdk::Values with = values(50'000);
    with.set("common-cause", true);
    const auto answer = ask("uncertainty", plant, with);
    ASSERT_TRUE(answer.content);
    const sdk::Table& tops = table(*answer.content, "top-events");
    // b q + (1-b)^2 q^2, b even between 0 and 0.2.
    EXPECT_NEAR(number(tops, 0, "mean"), 1.008e-4, 1e-6);
    EXPECT_NEAR(number(tops, 0, "p95"), 1.9e-4, 2e-6);
    EXPECT_NEAR(number(tops, 0, "point"), 1e-4 + 0.81e-6 - 0.81e-10, 1e-12);
    EXPECT_THAT(notes(*answer.content, sdk::NoteKind::warning), Not(HasSubstr("not counted here")));
    const auto without = ask("uncertainty", plant, values(1000));
    EXPECT_THAT(notes(*without.content, sdk::NoteKind::warning), HasSubstr("not counted here"));
}

TEST(Uncertainty, CancelledInTheMiddle) {
    std::stop_source source;
    sdk::Job job;
    job.stop = source.get_token();
    job.progress = [&](double, const std::string&) { source.request_stop(); };
    const auto answer = ask("uncertainty", uncertain(true), values(10'000'000), job);
    EXPECT_EQ(answer.ending, sdk::Ending::cancelled);
}

TEST(Uncertainty, TheDemoHasAnAnswerForEveryTop) {
    const auto demo = document::load(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater");
    ASSERT_TRUE(demo);
    const auto answer = ask("uncertainty", demo->project, values(2'000, 2));
    ASSERT_TRUE(answer.content);
    const sdk::Table& tops = table(*answer.content, "top-events");
    ASSERT_EQ(tops.rows.size(), demo->project.tops.size());
    for (std::size_t row = 0; row < tops.rows.size(); ++row) {
        EXPECT_GT(number(tops, row, "p5"), 0);
        EXPECT_LT(number(tops, row, "p5"), number(tops, row, "median"));
        EXPECT_LT(number(tops, row, "median"), number(tops, row, "p95"));
    }
}
