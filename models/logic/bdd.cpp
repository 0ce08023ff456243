// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/bdd.h"
#include "models/logic/hashing.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

constexpr std::size_t kFirstTable = std::size_t{1} << 10;
constexpr std::size_t kFirstCache = std::size_t{1} << 10;
constexpr std::size_t kLargestCache = std::size_t{1} << 23;
// Of the table and of the nodes that it is filled with at most.
constexpr std::size_t kBytesPerPlace = sizeof(std::uint32_t) + sizeof(BddNode) * 2 / 3;
constexpr std::size_t kLossesPerPlace = 2;
// The third operand of cached conjunctions, which have only two: never a real edge.
constexpr Edge kConjunctionMark = 0xffffffff;

} // namespace

Bdd::Bdd(Budget& budget) : m_budget(budget) {
    release();
}

Bdd::~Bdd() {
    m_budget.give(m_taken);
}

void Bdd::clear() {
    m_nodes.resize(1);
    std::fill(m_table.begin(), m_table.end(), 0);
    std::fill(m_cache.begin(), m_cache.end(), CacheEntry{});
}

void Bdd::release() {
    m_budget.give(m_taken);
    m_taken = 0;
    m_nodes = {};
    m_nodes.push_back({kTerminalLevel, 0, 0});
    m_table = LargeArray<std::uint32_t>(kFirstTable);
    m_cache = LargeArray<CacheEntry>(kFirstCache);
    const std::size_t bytes = kFirstTable * kBytesPerPlace + kFirstCache * sizeof(CacheEntry);
    m_budget.take(bytes);
    m_taken = bytes;
}

Edge Bdd::make(std::uint32_t level, Edge high, Edge low) {
    if (high == low) return high;
    const Edge complement = low & 1u;
    high ^= complement;
    low ^= complement;
    const std::size_t mask = m_table.size() - 1;
    std::size_t place = mixed(level, high, low) & mask;
    while (const std::uint32_t index = m_table[place]) {
        const BddNode& node = m_nodes[index];
        if (node.high == high && node.low == low && node.level == level)
            return index << 1 | complement;
        place = (place + 1) & mask;
    }
    m_budget.step();
    if (m_nodes.size() >= m_ceiling) throw CeilingReached{};
    if (m_nodes.size() * 3 >= m_table.size() * 2) {
        growTable();
        return make(level, high, low) ^ complement;
    }
    const auto index = static_cast<std::uint32_t>(m_nodes.size());
    m_nodes.push_back({level, high, low});
    m_table[place] = index;
    return index << 1 | complement;
}

void Bdd::growTable() {
    // Small tables grow quickly: moving everything is what costs.
    const std::size_t size = m_table.size() * (m_table.size() < (std::size_t{1} << 18) ? 4 : 2);
    if (size > (std::size_t{1} << 31)) throw Stopped{Stop::memory};
    const std::size_t bytes = (size - m_table.size()) * kBytesPerPlace;
    m_budget.take(bytes);
    m_taken += bytes;
    m_nodes.reserve(size * 2 / 3 + 2);
    m_table = {}; // before the new one is made
    m_table = LargeArray<std::uint32_t>(size);
    for (std::uint32_t index = 1; index < m_nodes.size(); ++index) {
        m_budget.step();
        const BddNode& node = m_nodes[index];
        std::size_t place = mixed(node.level, node.high, node.low) & (size - 1);
        while (m_table[place] != 0)
            place = (place + 1) & (size - 1);
        m_table[place] = index;
    }
    growCache();
}

// The cache follows the nodes.
void Bdd::growCache() {
    const std::size_t size = std::min(m_table.size(), kLargestCache);
    if (size > m_cache.size()) resizeCache(size);
}

// What it knew is kept.
void Bdd::resizeCache(std::size_t size) {
    const std::size_t bytes = (size - m_cache.size()) * sizeof(CacheEntry);
    m_budget.take(bytes);
    m_taken += bytes;
    const Charge moving(m_budget, m_cache.size() * sizeof(CacheEntry));
    LargeArray<CacheEntry> old(size);
    old.swap(m_cache);
    for (const CacheEntry& entry : old) {
        m_budget.step();
        if (entry.a != 0) slot(entry.a, entry.b, entry.c) = entry;
    }
}

// Few nodes may take many operations (a grid in the order of its levels makes 7,000 nodes in half a
// million): the cache also grows where it loses answers as fast as it takes them in.
void Bdd::store(Edge a, Edge b, Edge c, Edge result) {
    CacheEntry& entry = slot(a, b, c);
    if (entry.a != 0 && ++m_lost > kLossesPerPlace * m_cache.size() &&
        m_cache.size() < kLargestCache) {
        m_lost = 0;
        resizeCache(2 * m_cache.size());
        slot(a, b, c) = {a, b, c, result};
        return;
    }
    entry = {a, b, c, result};
}

Bdd::CacheEntry& Bdd::slot(Edge a, Edge b, Edge c) {
    return m_cache[mixed(a, b, c) & (m_cache.size() - 1)];
}

// True where the answer is plain; otherwise the operands are put in the order of the cache.
bool Bdd::simpleConjunction(Edge& a, Edge& b, Edge& result) {
    if (a == b || b == kAlways) {
        result = a;
        return true;
    }
    if (a == kAlways) {
        result = b;
        return true;
    }
    if (a == kNever || b == kNever || a == (b ^ 1u)) {
        result = kNever;
        return true;
    }
    if (a > b) std::swap(a, b);
    return false;
}

// Depth-first over pairs of nodes with a stack of our own: a diagram may be as deep as the order
// has variables.
Edge Bdd::conjunction(Edge a, Edge b) {
    const std::size_t bottom = m_tasks.size();
    Edge result = kNever;
    bool done = simpleConjunction(a, b, result);
    for (;;) {
        if (!done) {
            const CacheEntry& entry = slot(a, b, kConjunctionMark);
            if (entry.a == a && entry.b == b && entry.c == kConjunctionMark) {
                result = entry.result;
            } else {
                const std::uint32_t top = std::min(level(a), level(b));
                m_tasks.push({a, b, kConjunctionMark, top, 0, kNever});
                const Edge nextA = level(a) == top ? high(a) : a,
                           nextB = level(b) == top ? high(b) : b;
                a = nextA;
                b = nextB;
                done = simpleConjunction(a, b, result);
                continue;
            }
        }
        // `result` is known: hand it to whoever waits for it.
        for (;;) {
            if (m_tasks.size() == bottom) return result;
            Task& task = m_tasks.top();
            if (task.half == 0) {
                task.half = 1;
                task.high = result;
                a = level(task.a) == task.level ? low(task.a) : task.a;
                b = level(task.b) == task.level ? low(task.b) : task.b;
                done = simpleConjunction(a, b, result);
                break;
            }
            const Task finished = task;
            m_tasks.pop();
            m_budget.step();
            result = make(finished.level, finished.high, result);
            store(finished.a, finished.b, kConjunctionMark, result);
        }
    }
}

// Plain cases of "if f then g else h", and the standard form of the others: f and g regular.
bool Bdd::simpleChoice(Edge& f, Edge& g, Edge& h, bool& negate, Edge& result) {
    negate = false;
    if (f == kAlways || g == h) {
        result = g;
        return true;
    }
    if (f == kNever) {
        result = h;
        return true;
    }
    if (g == f)
        g = kAlways;
    else if (g == (f ^ 1u))
        g = kNever;
    if (h == f)
        h = kNever;
    else if (h == (f ^ 1u))
        h = kAlways;
    if (g == h) {
        result = g;
        return true;
    }
    if (g == kAlways && h == kNever) {
        result = f;
        return true;
    }
    if (g == kNever && h == kAlways) {
        result = f ^ 1u;
        return true;
    }
    if (g == kAlways) {
        result = disjunction(f, h);
        return true;
    }
    if (g == kNever) {
        result = conjunction(f ^ 1u, h);
        return true;
    }
    if (h == kAlways) {
        result = disjunction(f ^ 1u, g);
        return true;
    }
    if (h == kNever) {
        result = conjunction(f, g);
        return true;
    }
    if (f & 1u) {
        f ^= 1u;
        std::swap(g, h);
    }
    if (g & 1u) {
        g ^= 1u;
        h ^= 1u;
        negate = true;
    }
    return false;
}

Edge Bdd::ifThenElse(Edge f, Edge g, Edge h) {
    // Each waiting task keeps in the lowest bit of `half` >> 1 whether its answer is to be negated.
    const std::size_t bottom = m_tasks.size();
    Edge result = kNever;
    bool negate = false;
    bool done = simpleChoice(f, g, h, negate, result);
    for (;;) {
        if (!done) {
            const CacheEntry& entry = slot(f, g, h);
            if (entry.a == f && entry.b == g && entry.c == h) {
                result = entry.result ^ (negate ? 1u : 0u);
            } else {
                const std::uint32_t top = std::min({level(f), level(g), level(h)});
                m_tasks.push({f, g, h, top, negate ? 2u : 0u, kNever});
                f = level(f) == top ? high(f) : f;
                g = level(g) == top ? high(g) : g;
                h = level(h) == top ? high(h) : h;
                done = simpleChoice(f, g, h, negate, result);
                continue;
            }
        }
        for (;;) {
            if (m_tasks.size() == bottom) return result;
            Task& task = m_tasks.top();
            if ((task.half & 1u) == 0) {
                task.half |= 1u;
                task.high = result;
                const Task waiting = task;
                f = level(waiting.a) == waiting.level ? low(waiting.a) : waiting.a;
                g = level(waiting.b) == waiting.level ? low(waiting.b) : waiting.b;
                h = level(waiting.c) == waiting.level ? low(waiting.c) : waiting.c;
                done = simpleChoice(f, g, h, negate, result);
                break;
            }
            const Task finished = task;
            m_tasks.pop();
            m_budget.step();
            result = make(finished.level, finished.high, result);
            store(finished.a, finished.b, finished.c, result);
            if (finished.half & 2u) result ^= 1u;
        }
    }
}

} // namespace cutwater::logic
