// SPDX-License-Identifier: GPL-3.0-or-later
// Minimal cut sets and prime implicants of one diagram, as a family of literals.
#pragma once

#include "models/logic/bdd.h"
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
// there too. Where f0 implies f1 everywhere (a coherent function) f1 f0 is f0, and these are the
// minimal cut sets (A. Rauzy, "New algorithms for fault trees analysis", Reliability Engineering
// and System Safety 40, 1993; from memory); `monotone` says that this is known, and saves the
// conjunctions.
Family primeImplicants(Edge function, bool monotone, Bdd& bdd, Zdd& zdd);

} // namespace cutwater::logic
