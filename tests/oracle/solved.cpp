// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/solved.h"

#include <cmath>

namespace cutwater::oracle {

::testing::AssertionResult near(double got, long double wanted, double relative) {
    if (got == static_cast<double>(wanted) ||
        std::fabs(got - wanted) <= relative * std::fabs(wanted))
        return ::testing::AssertionSuccess();
    return ::testing::AssertionFailure()
           << ::testing::PrintToString(got) << " instead of "
           << ::testing::PrintToString(static_cast<double>(wanted)) << ", off by "
           << static_cast<double>(std::fabs((got - wanted) / wanted)) << " of it";
}

std::optional<logic::Solution> solved(const logic::Formula& formula, logic::Literal top) {
    // Every second tree is cut wherever it can be, so that small trees hold the cutting too.
    logic::Limits limits;
    if (formula.nodeCount() % 2 == 0) limits.leastPiece = 2;
    logic::SolveOutcome outcome = logic::solve(formula, top, limits);
    EXPECT_EQ(outcome.stop, logic::Stop::none);
    EXPECT_TRUE(outcome.solution);
    return std::move(outcome.solution);
}

std::vector<logic::CutSet> drain(logic::Listing listing) {
    std::vector<logic::CutSet> sets;
    while (auto set = listing.next())
        sets.push_back(std::move(*set));
    EXPECT_FALSE(listing.outOfMemory());
    return sets;
}

Sets withoutOrder(const std::vector<logic::CutSet>& listed) {
    Sets sets;
    for (const auto& set : listed)
        EXPECT_TRUE(sets.insert(set.literals).second)
            << "listed twice: " << describe(Sets{set.literals});
    return sets;
}

std::vector<std::uint64_t> plain(const std::vector<logic::Count>& counts) {
    std::vector<std::uint64_t> numbers;
    for (const auto& count : counts) {
        EXPECT_FALSE(count.saturated);
        numbers.push_back(static_cast<std::uint64_t>(count.value));
    }
    while (!numbers.empty() && numbers.back() == 0)
        numbers.pop_back();
    return numbers;
}

ListedFigures figures(const Sets& sets, std::span<const double> q) {
    ListedFigures result;
    long double logNone = 0;
    for (const auto& set : sets) {
        long double chance = 1;
        for (const auto& literal : set)
            chance *= literal.negated ? 1.0L - q[literal.variable] : q[literal.variable];
        result.sum += chance;
        logNone += std::log1p(-chance);
    }
    result.bound = -std::expm1(logNone);
    return result;
}

std::string describe(const Sets& sets) {
    std::string text;
    for (const auto& set : sets) {
        text += "{";
        for (const auto& literal : set)
            text += (text.back() == '{' ? "" : " ") + std::string(literal.negated ? "~" : "") +
                    "x" + std::to_string(literal.variable);
        text += "} ";
    }
    return text.empty() ? "no sets" : text;
}

} // namespace cutwater::oracle
