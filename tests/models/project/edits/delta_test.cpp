// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/delta.h"

#include "tests/models/document/random_project.h"
#include "tests/models/project/edits/small_tree.h"

#include <gtest/gtest.h>

#include <random>

using namespace cutwater::test;
using namespace cutwater::project::edits;

namespace {

void expectBothWays(const Project& a, const Project& b) {
    const Delta delta = differences(a, b);
    EXPECT_TRUE(apply(delta, a) == b);
    EXPECT_TRUE(revert(delta, b) == a);
    EXPECT_EQ(delta.empty(), a == b);
}

} // namespace

TEST(Delta, NothingChanged) {
    EXPECT_TRUE(differences(smallTree(), smallTree()).empty());
}

TEST(Delta, IsAsSmallAsTheChange) {
    Project changed = smallTree();
    changed.events.insert(changed.events.begin(), smallEvent("new", "new"));
    changed.events.pop_back();
    const Delta delta = differences(smallTree(), changed);
    const auto& runs = std::get<Runs<Event>>(delta.runs);
    ASSERT_EQ(runs.size(), 2u);
    EXPECT_EQ(runs[0].inserted.size(), 1u);
    EXPECT_EQ(runs[0].removed.size(), 0u);
    EXPECT_EQ(runs[1].removed.size(), 1u);
    EXPECT_TRUE(std::get<Runs<Gate>>(delta.runs).empty());
    EXPECT_TRUE(delta.facts.empty());
    expectBothWays(smallTree(), changed);
}

TEST(Delta, FactsOfTheProjectWithChangesBelow) {
    Project changed = smallTree();
    changed.name = "other";
    changed.events[1].name = "other";
    changed.tops.clear();
    expectBothWays(smallTree(), changed);
}

TEST(Delta, BetweenAnyTwoProjects) {
    for (std::uint32_t seed = 1; seed <= 12; ++seed) {
        const Project a = randomProject(seed, 8, true);
        const Project b = randomProject(seed + 100, 8, true);
        expectBothWays(a, b);
        expectBothWays(a, Project());
        Project mixed = a; // the same values in another order, some gone, some twice
        std::mt19937 random(seed);
        std::shuffle(mixed.events.begin(), mixed.events.end(), random);
        std::shuffle(mixed.gates.begin(), mixed.gates.end(), random);
        if (!mixed.events.empty()) mixed.events.push_back(mixed.events.front());
        if (!mixed.log.empty()) mixed.log.erase(mixed.log.begin());
        expectBothWays(a, mixed);
    }
}
