// SPDX-License-Identifier: GPL-3.0-or-later
// Exact figure, min-cut upper bound (Esary and Proschan 1963) and rare-event sum of small
// structures. That exact <= bound <= sum for coherent trees of independent events: Barlow and
// Proschan (1975), from memory. All figures are derived: recomputed from the inputs by adding all
// states.
#include "tests/oracle/solved.h"
#include "tests/published/small_tree.h"

#include <cmath>

namespace cutwater::published {
namespace {

using logic::Literal;
using oracle::near;

// Relative where the figure is given in full; where the table has 11 or 12 digits, as far as those
// go.
void expectFigures(const SmallTree& tree, double exact, double bound, double sum) {
    EXPECT_NEAR(tree.exact(), exact, 1e-12);
    EXPECT_NEAR(tree.bound(), bound, 1e-12);
    EXPECT_NEAR(tree.sum(), sum, 1e-12);
    EXPECT_TRUE(near(tree.exact(), exact, 1e-9));
    EXPECT_TRUE(near(tree.bound(), bound, 1e-9));
    EXPECT_TRUE(near(tree.sum(), sum, 1e-9));
    EXPECT_LE(tree.exact(), tree.bound() * (1 + 1e-14));
    EXPECT_LE(tree.bound(), tree.sum() * (1 + 1e-14));
}

SmallTree twoOfThree(double a, double b, double c) {
    SmallTree tree;
    const std::vector<Literal> inputs{tree.event("A", a), tree.event("B", b), tree.event("C", c)};
    tree.solve(tree.atLeast(2, inputs));
    return tree;
}

// 1 and 2 leave the source, 4 joins 1 to the sink, 5 joins 2 to the sink, 3 links the two middle
// nodes. Drawn as no current from source to sink: from each side in turn.
SmallTree bridge(double q1, double q2, double q3, double q4, double q5) {
    SmallTree tree;
    const auto e1 = tree.event("1", q1), e2 = tree.event("2", q2), e3 = tree.event("3", q3),
               e4 = tree.event("4", q4), e5 = tree.event("5", q5);
    const auto upperCut = tree.all({e1, tree.any({e3, e2})}); // nothing reaches 4
    const auto lowerCut = tree.all({e2, tree.any({e3, e1})}); // nothing reaches 5
    tree.solve(tree.all({tree.any({e4, upperCut}), tree.any({e5, lowerCut})}));
    return tree;
}

TEST(Bounds, TwoOfThree) {
    expectFigures(twoOfThree(0.1, 0.1, 0.1), 0.028, 0.029701, 0.03);
    expectFigures(twoOfThree(0.01, 0.02, 0.03), 0.001088, 0.001099640036, 0.0011);
}

TEST(Bounds, Bridge) {
    expectFigures(bridge(0.1, 0.1, 0.1, 0.1, 0.1), 0.02152, 0.0218592199, 0.022);
    expectFigures(bridge(0.01, 0.01, 0.01, 0.01, 0.01), 2.019502e-4, 2.0198959902e-4, 2.02e-4);
    expectFigures(bridge(0.05, 0.1, 0.02, 0.15, 0.2), 0.035231, 0.035332517091, 0.0355);
}

TEST(Bounds, OneOrTwoTogether) {
    SmallTree tree;
    const auto a = tree.event("A", 0.01);
    tree.solve(tree.any({a, tree.all({tree.event("B", 0.1), tree.event("C", 0.2)})}));
    expectFigures(tree, 0.0298, 0.0298, 0.03);
}

TEST(Structures, BridgeCutAndPathSets) {
    const SmallTree tree = bridge(0.1, 0.1, 0.1, 0.1, 0.1);
    EXPECT_EQ(tree.sets(), (NamedSets{{"1", "2"}, {"4", "5"}, {"1", "3", "5"}, {"2", "3", "4"}}));
    EXPECT_EQ(tree.pathSets(),
              (NamedSets{{"1", "4"}, {"2", "5"}, {"1", "3", "5"}, {"2", "3", "4"}}));
}

TEST(Structures, BridgeReliabilityPolynomial) {
    // 2p^2 + 2p^3 - 5p^4 + 2p^5, from memory; agrees with adding all states.
    for (const auto& [p, wanted] : {std::pair(0.5, 0.5), {0.9, 0.97848}, {0.99, 0.9997980498}}) {
        const SmallTree tree = bridge(1 - p, 1 - p, 1 - p, 1 - p, 1 - p);
        const std::vector<double> q(5, 1 - p);
        const double works = tree.solution().probability(q).occursNot;
        EXPECT_TRUE(near(works, wanted, 1e-12)) << "p " << p;
        EXPECT_TRUE(
            near(works,
                 2 * std::pow(p, 2) + 2 * std::pow(p, 3) - 5 * std::pow(p, 4) + 2 * std::pow(p, 5),
                 1e-12));
    }
}

TEST(Structures, KOfNFailed) {
    struct Row {
        int k, n;
        std::uint64_t sets;
        double top;
    };
    // C(n,k) minimal cut sets of order k; q 0.1 each.
    const Row rows[] = {{2, 3, 3, 0.028},    {2, 4, 6, 0.0523},   {3, 4, 4, 0.0037},
                        {3, 5, 10, 0.00856}, {4, 6, 15, 0.00127}, {5, 10, 252, 0.0016349374}};
    for (const Row& row : rows) {
        SmallTree tree;
        std::vector<Literal> inputs;
        for (int i = 0; i < row.n; ++i)
            inputs.push_back(tree.event("E" + std::to_string(i), 0.1));
        tree.solve(tree.atLeast(row.k, inputs));
        SCOPED_TRACE(std::to_string(row.k) + " of " + std::to_string(row.n));
        std::vector<std::uint64_t> counts(static_cast<std::size_t>(row.k) + 1, 0);
        counts.back() = row.sets;
        EXPECT_EQ(oracle::plain(tree.solution().countsByOrder()), counts);
        EXPECT_EQ(tree.sets().size(), row.sets);
        EXPECT_TRUE(near(tree.exact(), row.top, 1e-12));
    }
}

// Two 24 V supplies joined by diodes: leg i is dead if supply Si or feed Fi fails. A diode failed
// short is not in this tree: it does not kill the bus by itself. Common practice, no source;
// derived.
TEST(Structures, DiodePair) {
    SmallTree tree;
    const auto leg1 = tree.any({tree.event("S1", 1e-3), tree.event("F1", 5e-4)});
    const auto leg2 = tree.any({tree.event("S2", 1e-3), tree.event("F2", 5e-4)});
    tree.solve(tree.all({leg1, leg2}));
    EXPECT_EQ(tree.sets(), (NamedSets{{"S1", "S2"}, {"S1", "F2"}, {"F1", "S2"}, {"F1", "F2"}}));
    EXPECT_TRUE(near(tree.exact(), 2.24850025e-6, 1e-9));
    EXPECT_TRUE(near(tree.sum(), 2.25e-6, 1e-12));
    SmallTree leg;
    leg.solve(leg.any({leg.event("S", 1e-3), leg.event("F", 5e-4)}));
    EXPECT_TRUE(near(leg.exact(), 0.0014995, 1e-12));
}

TEST(Structures, DiodePairOnOneFeed) {
    // Both feeds are one board F: the redundancy is nearly lost. Derived.
    SmallTree tree;
    const auto f = tree.event("F", 5e-4);
    const auto leg1 = tree.any({tree.event("S1", 1e-3), f});
    const auto leg2 = tree.any({tree.event("S2", 1e-3), f});
    tree.solve(tree.all({leg1, leg2}));
    EXPECT_EQ(tree.sets(), (NamedSets{{"F"}, {"S1", "S2"}}));
    EXPECT_TRUE(near(tree.exact(), 5.009995e-4, 1e-9));
}

} // namespace
} // namespace cutwater::published
