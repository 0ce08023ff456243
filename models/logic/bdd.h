// SPDX-License-Identifier: GPL-3.0-or-later
// Bdd: reduced ordered decision diagrams with complement edges in one compact, hash-consed table.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/large_array.h"
#include "models/logic/stack.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace cutwater::logic {

// A function: the index of a node and a mark "complement". Node 0 is the constant false.
// Every function that is false when all variables are false has a regular edge, so coherent trees
// have no complements.
using Edge = std::uint32_t;
constexpr Edge kNever = 0, kAlways = 1;
constexpr std::uint32_t kTerminalLevel = 0xffffffff;

struct BddNode {
    std::uint32_t level; // position of the variable in the order, 0 is decided first
    Edge high;           // may be complemented
    Edge low;            // always regular: this makes the form canonical
};

// Thrown where a table becomes larger than its user has allowed; see Bdd::setCeiling.
struct CeilingReached {};

// Nodes are only added, so an edge stays good until clear(); children have smaller indices than
// their parents.
class Bdd {
public:
    explicit Bdd(Budget& budget);
    ~Bdd();
    Bdd(const Bdd&) = delete;
    Bdd& operator=(const Bdd&) = delete;

    Edge variable(std::uint32_t level) { return make(level, kAlways, kNever); }
    Edge make(std::uint32_t level, Edge high, Edge low);
    Edge conjunction(Edge a, Edge b);
    Edge disjunction(Edge a, Edge b) { return conjunction(a ^ 1u, b ^ 1u) ^ 1u; }
    Edge ifThenElse(Edge condition, Edge then, Edge otherwise);

    static bool isConstant(Edge edge) { return edge <= 1; }
    std::uint32_t level(Edge edge) const { return m_nodes[edge >> 1].level; }
    Edge high(Edge edge) const { return m_nodes[edge >> 1].high ^ (edge & 1u); }
    Edge low(Edge edge) const { return m_nodes[edge >> 1].low ^ (edge & 1u); }
    const BddNode& node(std::uint32_t index) const { return m_nodes[index]; }
    std::uint32_t size() const { return static_cast<std::uint32_t>(m_nodes.size()); }

    // Forgets every node but the constant.
    void clear();
    // The same, and gives back the memory.
    void release();
    // make() throws CeilingReached where the table would hold more nodes than this.
    void setCeiling(std::size_t nodes) { m_ceiling = nodes; }
    // After something was thrown out of an operation.
    void forgetTasks() { m_tasks.clear(); }

private:
    struct CacheEntry {
        Edge a = 0, b = 0, c = 0, result = 0;
    };
    struct Task {
        Edge a, b, c; // operands (c unused for a conjunction)
        std::uint32_t level;
        std::uint32_t half; // 0: nothing yet, 1: the high half is being computed
        Edge high;
    };

    void growTable();
    void growCache();
    void resizeCache(std::size_t size);
    CacheEntry& slot(Edge a, Edge b, Edge c);
    void store(Edge a, Edge b, Edge c, Edge result);
    static bool simpleConjunction(Edge& a, Edge& b, Edge& result);
    bool simpleChoice(Edge& f, Edge& g, Edge& h, bool& negate, Edge& result);

    Budget& m_budget;
    LargeArray<BddNode> m_nodes;
    LargeArray<std::uint32_t> m_table; // open addressing; 0 is empty
    LargeArray<CacheEntry> m_cache;
    PlainStack<Task> m_tasks;
    std::size_t m_lost = 0; // answers that others have pushed out since the cache grew
    std::size_t m_taken = 0, m_ceiling = ~std::size_t{0};
};

} // namespace cutwater::logic
