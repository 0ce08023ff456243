// SPDX-License-Identifier: GPL-3.0-or-later
// Solution: everything that can be read off one solved top event without listing its sets.
#pragma once

#include "models/logic/count.h"
#include "models/logic/formula.h"
#include "models/logic/limits.h"
#include "models/logic/listing.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace cutwater::logic {

struct SolutionData; // the diagrams; private to the folder

// What the engine had to do, for the curious and the benchmarks.
struct Effort {
    std::uint32_t events = 0;       // variables that the top event depends on, after simplification
    std::uint32_t gates = 0;        // of the simplified formula
    std::uint32_t modules = 0;      // the top included
    std::uint64_t diagramNodes = 0; // decision-diagram nodes made
    std::uint64_t setNodes = 0;     // zero-suppressed nodes made
    std::size_t memoryBytes = 0;
};

// A probability with its complement, both computed without subtraction: 1e-300 keeps its digits,
// and so does 1 - 1e-300.
struct ProbabilityPair {
    double occurs = 0;
    double occursNot = 1;
};

// A value: copies share the diagrams. Reading is safe from several threads at once.
// "Sets" are minimal cut sets where the formula is coherent, prime implicants otherwise (then
// literals may be negated).
class Solution {
public:
    // True where no event counts negatively, that is where the top can only get truer when one more
    // event occurs.
    bool coherent() const;
    // The top event always or never happens, whatever the events do.
    std::optional<bool> constant() const;
    const Effort& effort() const;

    // Exact probability of the top event; q[v] is the probability of variable v, 0..1, events
    // independent.
    ProbabilityPair probability(std::span<const double> q) const;
    // Exact derivative of the top's probability by each variable's (Birnbaum importance): by
    // variable of the formula, 0 where the top does not depend on it; negative where the event
    // hinders the top. One sweep up and one down.
    std::vector<double> birnbaum(std::span<const double> q) const;
    // Sum of the probabilities of all sets (rare-event approximation), not capped at 1. Infinity
    // where it overflows.
    double rareEventSum(std::span<const double> q) const;
    // By variable of the formula: the part of that sum that belongs to sets with the event, as it
    // is or negated. One sweep up and one down.
    std::vector<double> setSumsWith(std::span<const double> q) const;
    // 1 - product over all sets of (1 - P(set)), from power sums on the diagram, relative error
    // below 1e-12. An upper bound for coherent formulas (Esary and Proschan 1963); for others a
    // figure without a warrant.
    double minCutUpperBound(std::span<const double> q) const;

    Count setCount() const;
    // counts[k] is the number of sets of order k, up to `maxOrder` (all orders where it is not
    // given).
    std::vector<Count> countsByOrder(std::optional<std::uint32_t> maxOrder = {}) const;

    // Sets one after another, best first; see listing.h. q is copied.
    Listing list(std::span<const double> q, const ListingWish& wish) const;

    // The variables that are in at least one set, ascending.
    std::vector<std::uint32_t> relevantVariables() const;

private:
    friend struct SolutionData;
    explicit Solution(std::shared_ptr<const SolutionData> data) : m_data(std::move(data)) {}
    std::shared_ptr<const SolutionData> m_data;
};

struct SolveOutcome {
    std::optional<Solution> solution; // empty where it stopped early
    Stop stop = Stop::none;
};

// Solves the formula for `top`: simplification, modules, decision diagrams, minimal cut sets or
// prime implicants. Deterministic. Uses no recursion: depth is limited by memory only.
SolveOutcome solve(const Formula& formula, Literal top, const Limits& limits = {});

} // namespace cutwater::logic
