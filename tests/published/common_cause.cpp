// SPDX-License-Identifier: GPL-3.0-or-later
// Common-cause models: NUREG/CR-4780 (1988) and NUREG/CR-5485 (1998), formulas from memory. All
// numbers derived: shares from the formulas, tops by adding all states of the causes.
#include "models/reliability/common_cause.h"
#include "tests/oracle/solved.h"

#include <functional>
#include <numeric>
#include <random>

namespace cutwater::published {
namespace {

using namespace reliability;
using oracle::near;
using project::CommonCauseKind;

struct Group {
    project::Project project;

    Group(CommonCauseKind kind, const std::vector<double>& factors, std::size_t members) {
        project::CommonCauseGroup group;
        group.id = "CC";
        group.kind = kind;
        for (const double factor : factors) {
            project::Quantity quantity;
            quantity.value = factor;
            quantity.unit = project::Unit::number;
            group.factors.push_back(quantity);
        }
        project::Gate gate;
        gate.id = "G";
        gate.kind = project::GateKind::vote;
        for (std::size_t i = 0; i < members; ++i) {
            project::Event event;
            event.id = std::string(1, static_cast<char>('A' + i));
            group.members.push_back({event.id, {}});
            gate.inputs.push_back({event.id, {}});
            project.events.push_back(event);
        }
        project.gates.push_back(gate);
        project.commonCauses.push_back(group);
    }
};

struct Figures {
    double exact = 0, sum = 0;
    std::size_t sets = 0;
    std::vector<std::string> causes;
    std::vector<double> q;
};

// At least k of the members fail; each has probability q.
Figures figures(Group group, int k, double q) {
    group.project.gates.front().k = k;
    const project::Index index(group.project);
    const TreeFormula tree = toFormula(group.project, index, "G");
    const auto expanded = withCommonCauses(group.project, index, tree);
    EXPECT_TRUE(expanded);
    const auto solution = oracle::solved(expanded->formula, expanded->top);
    const CauseProbabilities weigh(group.project, *expanded, UnequalRule::geometricMean);
    const auto& of = group.project.commonCauses.front();
    const std::vector<std::vector<double>> shares{
        commonCauseShares(of.kind, factorsOf(index, of), of.members.size())};
    const std::vector<double> ofEvent(group.project.events.size(), q);
    Figures result;
    result.q.resize(expanded->causes.size());
    EXPECT_EQ(weigh.fill(shares, ofEvent, result.q), 0u);
    result.exact = solution->probability(result.q).occurs;
    result.sum = solution->rareEventSum(result.q);
    result.sets = static_cast<std::size_t>(logic::toDouble(solution->setCount()));
    for (const Cause& cause : expanded->causes)
        result.causes.push_back(cause.id);
    return result;
}

void expectShares(CommonCauseKind kind, std::vector<double> factors, std::size_t members,
                  std::vector<double> wanted) {
    const std::vector<double> got = commonCauseShares(kind, factors, members);
    ASSERT_EQ(got.size(), wanted.size());
    for (std::size_t k = 0; k < got.size(); ++k)
        EXPECT_TRUE(near(got[k] * 1e-3, wanted[k], 2e-9)) << k + 1;
}

TEST(CommonCause, BetaPair) { // 7.1
    const Figures pair = figures(Group(CommonCauseKind::beta, {0.1}, 2), 2, 1e-3);
    EXPECT_TRUE(near(pair.sum, 1.0081e-4, 1e-9));
    EXPECT_TRUE(near(pair.exact, 1.00809919e-4, 1e-9));
    EXPECT_EQ(pair.causes, (std::vector<std::string>{"A [alone]", "A + B [common]", "B [alone]"}));
}

TEST(CommonCause, GreekLetters) { // 7.2, 7.5
    expectShares(CommonCauseKind::multipleGreekLetters, {0.1, 0.4}, 3, {9e-4, 3e-5, 4e-5});
    expectShares(CommonCauseKind::multipleGreekLetters, {0.1, 0.3, 0.5}, 4,
                 {9e-4, 7e-5 / 3, 5e-6, 1.5e-5}); // printed 2.33333333e-5
}

TEST(CommonCause, GreekLettersThatAreMissingMakeABetaFactor) {
    EXPECT_EQ(commonCauseShares(CommonCauseKind::multipleGreekLetters, std::vector{0.1}, 4),
              commonCauseShares(CommonCauseKind::beta, std::vector{0.1}, 4));
}

TEST(CommonCause, TwoOfThreeByGreekLetters) { // 7.3
    const Figures two =
        figures(Group(CommonCauseKind::multipleGreekLetters, {0.1, 0.4}, 3), 2, 1e-3);
    EXPECT_TRUE(near(two.sum, 1.3243e-4, 1e-9));
    EXPECT_TRUE(near(two.exact, 1.32421926e-4, 4e-9)); // nine digits are given
    EXPECT_EQ(two.sets, 7u);
}

// 7.4. The usual sum Q1^3 + 3 Q1 Q2 + Q3 = 4.00817290e-5 is *below* the exact figure although a sum
// over all minimal cut sets never is: it leaves out the three sets of two different pair causes
// (A+B with B+C and so on, 3 Q2^2 = 2.7e-9), which take all three members too. Whoever cuts sets
// off by the number of members they "ought" to have loses them; the engine lists them.
TEST(CommonCause, AllThreeByGreekLettersHasThreeSetsThatTheUsualSumForgets) {
    const Figures all =
        figures(Group(CommonCauseKind::multipleGreekLetters, {0.1, 0.4}, 3), 3, 1e-3);
    const double q1 = 9e-4, q2 = 3e-5, q3 = 4e-5;
    const double usual = q1 * q1 * q1 + 3 * q1 * q2 + q3;
    EXPECT_TRUE(near(usual, 4.00817290e-5, 1e-9));
    EXPECT_TRUE(near(all.exact, 4.00844206e-5, 1.3e-9)); // nine digits are given
    EXPECT_LT(usual, all.exact);
    EXPECT_EQ(all.sets, 8u); // 1 + 3 + 1, and the 3 pairs of pairs
    EXPECT_TRUE(near(all.sum, usual + 3 * q2 * q2, 1e-9));
    EXPECT_GE(all.sum, all.exact);
}

TEST(CommonCause, AlphaFactors) { // 7.6, 7.7
    const std::vector alpha{0.95, 0.04, 0.01};
    expectShares(CommonCauseKind::alpha, alpha, 3, {8.96226415e-4, 3.77358491e-5, 2.83018868e-5});
    expectShares(CommonCauseKind::alphaStaggered, alpha, 3, {9.5e-4, 2e-5, 1e-5});
    EXPECT_TRUE(
        near(figures(Group(CommonCauseKind::alpha, alpha, 3), 2, 1e-3).exact, 1.43909843e-4, 4e-9));
    EXPECT_TRUE(near(figures(Group(CommonCauseKind::alphaStaggered, alpha, 3), 2, 1e-3).exact,
                     7.27037959e-5, 1e-9));
}

TEST(CommonCause, AlphaFactorsAsGreekLetters) { // 7.8
    const auto letters = [](CommonCauseKind kind, double beta, double gamma) {
        EXPECT_EQ(commonCauseShares(kind, std::vector{0.95, 0.04, 0.01}, 3).size(), 3u);
        const auto a = commonCauseShares(kind, std::vector{0.95, 0.04, 0.01}, 3);
        EXPECT_TRUE(near(2 * a[1] + a[2], beta, 4e-9));
        EXPECT_TRUE(near(a[2] / (2 * a[1] + a[2]), gamma, 4e-9));
        const auto m = commonCauseShares(CommonCauseKind::multipleGreekLetters,
                                         std::vector{2 * a[1] + a[2], a[2] / (2 * a[1] + a[2])}, 3);
        for (std::size_t k = 0; k < 3; ++k)
            EXPECT_TRUE(near(m[k], a[k], 1e-12));
    };
    letters(CommonCauseKind::alpha, 0.103773585, 0.272727273);
    letters(CommonCauseKind::alphaStaggered, 0.05, 0.2);
}

// The chance of one member to be lost at all is shared out completely, whatever the model.
TEST(CommonCause, SharesAddUpToTheWhole) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> chance(0, 1);
    for (int round = 0; round < 2000; ++round) {
        const std::size_t members = 2 + random() % 9;
        const auto kind = static_cast<CommonCauseKind>(random() % 4);
        std::size_t count = members;
        if (kind == CommonCauseKind::beta) count = 1;
        if (kind == CommonCauseKind::multipleGreekLetters) count = 1 + random() % (members - 1);
        std::vector<double> factors(count);
        for (double& factor : factors)
            factor = chance(random);
        const auto shares = commonCauseShares(kind, factors, members);
        double whole = 0, sets = 1; // sets: C(members-1, k-1)
        for (std::size_t k = 1; k <= members; ++k) {
            EXPECT_GE(shares[k - 1], 0);
            whole += sets * shares[k - 1];
            sets = sets * static_cast<double>(members - k) / static_cast<double>(k);
        }
        EXPECT_NEAR(whole, 1, 1e-12) << project::word(kind) << " " << members;
    }
}

// NASA/SP-2009-569 (2009), example 7, table 2 [seen]: posterior Dirichlet(21, 6, 2). Its means as
// staggered alpha factors give beta = a2 + a3 and gamma = a3 / (a2 + a3). The example's opening
// text speaks of 33 and of 30 failures; 20 + 5 + 1 are 26 events and 20 + 10 + 3 are 33 component
// failures: its 30 fits neither.
TEST(CommonCause, NasaExample7Means) { // 7.9
    const std::vector alpha{21.0 / 29, 6.0 / 29, 2.0 / 29};
    EXPECT_NEAR(alpha[0], 0.72, 0.005);
    EXPECT_NEAR(alpha[1], 0.21, 0.005);
    EXPECT_NEAR(alpha[2], 0.07, 0.005);
    const auto shares = commonCauseShares(CommonCauseKind::alphaStaggered, alpha, 3);
    EXPECT_TRUE(near(2 * shares[1] + shares[2], 8.0 / 29, 1e-12)); // printed 0.28
    // The mean of the ratio is 2/8 too, as gamma is Beta(2, 6).
    EXPECT_TRUE(near(shares[2] / (2 * shares[1] + shares[2]), 0.25, 1e-12));
}

} // namespace
} // namespace cutwater::published
