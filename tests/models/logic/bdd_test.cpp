// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/bdd.h"
#include "models/logic/zdd.h"

#include <gtest/gtest.h>

using namespace cutwater::logic;

namespace {

const Limits kLimits;

TEST(Bdd, EqualFunctionsAreOneEdge) {
    Account account(kLimits);
    Budget budget(account);
    Bdd bdd(budget);
    const Edge a = bdd.variable(0), b = bdd.variable(1), c = bdd.variable(2);
    const Edge left = bdd.disjunction(bdd.conjunction(a, b), bdd.conjunction(a, c));
    const Edge right = bdd.conjunction(a, bdd.disjunction(c, b));
    EXPECT_EQ(left, right);
    EXPECT_EQ(bdd.conjunction(left, left ^ 1u), kNever);
    EXPECT_EQ(bdd.ifThenElse(a, bdd.disjunction(b, c), kNever), left);
    EXPECT_EQ(bdd.ifThenElse(a ^ 1u, b, c), bdd.ifThenElse(a, c, b));
    EXPECT_EQ(bdd.ifThenElse(a, b ^ 1u, c ^ 1u), bdd.ifThenElse(a, b, c) ^ 1u);
}

// Truth tables of every "if f then g else h" over random functions of four variables.
TEST(Bdd, ChoiceAgreesWithTruthTables) {
    Account account(kLimits);
    Budget budget(account);
    Bdd bdd(budget);
    std::vector<std::pair<Edge, unsigned>> functions{{kNever, 0u}, {kAlways, 0xffffu}};
    for (std::uint32_t level = 0; level < 4; ++level) {
        unsigned table = 0;
        for (unsigned row = 0; row < 16; ++row)
            table |= (row >> level & 1u) << row;
        functions.emplace_back(bdd.variable(level), table);
    }
    std::uint64_t random = 12345;
    for (int i = 0; i < 3000; ++i) {
        const auto pick = [&] {
            random = random * 6364136223846793005u + 1442695040888963407u;
            auto f = functions[(random >> 33) % functions.size()];
            if (random >> 63) f = {f.first ^ 1u, ~f.second & 0xffffu};
            return f;
        };
        const auto f = pick(), g = pick(), h = pick();
        const unsigned table = (f.second & g.second) | (~f.second & h.second & 0xffffu);
        const Edge edge = bdd.ifThenElse(f.first, g.first, h.first);
        for (unsigned row = 0; row < 16; ++row) {
            Edge at = edge;
            while (!Bdd::isConstant(at))
                at = row >> bdd.level(at) & 1u ? bdd.high(at) : bdd.low(at);
            ASSERT_EQ(at == kAlways, (table >> row & 1u) != 0);
        }
        functions.emplace_back(edge, table);
    }
}

TEST(Bdd, LowEdgesAreRegular) {
    Account account(kLimits);
    Budget budget(account);
    Bdd bdd(budget);
    Edge f = bdd.variable(0) ^ 1u;
    for (std::uint32_t level = 1; level < 8; ++level)
        f = bdd.ifThenElse(bdd.variable(level), f ^ 1u, f);
    for (std::uint32_t i = 1; i < bdd.size(); ++i)
        EXPECT_EQ(bdd.node(i).low & 1u, 0u);
}

TEST(Zdd, DifferenceOfFamilies) {
    Account account(kLimits);
    Budget budget(account);
    Zdd zdd(budget);
    const Family a = zdd.make(0, kEmptySet, kNoSets), b = zdd.make(1, kEmptySet, kNoSets);
    const Family both = zdd.make(0, kEmptySet, b);                         // {a} {b}
    const Family more = zdd.make(0, zdd.make(1, kEmptySet, kEmptySet), b); // {a,b} {a} {b}
    EXPECT_EQ(zdd.difference(both, a), b);
    EXPECT_EQ(zdd.difference(more, both), zdd.make(0, b, kNoSets));
    EXPECT_EQ(zdd.difference(kEmptySet, more), kEmptySet);
    EXPECT_EQ(zdd.difference(zdd.make(0, kEmptySet, kEmptySet), kEmptySet), a);
    EXPECT_EQ(zdd.difference(more, more), kNoSets);
}

} // namespace
