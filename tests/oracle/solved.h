// SPDX-License-Identifier: GPL-3.0-or-later
// Small helpers around the engine for the oracle tests.
#pragma once

#include "models/logic/solution.h"
#include "tests/oracle/brute_force.h"

#include <gtest/gtest.h>
#include <optional>
#include <vector>

namespace cutwater::oracle {

// Holds a number to another one within a relative error; equal infinities and zeros pass.
::testing::AssertionResult near(double got, long double wanted, double relative);

// Solves, and fails the test where the engine stopped.
std::optional<logic::Solution> solved(const logic::Formula& formula, logic::Literal top);

// All sets that a listing gives, in its order.
std::vector<logic::CutSet> drain(logic::Listing listing);

// The literals alone, and a failure where a set comes twice.
Sets withoutOrder(const std::vector<logic::CutSet>& listed);

// counts without the zeros at its end, as plain numbers.
std::vector<std::uint64_t> plain(const std::vector<logic::Count>& counts);

// Sum of the products, and 1 - product of (1 - product), by listing.
struct ListedFigures {
    long double sum = 0, bound = 0;
};
ListedFigures figures(const Sets& sets, std::span<const double> q);

std::string describe(const Sets& sets);

} // namespace cutwater::oracle
