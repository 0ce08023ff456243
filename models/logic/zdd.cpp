// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/zdd.h"
#include "models/logic/hashing.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

constexpr std::size_t kFirstTable = std::size_t{1} << 10;
constexpr std::size_t kLargestCache = std::size_t{1} << 23;

constexpr std::size_t kBytesPerPlace = sizeof(std::uint32_t) + (sizeof(ZddNode) + 1) * 2 / 3;

} // namespace

Zdd::Zdd(Budget& budget) : m_budget(budget), m_table(kFirstTable), m_cache(kFirstTable) {
    m_nodes.push_back({kNoElement, kNoSets, kNoSets});
    m_nodes.push_back({kNoElement, kNoSets, kNoSets});
    m_hasEmptySet.push_back(0);
    m_hasEmptySet.push_back(1);
    m_taken = kFirstTable * (kBytesPerPlace + sizeof(CacheEntry));
    m_budget.take(m_taken);
}

Zdd::~Zdd() {
    m_budget.give(m_taken);
}

void Zdd::clear() {
    m_nodes.resize(2);
    m_hasEmptySet.resize(2);
    std::fill(m_table.begin(), m_table.end(), 0);
    std::fill(m_cache.begin(), m_cache.end(), CacheEntry{});
}

Family Zdd::make(std::uint32_t element, Family with, Family without) {
    if (with == kNoSets) return without;
    for (;;) {
        const std::size_t mask = m_table.size() - 1;
        std::size_t place = mixed(element, with, without) & mask;
        while (const std::uint32_t index = m_table[place]) {
            const ZddNode& node = m_nodes[index];
            if (node.with == with && node.without == without && node.element == element)
                return index;
            place = (place + 1) & mask;
        }
        m_budget.step();
        if (m_nodes.size() * 3 < m_table.size() * 2) {
            const auto index = static_cast<std::uint32_t>(m_nodes.size());
            m_nodes.push_back({element, with, without});
            m_hasEmptySet.push_back(m_hasEmptySet[without]);
            m_table[place] = index;
            return index;
        }
        grow();
    }
}

void Zdd::grow() {
    const std::size_t size = m_table.size() * (m_table.size() < (std::size_t{1} << 18) ? 4 : 2);
    if (size > (std::size_t{1} << 31)) throw Stopped{Stop::memory};
    const std::size_t cacheSize = std::min(size, kLargestCache);
    const std::size_t bytes =
        m_table.size() * kBytesPerPlace + (cacheSize - m_cache.size()) * sizeof(CacheEntry);
    m_budget.take(bytes);
    m_taken += bytes;
    m_nodes.reserve(size * 2 / 3 + 2);
    m_hasEmptySet.reserve(size * 2 / 3 + 2);
    m_table = {}; // before the new one is made
    m_table = LargeArray<std::uint32_t>(size);
    for (std::uint32_t index = 2; index < m_nodes.size(); ++index) {
        m_budget.step();
        const ZddNode& node = m_nodes[index];
        std::size_t place = mixed(node.element, node.with, node.without) & (size - 1);
        while (m_table[place] != 0)
            place = (place + 1) & (size - 1);
        m_table[place] = index;
    }
    if (cacheSize > m_cache.size()) {
        const Charge moving(m_budget, m_cache.size() * sizeof(CacheEntry));
        LargeArray<CacheEntry> old(cacheSize);
        old.swap(m_cache);
        for (const CacheEntry& entry : old) {
            m_budget.step();
            if (entry.a != 0) slot(entry.a, entry.b) = entry;
        }
    }
}

Zdd::CacheEntry& Zdd::slot(Family a, Family b) {
    return m_cache[mixed(a, b, 0) & (m_cache.size() - 1)];
}

bool Zdd::simpleDifference(Family a, Family b, Family& result) const {
    if (a == kNoSets || a == b)
        result = kNoSets;
    else if (b == kNoSets)
        result = a;
    else if (a == kEmptySet)
        result = hasEmptySet(b) ? kNoSets : kEmptySet;
    else
        return false;
    return true;
}

Family Zdd::difference(Family a, Family b) {
    const std::size_t bottom = m_tasks.size();
    Family result = kNoSets;
    for (;;) {
        bool done = simpleDifference(a, b, result);
        // Elements that only b has cannot matter: skip them at once. The constants count as "after
        // every element".
        while (!done && m_nodes[b].element < m_nodes[a].element) {
            b = m_nodes[b].without;
            done = simpleDifference(a, b, result);
        }
        if (!done) {
            const CacheEntry& entry = slot(a, b);
            if (entry.a == a && entry.b == b) {
                result = entry.result;
            } else if (m_nodes[a].element == m_nodes[b].element) {
                m_tasks.push({a, b, 0, kNoSets});
                const Family nextA = m_nodes[a].with;
                b = m_nodes[b].with;
                a = nextA;
                continue;
            } else { // only a has the element: its sets stay
                m_tasks.push({a, b, 1, m_nodes[a].with});
                a = m_nodes[a].without;
                continue;
            }
        }
        for (;;) {
            if (m_tasks.size() == bottom) return result;
            Task& task = m_tasks.top();
            if (task.half == 0) {
                task.half = 1;
                task.with = result;
                a = m_nodes[task.a].without;
                b = m_nodes[task.b].without;
                break;
            }
            const Task finished = task;
            m_tasks.pop();
            m_budget.step();
            result = make(m_nodes[finished.a].element, finished.with, result);
            slot(finished.a, finished.b) = {finished.a, finished.b, result};
        }
    }
}

} // namespace cutwater::logic
