// SPDX-License-Identifier: GPL-3.0-or-later
// Minimal cut sets and prime implicants of one diagram, as a family of literals.
#pragma once

#include "models/logic/diagram.h"
#include "models/logic/zdd.h"

namespace cutwater::logic {

// Elements of the families: 2 * level for the event, 2 * level + 1 for its negation.
constexpr std::uint32_t elementOf(std::uint32_t level, bool negated) {
    return level << 1 | (negated ? 1u : 0u);
}

// Prime implicants of `function`, exactly (O. Coudert and J. C. Madre, "Implicit and incremental
// computation of primes and essential primes of Boolean functions", 1992; from memory): with f1, f0
// the halves for x true and false,
//   PI(f) = PI(f1 f0)  +  x (PI(f1) - PI(f1 f0))  +  not x (PI(f0) - PI(f1 f0)).
// Plain set difference is enough: a prime implicant of f1 that is an implicant of f1 f0 is prime
// there too.
Family primeImplicants(Edge function, Bdd& bdd, Zdd& zdd, Budget& budget);

// The same for a function that no event hinders, in one sweep: f0 implies f1 there, so f1 f0 is f0,
// and what is left are the minimal cut sets (A. Rauzy, "New algorithms for fault trees analysis",
// Reliability Engineering and System Safety 40, 1993; from memory). Precondition: the function is
// monotone.
Family minimalSets(const Diagram& diagram, Zdd& zdd, Budget& budget);

} // namespace cutwater::logic
