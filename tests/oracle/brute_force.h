// SPDX-License-Identifier: GPL-3.0-or-later
// What a formula means, found by trying all states: slow, plain and written from the definitions.
#pragma once

#include "models/logic/formula.h"
#include "models/logic/listing.h"

#include <cstdint>
#include <set>
#include <span>
#include <vector>

namespace cutwater::oracle {

using Set = std::vector<logic::SetLiteral>; // ascending
using Sets = std::set<Set>;

// Value of the formula in each of the 2^n states, bit v of the state's number being variable v. n
// up to 14 in the tests.
class TruthTable {
public:
    TruthTable(const logic::Formula& formula, logic::Literal top);
    TruthTable(std::uint32_t variables, std::vector<std::uint64_t> words);

    std::uint32_t variables() const { return m_variables; }
    std::uint32_t states() const { return std::uint32_t{1} << m_variables; }
    bool operator[](std::uint32_t state) const { return m_words[state / 64] >> state % 64 & 1u; }

    bool always() const;
    bool never() const;
    // No event turns the top from true to false by occurring.
    bool monotone() const;
    // Not f(not x).
    TruthTable dual() const;

private:
    std::uint32_t m_variables;
    std::vector<std::uint64_t> m_words;
};

struct Chances {
    long double occurs = 0, occursNot = 0;
};
// Sums over all states; both sums add only numbers that are not negative.
Chances probability(const TruthTable& table, std::span<const double> q);

// All prime implicants: products that imply the formula and from which no literal can be taken
// away. All 3^n products are looked at. For a monotone formula they are its minimal cut sets.
Sets primeImplicants(const TruthTable& table);

// The minimal cut sets of a monotone formula by their own definition, over the 2^n states.
Sets minimalCutSets(const TruthTable& table);

double product(const Set& set, std::span<const double> q);

} // namespace cutwater::oracle
