// SPDX-License-Identifier: GPL-3.0-or-later
// Importance measures by their definitions: Vesely and others, NUREG/CR-3385 (1983), from memory.
// All rows derived: recomputed by adding all states. Fussell-Vesely is the union of the cut sets
// with the event, divided by the top.
#include "tests/oracle/solved.h"
#include "tests/published/small_tree.h"

#include <cmath>

namespace cutwater::published {
namespace {

using logic::Literal;
using oracle::near;

TEST(Importance, OneOrTwoTogether) { // A + B.C, q 0.01, 0.1, 0.2
    SmallTree tree;
    const auto a = tree.event("A", 0.01);
    tree.solve(tree.any({a, tree.all({tree.event("B", 0.1), tree.event("C", 0.2)})}));
    expectImportance(tree, {"A", 0.98, 0.3288590604, 0.3355704698, 33.55704698, 1.49});
    expectImportance(tree, {"B", 0.198, 0.6644295302, 0.6711409396, 6.979865772, 2.98});
    expectImportance(tree, {"C", 0.099, 0.6644295302, 0.6711409396, 3.657718121, 2.98});
    // By hand: Q = 0.01 + 0.02 - 0.0002; A certain gives 1; A impossible gives 0.02.
    EXPECT_TRUE(near(tree.importance("A").riskAchievement, 1 / 0.0298L, 1e-12));
    EXPECT_TRUE(near(tree.importance("A").riskReduction, 0.0298L / 0.02L, 1e-12));
}

TEST(Importance, TwoOfThree) { // q 0.01, 0.02, 0.03
    SmallTree tree;
    const std::vector<Literal> inputs{tree.event("A", 0.01), tree.event("B", 0.02),
                                      tree.event("C", 0.03)};
    tree.solve(tree.atLeast(2, inputs));
    expectImportance(tree, {"A", 0.0488, 0.4485294118, 0.4540441176, 45.40441176, 1.813333333});
    expectImportance(tree, {"B", 0.0394, 0.7242647059, 0.7297794118, 36.48897059, 3.626666667});
    expectImportance(tree, {"C", 0.0296, 0.8161764706, 0.8216911765, 27.38970588, 5.44});
    // Birnbaum and risk achievement put A first, criticality puts it last.
    const auto a = tree.importance("A"), b = tree.importance("B"), c = tree.importance("C");
    EXPECT_TRUE(a.birnbaum > b.birnbaum && b.birnbaum > c.birnbaum);
    EXPECT_TRUE(a.riskAchievement > b.riskAchievement && b.riskAchievement > c.riskAchievement);
    EXPECT_TRUE(a.criticality < b.criticality && b.criticality < c.criticality);
}

SmallTree bridge(double q1, double q2, double q3, double q4, double q5) {
    SmallTree tree;
    const auto e1 = tree.event("1", q1), e2 = tree.event("2", q2), e3 = tree.event("3", q3),
               e4 = tree.event("4", q4), e5 = tree.event("5", q5);
    tree.solve(tree.any(
        {tree.all({e1, e2}), tree.all({e4, e5}), tree.all({e1, e3, e5}), tree.all({e2, e3, e4})}));
    return tree;
}

TEST(Importance, BridgeOfEqualParts) {
    const SmallTree tree = bridge(0.1, 0.1, 0.1, 0.1, 0.1);
    for (const char* event : {"1", "2", "4", "5"})
        expectImportance(tree,
                         {event, 0.1062, 0.4934944238, 0.5065055762, 5.441449814, 1.974311927});
    expectImportance(tree, {"3", 0.0162, 0.0752788104, 0.0924721190, 1.677509294, 1.081407035});
}

TEST(Importance, BridgeOfDifferentParts) { // 0.05, 0.1, 0.02, 0.15, 0.2
    const SmallTree tree = bridge(0.05, 0.1, 0.02, 0.15, 0.2);
    // Criticality has nine digits in the table, so its last digit is what can be held to, and the
    // quotient that it is.
    expectImportance(tree, {"3", 0.01905, 0.0108143396, 0.0141068945, 1.529902643, 1.010932568},
                     5.1e-11);
    EXPECT_TRUE(near(tree.importance("3").criticality, 0.01905L * 0.02L / 0.035231L, 1e-12));
    expectImportance(tree, {"4", 0.20034, 0.8529703954, 0.8583349891, 5.833498907, 6.801351351});
}

TEST(Importance, AnEventWithoutWhichNothingHappensHasNoLimitOfReduction) {
    SmallTree tree;
    tree.solve(tree.all({tree.event("A", 0.1), tree.event("B", 0.2)}));
    const auto a = tree.importance("A");
    EXPECT_TRUE(std::isinf(a.riskReduction));
    EXPECT_TRUE(near(a.criticality, 1, 1e-15));
    EXPECT_TRUE(near(a.riskAchievement, 10, 1e-14));
}

TEST(Importance, FussellVeselyIsLeftOutWhereItHasNoMeaning) {
    SmallTree tree;
    const auto a = tree.event("A", 0.1);
    tree.solve(tree.exactlyOne({a, tree.event("B", 0.2)}));
    EXPECT_FALSE(tree.importance("A").fussellVesely);
    // Worked by hand: Q1 - Q0 = (1 - q_B) - q_B.
    EXPECT_TRUE(near(tree.importance("A").birnbaum, 0.6, 1e-14));
}

} // namespace
} // namespace cutwater::published
