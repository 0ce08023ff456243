// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/sifting.h"

#include "models/logic/hashing.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace cutwater::logic {

namespace {

constexpr std::uint32_t kNil = 0; // node 0 is the constant and stands in no list

struct SiftNode {
    std::uint32_t variable; // the level it had when we began
    Edge high, low;
    std::uint32_t uses;
    std::uint32_t next; // in its bucket, or among the free ones
};

// The nodes of one variable, hashed by their children.
struct Row {
    std::vector<std::uint32_t> buckets = std::vector<std::uint32_t>(4, kNil);
    std::uint32_t count = 0;
    std::size_t place(Edge high, Edge low) const {
        return mixed(high, low, 0) & (buckets.size() - 1);
    }
};

class Sifter {
public:
    Sifter(const Forest& forest, const SiftingWish& wish, Budget& budget)
        : m_wish(wish), m_budget(budget), m_rows(forest.levels), m_variableAt(forest.levels),
          m_placeOf(forest.levels), m_roots(forest.roots) {
        std::iota(m_variableAt.begin(), m_variableAt.end(), 0);
        std::iota(m_placeOf.begin(), m_placeOf.end(), 0);
        m_taken = forest.nodes.size() * (sizeof(SiftNode) + sizeof(std::uint32_t));
        m_budget.take(m_taken);
        m_nodes.push_back({kTerminalLevel, 0, 0, 1, kNil});
        for (std::size_t i = 1; i < forest.nodes.size(); ++i) {
            const BddNode& node = forest.nodes[i];
            m_nodes.push_back({node.level, node.high, node.low, 0, kNil});
            ++m_nodes[node.high >> 1].uses;
            ++m_nodes[node.low >> 1].uses;
            insert(static_cast<std::uint32_t>(i));
        }
        for (const Edge root : m_roots)
            ++m_nodes[root >> 1].uses;
        m_size = forest.nodes.size() - 1;
    }
    ~Sifter() { m_budget.give(m_taken); }
    Sifter(const Sifter&) = delete;
    Sifter& operator=(const Sifter&) = delete;

    void run() {
        std::vector<std::uint32_t> order = m_variableAt;
        std::stable_sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
            return m_rows[a].count > m_rows[b].count;
        });
        for (const std::uint32_t variable : order) {
            if (m_steps > m_wish.maxSteps) break;
            if (m_rows[variable].count > 0) moveToBestPlace(variable);
        }
    }

    std::vector<std::uint32_t> takeOut(Forest& forest) const {
        Forest result;
        result.levels = forest.levels;
        result.nodes.push_back({kTerminalLevel, 0, 0});
        std::vector<std::uint32_t> place(m_nodes.size(), 0);
        const auto moved = [&](Edge edge) { return place[edge >> 1] << 1 | (edge & 1u); };
        for (std::uint32_t level = forest.levels; level-- > 0;) {
            for (std::uint32_t head : m_rows[m_variableAt[level]].buckets) {
                for (std::uint32_t i = head; i != kNil; i = m_nodes[i].next) {
                    place[i] = static_cast<std::uint32_t>(result.nodes.size());
                    result.nodes.push_back({level, moved(m_nodes[i].high), moved(m_nodes[i].low)});
                }
            }
        }
        for (const Edge root : m_roots)
            result.roots.push_back(moved(root));
        forest = std::move(result);
        return m_variableAt;
    }

private:
    // Goes to the nearer end first, then to the other, then back to the best place met.
    void moveToBestPlace(std::uint32_t variable) {
        const std::uint32_t last = static_cast<std::uint32_t>(m_variableAt.size()) - 1;
        std::size_t best = m_size;
        std::uint32_t bestPlace = m_placeOf[variable];
        const auto note = [&] {
            if (m_size >= best) return;
            best = m_size;
            bestPlace = m_placeOf[variable];
        };
        const auto tooLarge = [&] {
            return static_cast<double>(m_size) > m_wish.growth * static_cast<double>(best) + 16 ||
                   m_steps > 2 * m_wish.maxSteps;
        };
        const auto goDown = [&] {
            while (m_placeOf[variable] < last && !tooLarge()) {
                exchange(m_placeOf[variable]);
                note();
            }
        };
        const auto goUp = [&] {
            while (m_placeOf[variable] > 0 && !tooLarge()) {
                exchange(m_placeOf[variable] - 1);
                note();
            }
        };
        const auto goTo = [&](std::uint32_t place) {
            while (m_placeOf[variable] < place)
                exchange(m_placeOf[variable]);
            while (m_placeOf[variable] > place)
                exchange(m_placeOf[variable] - 1);
        };
        const std::uint32_t start = m_placeOf[variable];
        if (start > last / 2) {
            goDown();
            goTo(start);
            goUp();
        } else {
            goUp();
            goTo(start);
            goDown();
        }
        goTo(bestPlace);
    }

    // Exchanges the variables at `place` and the one below it. Nodes of the upper one that use the
    // lower one are rewritten where they stand, so that whoever points at them need not know.
    void exchange(std::uint32_t place) {
        const std::uint32_t upper = m_variableAt[place], lower = m_variableAt[place + 1];
        m_moving.clear();
        for (std::uint32_t& head : m_rows[upper].buckets) {
            std::uint32_t* link = &head;
            while (*link != kNil) {
                const std::uint32_t index = *link;
                SiftNode& node = m_nodes[index];
                ++m_steps;
                if (m_nodes[node.high >> 1].variable != lower &&
                    m_nodes[node.low >> 1].variable != lower) {
                    link = &node.next;
                    continue;
                }
                *link = node.next;
                --m_rows[upper].count;
                m_moving.push_back(index);
            }
        }
        for (const std::uint32_t index : m_moving) {
            m_budget.step();
            const Edge high = m_nodes[index].high, low = m_nodes[index].low; // low is regular
            const bool highHas = m_nodes[high >> 1].variable == lower,
                       lowHas = m_nodes[low >> 1].variable == lower;
            const Edge highHigh = highHas ? m_nodes[high >> 1].high ^ (high & 1u) : high;
            const Edge highLow = highHas ? m_nodes[high >> 1].low ^ (high & 1u) : high;
            const Edge lowHigh = lowHas ? m_nodes[low >> 1].high : low;
            const Edge lowLow = lowHas ? m_nodes[low >> 1].low : low;
            const Edge newHigh = make(upper, highHigh, lowHigh);
            const Edge newLow = make(upper, highLow, lowLow); // regular, because lowLow is
            assert((newLow & 1u) == 0);
            release(high);
            release(low);
            SiftNode& node = m_nodes[index];
            node.variable = lower;
            node.high = newHigh;
            node.low = newLow;
            insert(index);
        }
        std::swap(m_variableAt[place], m_variableAt[place + 1]);
        m_placeOf[upper] = place + 1;
        m_placeOf[lower] = place;
    }

    // An edge to a node with these children, with one use more.
    Edge make(std::uint32_t variable, Edge high, Edge low) {
        if (high == low) {
            ++m_nodes[high >> 1].uses;
            return high;
        }
        const Edge complement = low & 1u;
        high ^= complement;
        low ^= complement;
        const Row& row = m_rows[variable];
        for (std::uint32_t i = row.buckets[row.place(high, low)]; i != kNil; i = m_nodes[i].next) {
            if (m_nodes[i].high == high && m_nodes[i].low == low) {
                ++m_nodes[i].uses;
                return i << 1 | complement;
            }
        }
        std::uint32_t index = m_free;
        if (index != kNil) {
            m_free = m_nodes[index].next;
        } else {
            if (m_nodes.size() == m_nodes.capacity()) {
                const std::size_t more = m_nodes.size() * sizeof(SiftNode);
                m_budget.take(more);
                m_taken += more;
            }
            index = static_cast<std::uint32_t>(m_nodes.size());
            m_nodes.emplace_back();
        }
        m_nodes[index] = {variable, high, low, 1, kNil};
        ++m_nodes[high >> 1].uses;
        ++m_nodes[low >> 1].uses;
        insert(index);
        ++m_size;
        return index << 1 | complement;
    }

    // One use less; what nobody uses any more is given back, and so on downwards.
    void release(Edge edge) {
        m_dying.push_back(edge >> 1);
        while (!m_dying.empty()) {
            const std::uint32_t index = m_dying.back();
            m_dying.pop_back();
            SiftNode& node = m_nodes[index];
            if (--node.uses > 0 || index == 0) continue;
            remove(index);
            m_dying.push_back(node.high >> 1);
            m_dying.push_back(node.low >> 1);
            node.next = m_free;
            m_free = index;
            --m_size;
        }
    }

    void insert(std::uint32_t index) {
        SiftNode& node = m_nodes[index];
        Row& row = m_rows[node.variable];
        if (++row.count > 2 * row.buckets.size()) widen(row);
        std::uint32_t& head = row.buckets[row.place(node.high, node.low)];
        node.next = head;
        head = index;
    }

    void remove(std::uint32_t index) {
        const SiftNode& node = m_nodes[index];
        Row& row = m_rows[node.variable];
        std::uint32_t* link = &row.buckets[row.place(node.high, node.low)];
        while (*link != index)
            link = &m_nodes[*link].next;
        *link = node.next;
        --row.count;
    }

    void widen(Row& row) {
        std::vector<std::uint32_t> old(row.buckets.size() * 4, kNil);
        old.swap(row.buckets);
        for (std::uint32_t head : old) {
            while (head != kNil) {
                const std::uint32_t index = head;
                head = m_nodes[index].next;
                std::uint32_t& place =
                    row.buckets[row.place(m_nodes[index].high, m_nodes[index].low)];
                m_nodes[index].next = place;
                place = index;
            }
        }
    }

    const SiftingWish& m_wish;
    Budget& m_budget;
    std::vector<SiftNode> m_nodes;
    std::vector<Row> m_rows; // by variable
    std::vector<std::uint32_t> m_variableAt, m_placeOf;
    std::vector<Edge> m_roots;
    std::vector<std::uint32_t> m_moving, m_dying;
    std::uint32_t m_free = kNil;
    std::size_t m_size = 0, m_taken = 0;
    std::uint64_t m_steps = 0;
};

} // namespace

std::vector<std::uint32_t> sift(Forest& forest, const SiftingWish& wish, Budget& budget) {
    Sifter sifter(forest, wish, budget);
    sifter.run();
    return sifter.takeOut(forest);
}

} // namespace cutwater::logic
