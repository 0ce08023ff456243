// SPDX-License-Identifier: GPL-3.0-or-later
// Zdd: families of sets as zero-suppressed decision diagrams, in a hash-consed table.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/large_array.h"
#include "models/logic/stack.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace cutwater::logic {

// A family of sets of elements 0, 1, 2 ...
using Family = std::uint32_t;
constexpr Family kNoSets = 0;   // {}
constexpr Family kEmptySet = 1; // { {} }
constexpr std::uint32_t kNoElement = 0xffffffff;

struct ZddNode {
    std::uint32_t element; // the smallest element in any of the sets
    Family with;           // the sets that have it, without it; never kNoSets
    Family without;        // the sets that do not
};

// As Bdd: nodes are only added; children have smaller indices.
class Zdd {
public:
    explicit Zdd(Budget& budget);
    ~Zdd();
    Zdd(const Zdd&) = delete;
    Zdd& operator=(const Zdd&) = delete;

    Family make(std::uint32_t element, Family with, Family without);
    Family difference(Family a, Family b); // the sets of a that are not in b

    bool hasEmptySet(Family family) const { return m_hasEmptySet[family] != 0; }
    const ZddNode& node(Family family) const { return m_nodes[family]; }
    std::uint32_t size() const { return static_cast<std::uint32_t>(m_nodes.size()); }
    void clear();

private:
    struct CacheEntry {
        Family a = 0, b = 0, result = 0;
    };
    struct Task {
        Family a, b;
        std::uint32_t half;
        Family with;
    };
    void grow();
    CacheEntry& slot(Family a, Family b);
    bool simpleDifference(Family a, Family b, Family& result) const;

    Budget& m_budget;
    LargeArray<ZddNode> m_nodes;
    LargeArray<std::uint8_t> m_hasEmptySet; // of each node: otherwise a long walk
    LargeArray<std::uint32_t> m_table;
    LargeArray<CacheEntry> m_cache;
    PlainStack<Task> m_tasks;
    std::size_t m_taken = 0;
};

} // namespace cutwater::logic
