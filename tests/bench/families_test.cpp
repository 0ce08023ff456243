// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/families.h"

#include "models/logic/solution.h"
#include "tests/bench/brute_force.h"

#include <gtest/gtest.h>

#include <set>

using namespace bench;
namespace logic = cutwater::logic;

namespace {

bool isHuge(const Recipe& recipe) {
    return recipe.size > 100'000;
}

Instance made(const std::string& name) {
    const Recipe* recipe = findRecipe(name);
    if (!recipe) throw std::invalid_argument("no instance is called " + name);
    return recipe->make();
}

std::string setsOf(const Instance& instance) {
    const auto outcome = logic::solve(instance.formula, instance.top);
    return outcome.solution ? toDecimal(outcome.solution->setCount()) : "none";
}

std::string pathSetsOf(const Instance& instance) {
    const auto dual = logic::dual(instance.formula, instance.top);
    const auto outcome = logic::solve(dual.formula, dual.top);
    return outcome.solution ? toDecimal(outcome.solution->setCount()) : "none";
}

} // namespace

TEST(Families, NamesAreUnique) {
    std::set<std::string> names;
    for (const Recipe& recipe : allRecipes())
        EXPECT_TRUE(names.insert(recipe.name).second) << recipe.name;
}

TEST(Families, ASecondRunMakesTheSame) {
    for (const Recipe& recipe : allRecipes()) {
        if (isHuge(recipe)) continue;
        EXPECT_TRUE(same(recipe.make(), recipe.make())) << recipe.name;
    }
}

TEST(Families, AnotherSeedMakesAnother) {
    EXPECT_FALSE(same(tangle(1, 50, 40, 0.1), tangle(2, 50, 40, 0.1)));
    EXPECT_FALSE(same(plant({.seed = 1}), plant({.seed = 2})));
}

TEST(Families, EveryEventCountsAndHasAProbability) {
    for (const Recipe& recipe : allRecipes()) {
        if (isHuge(recipe)) continue;
        const Instance instance = recipe.make();
        ASSERT_EQ(instance.q.size(), instance.formula.variableCount()) << recipe.name;
        for (const double q : instance.q)
            EXPECT_TRUE(q > 0 && q < 1) << recipe.name;
    }
}

TEST(Families, PlantsAreOfTheSizePromised) {
    for (const Recipe& recipe : allRecipes()) {
        if (recipe.family != Family::plant) continue;
        const Census size = census(recipe.make());
        EXPECT_GE(size.events, 60u) << recipe.name;
        EXPECT_LE(size.events, 300u) << recipe.name;
        EXPECT_GE(size.sharedGates, 5u) << recipe.name;
    }
}

TEST(Families, LargeTreesAreOfTheSizePromised) {
    for (const Recipe& recipe : allRecipes()) {
        if (recipe.family != Family::large) continue;
        const Census size = census(recipe.make());
        EXPECT_GE(size.events, 400u) << recipe.name;
        EXPECT_LE(size.events, 3000u) << recipe.name;
        const double shared = static_cast<double>(size.sharedGates) / size.gates;
        if (recipe.known.maxSets > 0) {
            EXPECT_GE(shared, 0.20) << recipe.name;
            EXPECT_LE(shared, 0.40) << recipe.name;
        }
    }
}

TEST(Families, ABoilerHas60Events) {
    EXPECT_EQ(census(boilers(1, 1, false)).events, 60u);
    EXPECT_EQ(census(boilers(10, 1, false)).events, 600u);
    EXPECT_EQ(census(boilers(100, 3, true)).events, 6000u);
    EXPECT_GT(census(boilers(1, 1, false)).sharedGates, 3u);
}

TEST(Families, VariedBoilersDiffer) {
    EXPECT_NE(setsOf(boilers(8, 1, true)), setsOf(boilers(8, 1, false)));
}

TEST(Families, ChainsAreAsDeepAsTheySay) {
    EXPECT_EQ(census(made("chain-1e5")).depth, 100'000u);
    EXPECT_GE(census(made("ladder-1e5")).depth, 100'000u);
    EXPECT_EQ(census(made("chain-pool-1e5")).events, 1001u);
}

TEST(Families, SetCountsLieInTheRangePromised) {
    for (const char* name : {"plant-60", "plant-100", "plant-150"}) {
        const Recipe* recipe = findRecipe(name);
        ASSERT_TRUE(recipe) << name;
        const Instance instance = recipe->make();
        const auto outcome = logic::solve(instance.formula, instance.top);
        ASSERT_TRUE(outcome.solution) << name;
        const double sets = toDouble(outcome.solution->setCount());
        EXPECT_GE(sets, recipe->known.minSets) << name;
        EXPECT_LE(sets, recipe->known.maxSets) << name;
    }
}

TEST(Families, ClosedFormsHold) {
    for (const char* name : {"vote-10-20", "vote-15-30", "vote-20-40", "nested-3-5-of-2-4",
                             "nested-10-20-of-3-6", "chain-1e5"}) {
        const Recipe* recipe = findRecipe(name);
        ASSERT_TRUE(recipe) << name;
        EXPECT_EQ(setsOf(recipe->make()), recipe->known.exactSets) << name;
    }
}

TEST(Families, SmallOnesAreWhatTryingEverythingSays) {
    const std::vector<Instance> small{
        vote(3, 7),
        ringOfVotes(3, 9, 2, 4),
        oneWayGrid(3),
        twoWayGrid(3),
        tangle(1, 14, 12, 0.2),
        neighbours(2, 14, 12, 0.2, 5),
        chain(12, 0),
        chain(40, 9),
        echoingChain(12, 3),
        ladder(6, false),
        ladder(6, true),
        plant({.functions = 1, .components = 1, .modes = 1, .lines = 1})};
    for (std::size_t i = 0; i < small.size(); ++i) {
        const Instance& instance = small[i];
        ASSERT_LE(instance.q.size(), kMostTriedEvents) << i;
        const auto outcome = logic::solve(instance.formula, instance.top);
        ASSERT_TRUE(outcome.solution) << i;
        const double tried = triedProbability(instance);
        EXPECT_NEAR(outcome.solution->probability(instance.q).occurs, tried, 1e-12 * tried) << i;
        EXPECT_EQ(toDecimal(outcome.solution->setCount()),
                  std::to_string(triedMinimalSets(instance)))
            << i;
    }
}

TEST(Families, MixedOnesAreWhatTryingEverythingSays) {
    for (const std::uint64_t seed : {1u, 2u, 3u, 4u}) {
        const Instance instance = mixed(seed, 11, 0.5);
        const auto outcome = logic::solve(instance.formula, instance.top);
        ASSERT_TRUE(outcome.solution) << seed;
        const double tried = triedProbability(instance);
        EXPECT_NEAR(outcome.solution->probability(instance.q).occurs, tried, 1e-12 * tried) << seed;
        EXPECT_EQ(toDecimal(outcome.solution->setCount()),
                  std::to_string(triedPrimeImplicants(instance)))
            << seed;
    }
}

// The ways through a grid are its minimal path sets: C(2n-2, n-1) where edges lead one way; the
// self-avoiding walks between opposite corners where they lead both ways (OEIS A007764: 1, 2, 12,
// 184, 8512, 1262816 ...; from memory).
TEST(Families, GridsHaveAsManyWaysAsIsKnown) {
    EXPECT_EQ(pathSetsOf(oneWayGrid(3)), "6");
    EXPECT_EQ(pathSetsOf(oneWayGrid(5)), "70");
    EXPECT_EQ(pathSetsOf(oneWayGrid(6)), "252");
    EXPECT_EQ(pathSetsOf(twoWayGrid(2)), "2");
    EXPECT_EQ(pathSetsOf(twoWayGrid(3)), "12");
    EXPECT_EQ(pathSetsOf(twoWayGrid(4)), "184");
}
